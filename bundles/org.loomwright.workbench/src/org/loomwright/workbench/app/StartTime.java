// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.PlatformUI;

/** Tells how long it took from the start of the process until the window could be used. */
final class StartTime {
    private final StartOptions options;

    StartTime(StartOptions options) {
        this.options = options;
    }

    void report() {
        Optional<Instant> begin = ProcessHandle.current().info().startInstant();
        begin.ifPresent(instant -> {
            String text = NLS.bind(Messages.Start_took, Duration.between(instant, Instant.now()).toMillis());
            ILog.of(StartTime.class).info(text);
            if (options.time()) {
                System.out.println(text);
            }
        });
        if (options.time()) {
            PlatformUI.getWorkbench().close();
        }
    }
}
