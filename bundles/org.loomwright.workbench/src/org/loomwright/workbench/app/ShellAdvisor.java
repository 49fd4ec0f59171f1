// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;

/** Sets up the workbench around one kind of window. */
public final class ShellAdvisor extends WorkbenchAdvisor {
    private final StartOptions options;

    /** For a start with these options. */
    public ShellAdvisor(StartOptions options) {
        this.options = options;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
        IDE.registerAdapters();
        PlatformImages.declare(configurer);
    }

    @Override
    public void preStartup() {
        // the processor belongs to the window until it is open; analyses, builds and drawings follow
        Job.getJobManager().suspend();
    }

    @Override
    public void postStartup() {
        Job.getJobManager().resume();
    }

    @Override
    public IAdaptable getDefaultPageInput() {
        return ResourcesPlugin.getWorkspace().getRoot();
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return Ids.PERSPECTIVE;
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new WindowAdvisor(configurer, options);
    }

    @Override
    public boolean preShutdown() {
        try {
            ResourcesPlugin.getWorkspace().save(true, null);
        } catch (CoreException problem) {
            ILog.of(ShellAdvisor.class).log(problem.getStatus());
        }
        return super.preShutdown();
    }
}
