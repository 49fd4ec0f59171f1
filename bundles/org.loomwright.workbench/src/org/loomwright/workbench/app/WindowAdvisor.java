// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import java.util.List;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPreferenceConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.loomwright.workbench.measure.WorkbenchMeasure;
import org.loomwright.workbench.recovery.KeptWork;
import org.loomwright.workbench.welcome.FirstScreen;
import org.loomwright.workbench.wizard.DemoFleet;

/** Sets up the window, and what it shows first. */
final class WindowAdvisor extends WorkbenchWindowAdvisor {
    private static final int WIDTH = 1400;
    private static final int HEIGHT = 900;

    private final StartOptions options;

    WindowAdvisor(IWorkbenchWindowConfigurer configurer, StartOptions options) {
        super(configurer);
        this.options = options;
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new MenuAdvisor(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
        configurer.setInitialSize(new Point(WIDTH, HEIGHT));
        configurer.setShowCoolBar(true);
        configurer.setShowStatusLine(true);
        configurer.setShowProgressIndicator(true);
        configurer.setShowPerspectiveBar(false);
        configurer.setTitle(Messages.Window_title);
        IPreferenceStore platform = PlatformUI.getPreferenceStore();
        platform.setDefault(IWorkbenchPreferenceConstants.SHOW_PROGRESS_ON_STARTUP, false);
    }

    @Override
    public void postWindowOpen() {
        Display display = PlatformUI.getWorkbench().getDisplay();
        Image icon = Icons.of("vehicle").createImage();
        Window.setDefaultImage(icon);
        display.addListener(org.eclipse.swt.SWT.Dispose, event -> icon.dispose());
        IWorkbenchPage page = getWindowConfigurer().getWindow().getActivePage();
        if (options.demo()) {
            DemoFleet.importOnce(page);
        } else if (ResourcesPlugin.getWorkspace().getRoot().getProjects().length == 0) {
            FirstScreen.open(page);
        }
        // after all that is waiting to be drawn
        display.asyncExec(() -> display.timerExec(0, () -> {
            new StartTime(options).report();
            if (!options.time()) {
                KeptWork.offer(page);
            }
            WorkbenchMeasure.ifAsked(page, List.of(Platform.getApplicationArgs()));
        }));
    }
}
