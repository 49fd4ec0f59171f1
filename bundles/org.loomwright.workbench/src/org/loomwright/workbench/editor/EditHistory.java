// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.time.Instant;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;

/** Commands that were run, those that are not saved counted. */
final class EditHistory extends BasicCommandStack {
    private static final int NEVER = -2;
    private Instant last = Instant.EPOCH;

    EditHistory() {
        addCommandStackListener(event -> last = Instant.now());
    }

    /** How many commands lie between what is saved and what is here; all of them when what is saved cannot be reached. */
    int unsaved() {
        return saveIndex <= NEVER ? top + 1 : StrictMath.abs(top - saveIndex);
    }

    /** What the latest command is called; empty when there is none. */
    String lastLabel() {
        Command latest = getMostRecentCommand();
        return latest == null ? "" : latest.getLabel();
    }

    /** When something was last done, undone or redone. */
    Instant last() {
        return last;
    }

    /** What is here is not what is saved, whatever is undone. */
    void neverSaved() {
        saveIndex = NEVER;
    }
}
