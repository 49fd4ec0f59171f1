// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.function.BiConsumer;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.DrawingPreferences;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.workbench.live.OwnerThread;

/**
 * Makes drawings in the background, from a copy of the vehicle, so that laying out a large one never holds up the window.
 * While one is being made, those asked for in between are left out, but for the last.
 */
final class DrawingJobs {
    private static final double WIDE_PX = 1123;
    private static final double HIGH_PX = 794;
    private final VehicleDocument document;
    private final OwnerThread owner;
    private final TextMeasure type;
    private final BiConsumer<DrawingKind, Scene> listener;
    private boolean running;
    private Runnable next;
    private boolean stopped;

    DrawingJobs(VehicleDocument document, OwnerThread owner, TextMeasure type, BiConsumer<DrawingKind, Scene> listener) {
        this.document = document;
        this.owner = owner;
        this.type = type;
        this.listener = listener;
    }

    /** Asks for a drawing of the document as it is now; in its thread. */
    void draw(DrawingKind kind, OverlayKind overlay, DrawingPreferences preferences) {
        if (running) {
            next = () -> draw(kind, overlay, preferences);
            return;
        }
        running = true;
        next = null;
        DrawingRequest request = copied(overlay, preferences);
        Job job = new Job("Drawing") {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                Scene scene = scene(kind, request);
                owner.post(() -> made(kind, scene));
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.setPriority(Job.SHORT);
        job.schedule();
    }

    /** True when no drawing is being made or waited for. */
    boolean idle() {
        return !running && next == null;
    }

    /** Hands on no more drawings. */
    void stop() {
        stopped = true;
        next = null;
    }

    private DrawingRequest copied(OverlayKind overlay, DrawingPreferences preferences) {
        Vehicle vehicle = document.vehicle();
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        Vehicle copy = (Vehicle) copier.copy(vehicle);
        copier.copyReferences();
        Arrangement arrangement = document.arrangement() == null ? null : (Arrangement) copier.get(document.arrangement());
        return new DrawingRequest(copy, arrangement, document.analysis() == null ? null : document.analysis().view(),
                document.caseName(), overlay, preferences);
    }

    private Scene scene(DrawingKind kind, DrawingRequest request) {
        try {
            return kind.scene(request, type);
        } catch (RuntimeException fault) {
            ILog.of(DrawingJobs.class).error("the drawing " + kind + " of " + request.vehicle().getName() + " failed", fault);
            String why = fault.getMessage() == null ? fault.getClass().getSimpleName() : fault.getMessage();
            return new SceneBuilder(Words.of("drawing." + kind.name()), WIDE_PX, HIGH_PX)
                    .text(40, 60, Words.of("drawing.failed", why), 14, true, Mark.Anchor.START, Role.INK).build();
        }
    }

    private void made(DrawingKind kind, Scene scene) {
        running = false;
        if (stopped) {
            return;
        }
        // the latest is on its way; till then this one is better than none
        listener.accept(kind, scene);
        if (next != null) {
            next.run();
        }
    }
}
