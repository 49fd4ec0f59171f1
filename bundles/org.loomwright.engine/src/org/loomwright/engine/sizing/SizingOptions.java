// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.List;
import org.loomwright.engine.assembly.StockLengths;

/**
 * What sizing is asked for.
 *
 * @param objective         what is to be least
 * @param openPersonChoices what a person chose may be chosen anew as well; existing wiring never is
 * @param stock             cable at hand
 * @param sensitivity       work out what each limit costs
 */
public record SizingOptions(SizingObjective objective, boolean openPersonChoices, List<StockLengths.Length> stock,
        boolean sensitivity) {
    public SizingOptions {
        stock = List.copyOf(stock);
    }

    /** Least copper, nothing that a person chose. */
    public static SizingOptions leastCopper() {
        return new SizingOptions(SizingObjective.COPPER, false, List.of(), false);
    }
}
