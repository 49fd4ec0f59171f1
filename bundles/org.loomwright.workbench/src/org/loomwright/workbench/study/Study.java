// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.emf.common.util.Monitor;

/** One study of a vehicle as it stood when it was asked for; run in the background. */
public interface Study {
    /** Which study. */
    StudyKind kind();

    /** Steps of work that the monitor will be told of, about. */
    int work();

    /**
     * Makes the study.
     *
     * @throws java.util.concurrent.CancellationException when the monitor is cancelled
     */
    StudyOutcome run(Monitor monitor);
}
