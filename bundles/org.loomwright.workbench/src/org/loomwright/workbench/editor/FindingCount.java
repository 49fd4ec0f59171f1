// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.List;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/**
 * How many findings of each kind.
 *
 * @param errors   errors that stand
 * @param warnings warnings that stand
 * @param notes    notes that stand
 * @param accepted findings that were accepted
 */
public record FindingCount(int errors, int warnings, int notes, int accepted) {

    /** Counts findings of one case; null for all. Those that hold in every case count in each. */
    public static FindingCount of(List<Finding> findings, String caseName) {
        int[] counts = new int[Severity.values().length];
        int accepted = 0;
        for (Finding finding : findings) {
            if (!inCase(finding, caseName)) {
                continue;
            }
            if (finding.accepted() != null) {
                accepted++;
            } else {
                counts[finding.severity().ordinal()]++;
            }
        }
        return new FindingCount(counts[Severity.ERROR.ordinal()], counts[Severity.WARNING.ordinal()],
                counts[Severity.NOTE.ordinal()], accepted);
    }

    /** True when a finding is to be shown while a case is looked at; null for all. */
    public static boolean inCase(Finding finding, String caseName) {
        return caseName == null || finding.caseName() == null || finding.caseName().equals(caseName);
    }
}
