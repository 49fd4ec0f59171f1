// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import java.lang.management.ManagementFactory;
import org.eclipse.core.runtime.ILog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.PlatformUI;

/** Tells how long it took from the start of the virtual machine until the window could be used. */
final class StartTime {
    private final StartOptions options;

    StartTime(StartOptions options) {
        this.options = options;
    }

    void report() {
        // by the machine's own clock: the time the system gives for a process is off by seconds on some virtual machines
        long tookMs = System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
        String text = NLS.bind(Messages.Start_took, tookMs);
        ILog.of(StartTime.class).info(text);
        if (options.time()) {
            System.out.println(text);
            PlatformUI.getWorkbench().close();
        }
    }
}
