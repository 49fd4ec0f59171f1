// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** The command line inside Equinox, over the same code as the plain start. */
public final class LoomwrightApplication implements IApplication {
    private final Interrupt interrupt = new Interrupt();

    @Override
    public Object start(IApplicationContext context) {
        String[] args = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        return Loomwright.run(Console.ofProcess(), interrupt, args);
    }

    @Override
    public void stop() {
        interrupt.raise();
    }
}
