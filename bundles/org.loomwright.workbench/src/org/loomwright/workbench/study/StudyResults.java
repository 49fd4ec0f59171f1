// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.eclipse.ui.PlatformUI;

/** Hands outcomes of studies to the views that show them. */
public final class StudyResults {
    private static final StudyResults CURRENT = new StudyResults();

    private final List<Consumer<StudyOutcome>> listeners = new CopyOnWriteArrayList<>();
    private volatile StudyOutcome latest;

    /** Those of this workbench. */
    public static StudyResults current() {
        return CURRENT;
    }

    /** The outcome of the study that ended last; null before the first. */
    public StudyOutcome latest() {
        return latest;
    }

    /** Tells of each outcome, in the window's thread. */
    public void listen(Consumer<StudyOutcome> listener) {
        listeners.add(listener);
    }

    /** Ends the telling. */
    public void forget(Consumer<StudyOutcome> listener) {
        listeners.remove(listener);
    }

    void publish(StudyOutcome outcome) {
        latest = outcome;
        PlatformUI.getWorkbench().getDisplay().asyncExec(() -> listeners.forEach(each -> each.accept(outcome)));
    }
}
