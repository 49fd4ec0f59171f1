// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import java.io.IOException;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** Starts the workbench: holds the workspace for itself, then runs until the window is closed. */
public final class WorkbenchApplication implements IApplication {
    @Override
    public Object start(IApplicationContext context) throws IOException {
        Display.setAppName("Loomwright");
        Display display = PlatformUI.createDisplay();
        Location workspace = Platform.getInstanceLocation();
        try {
            if (workspace == null || workspace.getURL() == null) {
                MessageDialog.openError(null, Messages.Start_title, Messages.Start_noWorkspace);
                return EXIT_OK;
            }
            if (!workspace.lock()) {
                MessageDialog.openError(null, Messages.Start_title,
                        NLS.bind(Messages.Start_workspaceInUse, workspace.getURL().getPath()));
                return EXIT_OK;
            }
            String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
            int code = PlatformUI.createAndRunWorkbench(display, new ShellAdvisor(StartOptions.of(arguments)));
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            if (workspace != null) {
                workspace.release();
            }
            display.dispose();
        }
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            Display display = PlatformUI.getWorkbench().getDisplay();
            display.syncExec(() -> {
                if (!display.isDisposed()) {
                    PlatformUI.getWorkbench().close();
                }
            });
        }
    }
}
