// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Display;
import org.loomwright.workbench.live.OwnerThread;

/**
 * The thread of a display as the owner of models.
 *
 * @param display the display
 */
public record DisplayThread(Display display) implements OwnerThread {
    @Override
    public void later(int delayMs, Runnable action) {
        display.timerExec(delayMs, action);
    }

    @Override
    public void post(Runnable action) {
        try {
            if (!display.isDisposed()) {
                display.asyncExec(action);
            }
        } catch (SWTException gone) {
            // the window was closed in between: nobody waits for this any more
            return;
        }
    }
}
