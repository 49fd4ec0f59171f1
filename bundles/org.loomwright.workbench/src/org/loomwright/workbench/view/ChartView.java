// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.common.util.Monitor;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.tool.EditRequest;
import org.loomwright.workbench.app.ThemeWatch;
import org.loomwright.workbench.diagram.SceneCanvas;
import org.loomwright.workbench.editor.DisplayThread;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;
import org.loomwright.workbench.live.JobMonitor;

/** A chart about the vehicle in the active editor, made in the background when what it is about has changed. */
abstract class ChartView extends DocumentView implements SceneCanvas.Host {
    private SceneCanvas canvas;
    private AutoCloseable themeWatch;
    private Object shownFor;
    private Job running;

    /**
     * A chart to be made.
     *
     * @param about what it is about; a chart is not made again while this stays equal
     * @param make  makes it, in the background
     */
    record Task(Object about, Function<Monitor, Scene> make) {
    }

    /** What is to be shown of a document, or null for nothing; in its thread. Cheap: asked for after every change. */
    protected abstract Task task(VehicleDocument shown);

    /** Key of what is said when there is nothing to show. */
    protected abstract String nothing();

    @Override
    protected void create(Composite parent) {
        canvas = new SceneCanvas(parent, this);
        Runnable dress = () -> {
            if (!canvas.isDisposed()) {
                canvas.theme(ThemeWatch.isDark() ? Theme.dark() : Theme.light());
            }
        };
        dress.run();
        themeWatch = ThemeWatch.onChange(dress);
    }

    @Override
    protected void update(VehicleDocument shown) {
        Task task = shown == null || shown.analysis() == null || !shown.analysis().worked() ? null : task(shown);
        if (task == null) {
            stop();
            shownFor = null;
            setContentDescription(Words.of(nothing()));
            canvas.show(new Scene("", 1, 1, List.of()));
        } else if (!Objects.equals(task.about(), shownFor)) {
            stop();
            shownFor = task.about();
            setContentDescription(Words.of("strip.busy"));
            start(task);
        }
    }

    private void start(Task task) {
        DisplayThread owner = new DisplayThread(canvas.getDisplay());
        running = new Job(getPartName()) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    Scene scene = task.make().apply(new JobMonitor(monitor));
                    owner.post(() -> made(task, scene, ""));
                    return Status.OK_STATUS;
                } catch (CancellationException cancelled) {
                    return Status.CANCEL_STATUS;
                } catch (RuntimeException fault) {
                    ILog.of(ChartView.class).error("a chart failed", fault);
                    owner.post(() -> made(task, new Scene("", 1, 1, List.of()), Words.of("chart.failed", fault.getMessage())));
                    return Status.OK_STATUS;
                }
            }
        };
        running.schedule();
    }

    private void made(Task task, Scene scene, String words) {
        if (task.about().equals(shownFor) && !canvas.isDisposed()) {
            setContentDescription(words);
            canvas.show(scene);
            canvas.fit();
        }
    }

    private void stop() {
        if (running != null) {
            running.cancel();
            running = null;
        }
    }

    @Override
    public void select(Set<String> ids) {
        if (document() != null && !ids.isEmpty()) {
            document().selection().set(ids);
        }
    }

    @Override
    public void edit(EditRequest request) {
        // charts are not edited: nothing in them is movable
    }

    @Override
    public void hover(String id, Point at) {
        // a chart says itself what it shows
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }

    @Override
    public void dispose() {
        stop();
        try {
            if (themeWatch != null) {
                themeWatch.close();
            }
        } catch (Exception problem) {
            ILog.of(ChartView.class).warn("a chart could not let go of the theme", problem);
        }
        super.dispose();
    }
}
