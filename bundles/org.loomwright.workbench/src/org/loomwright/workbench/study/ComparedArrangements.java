// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.List;
import org.loomwright.engine.compare.ArrangementComparison;

/**
 * Arrangements compared, for a chart of them.
 *
 * @param comparison the figures
 * @param labels     what each is called
 * @param state      how they were taken, in words
 */
public record ComparedArrangements(ArrangementComparison comparison, List<String> labels, String state) {
    public ComparedArrangements {
        labels = List.copyOf(labels);
    }
}
