// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import java.io.File;
import java.util.function.BooleanSupplier;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.loomwright.workbench.wizard.DemoFleet;

/** What tests do with the running workbench. They run in its thread. */
public final class Ui {
    private static final long PATIENCE_MS = 30_000;

    private Ui() {
    }

    /** The page of the only window. */
    public static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    /** Handles events until something holds; an assertion error tells what was waited for. */
    public static void await(String what, BooleanSupplier holds) {
        Display display = Display.getCurrent();
        long end = System.nanoTime() + PATIENCE_MS * 1_000_000;
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain for: " + what);
            }
            if (!display.readAndDispatch()) {
                sleep();
            }
        }
    }

    /** Handles events for a while. */
    public static void linger(int millis) {
        long end = System.nanoTime() + millis * 1_000_000L;
        await("nothing", () -> System.nanoTime() > end);
    }

    private static void sleep() {
        try {
            Thread.sleep(5);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** The demo fleet in the workspace, checked. */
    public static IProject fleet() throws CoreException {
        IProject project = project();
        built();
        return project;
    }

    /** The demo fleet in the workspace, whether it was checked yet or not. */
    public static IProject project() throws CoreException {
        IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(DemoFleet.PROJECT);
        return project.exists() ? project : DemoFleet.create(DemoFleet.PROJECT, new NullProgressMonitor());
    }

    /** Waits for the build that follows a change of a file. */
    public static void built() {
        // the build is scheduled a moment after the change
        linger(300);
        await("the build", () -> Job.getJobManager().find(ResourcesPlugin.FAMILY_AUTO_BUILD).length == 0);
        linger(200);
    }

    /** Writes a picture of the window to the folder for screenshots. */
    public static void screenshot(String name) {
        Shell shell = page().getWorkbenchWindow().getShell();
        shell.forceActive();
        linger(300);
        Rectangle size = shell.getClientArea();
        Image image = new Image(shell.getDisplay(), size.width, size.height);
        GC gc = new GC(shell);
        try {
            gc.copyArea(image, 0, 0);
            ImageLoader loader = new ImageLoader();
            loader.data = new org.eclipse.swt.graphics.ImageData[] {image.getImageData()};
            File folder = new File(System.getProperty("loomwright.screenshots", "target/screenshots"));
            folder.mkdirs();
            loader.save(new File(folder, name + ".png").getPath(), SWT.IMAGE_PNG);
        } finally {
            gc.dispose();
            image.dispose();
        }
    }
}
