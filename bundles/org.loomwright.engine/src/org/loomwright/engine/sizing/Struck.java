// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.LinkedHashMap;
import java.util.Map;

/** Options that an item cannot take whatever the others take, each with what speaks against it. */
final class Struck {
    private final Map<Integer, Map<Integer, Constraint>> byItem = new LinkedHashMap<>();

    /** Strikes an option; the first reason given stands. */
    void strike(int item, int option, Constraint why) {
        byItem.computeIfAbsent(item, i -> new LinkedHashMap<>()).putIfAbsent(option, why);
    }

    /** Why an option is struck, or null when it is not. */
    Constraint why(int item, int option) {
        return byItem.getOrDefault(item, Map.of()).get(option);
    }

    /** Takes over what another struck. */
    void addAll(Struck other) {
        other.byItem.forEach((item, options) -> options.forEach((option, why) -> strike(item, option, why)));
    }
}
