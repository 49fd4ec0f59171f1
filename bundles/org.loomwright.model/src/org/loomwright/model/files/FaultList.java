// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.ArrayList;
import java.util.List;

/** Faults of one file while it is read: the first hundred by position are listed, the rest is counted. */
final class FaultList {
    /** So many faults of one file are listed. */
    static final int LISTED = 100;

    private final List<ReadFault> faults = new ArrayList<>();
    private int uncounted;

    void add(ReadFault fault) {
        faults.add(fault);
    }

    /** Counts a fault that comes after a hundred others. */
    void countOnly() {
        uncounted++;
    }

    boolean isEmpty() {
        return faults.isEmpty();
    }

    /** The faults by position; when there are more than are listed, the last one says how many more. */
    List<ReadFault> listed() {
        List<ReadFault> sorted = new ArrayList<>(faults);
        sorted.sort(ReadFault.BY_POSITION);
        int rest = uncounted + Math.max(0, sorted.size() - LISTED);
        if (rest == 0) {
            return List.copyOf(sorted);
        }
        List<ReadFault> shown = new ArrayList<>(sorted.subList(0, LISTED));
        ReadFault last = shown.get(LISTED - 1);
        shown.add(new ReadFault(last.file(), last.line(), last.column(), null,
                rest + (rest == 1 ? " more fault in this file is" : " more faults in this file are") + " not listed", null));
        return List.copyOf(shown);
    }
}
