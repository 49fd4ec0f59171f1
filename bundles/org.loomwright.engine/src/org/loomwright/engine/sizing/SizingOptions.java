// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.engine.assembly.StockLengths;

/**
 * What sizing is asked for.
 *
 * @param objective         what is to be least
 * @param openPersonChoices what a person chose may be chosen anew as well; existing wiring never is
 * @param stock             cable at hand
 * @param sensitivity       work out what each limit costs
 * @param given             sections, mm2, and rated currents, A, that are settled already, by id of the cable or way
 */
public record SizingOptions(SizingObjective objective, boolean openPersonChoices, List<StockLengths.Length> stock,
        boolean sensitivity, Map<String, Double> given) {
    public SizingOptions {
        stock = List.copyOf(stock);
        given = Collections.unmodifiableMap(new TreeMap<>(given));
    }

    /** Nothing settled yet. */
    public SizingOptions(SizingObjective objective, boolean openPersonChoices, List<StockLengths.Length> stock,
            boolean sensitivity) {
        this(objective, openPersonChoices, stock, sensitivity, Map.of());
    }

    /** Least copper, nothing that a person chose. */
    public static SizingOptions leastCopper() {
        return new SizingOptions(SizingObjective.COPPER, false, List.of(), false);
    }

    /** The same with some sections and rated currents settled. */
    SizingOptions with(Map<String, Double> settled) {
        return new SizingOptions(objective, openPersonChoices, stock, sensitivity, settled);
    }

    /** The same without working out what limits cost. */
    SizingOptions withoutSensitivity() {
        return new SizingOptions(objective, openPersonChoices, stock, false, given);
    }
}
