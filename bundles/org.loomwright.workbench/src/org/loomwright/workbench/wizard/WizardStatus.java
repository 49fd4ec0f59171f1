// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.wizard;

import java.lang.reflect.InvocationTargetException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;

/** What to show of a failure. */
final class WizardStatus {
    private WizardStatus() {
    }

    static IStatus of(InvocationTargetException problem) {
        Throwable cause = problem.getCause();
        return cause instanceof CoreException core ? core.getStatus() : Status.error(String.valueOf(cause), cause);
    }
}
