// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;

import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.workbench.app.Ids;
import org.loomwright.workbench.app.WorkbenchApplication;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.VehicleEditor;

/**
 * The workbench in a process of its own, doing what a person would do. With {@code --work FILE} it makes three changes and says
 * KEPT once there is a copy of them. With {@code --look} it does nothing but wait for what is offered at the start; it says
 * OFFERED with the text, restores the work, says RESTORED with its figure, and ends.
 */
public final class MortalWorkbench implements IApplication {
    private static final int POLL_MS = 20;

    @Override
    public Object start(IApplicationContext context) throws Exception {
        List<String> arguments = List.of(Platform.getApplicationArgs());
        int work = arguments.indexOf("--work");
        Thread person = new Thread(() -> await(() -> PlatformUI.isWorkbenchRunning()
                && PlatformUI.getWorkbench().getWorkbenchWindowCount() > 0, () -> {
                    if (work >= 0) {
                        work(Path.of(arguments.get(work + 1)));
                    } else {
                        look();
                    }
                }), "person");
        person.setDaemon(true);
        person.start();
        return new WorkbenchApplication().start(context);
    }

    /** Waits in this thread until something holds in the display's, then acts there. */
    private static void await(BooleanSupplier holds, Runnable act) {
        boolean[] reached = new boolean[1];
        while (!reached[0]) {
            try {
                Thread.sleep(POLL_MS);
            } catch (InterruptedException end) {
                return;
            }
            if (PlatformUI.isWorkbenchRunning()) {
                PlatformUI.getWorkbench().getDisplay().syncExec(() -> reached[0] = holds.getAsBoolean());
            }
        }
        PlatformUI.getWorkbench().getDisplay().syncExec(act);
    }

    /** The same, when already in the display's thread. */
    private static void then(BooleanSupplier holds, Runnable act) {
        Display display = Display.getCurrent();
        display.timerExec(POLL_MS, () -> {
            if (holds.getAsBoolean()) {
                act.run();
            } else {
                display.asyncExec(() -> then(holds, act));
            }
        });
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private static void work(Path file) {
        try {
            VehicleDocument document = ((VehicleEditor) IDE.openEditor(page(), file.toUri(), Ids.EDITOR, true)).document();
            Cable cable = document.arrangement().getCables().get(0);
            for (int section : new int[] {70, 95, 120}) {
                document.run("Section " + section, () -> cable.setSectionMm2(BigDecimal.valueOf(section)));
            }
            RecoveryFolder folder = RecoveryFolder.ofWorkspace();
            then(() -> !folder.of(file).isEmpty(), () -> System.out.println("KEPT"));
        } catch (PartInitException problem) {
            throw new IllegalStateException(problem);
        }
    }

    private static void look() {
        then(() -> page().getActiveEditor() instanceof VehicleEditor editor && !editor.guard().bar().text().isEmpty(), () -> {
            VehicleEditor editor = (VehicleEditor) page().getActiveEditor();
            System.out.println("OFFERED " + editor.guard().bar().text());
            editor.guard().bar().answer(Messages.Recovery_restore);
            System.out.println("RESTORED " + editor.isDirty() + " "
                    + editor.document().arrangement().getCables().get(0).getSectionMm2());
            Runtime.getRuntime().halt(0);
        });
    }

    @Override
    public void stop() {
        // it is killed, or ends itself
    }
}
