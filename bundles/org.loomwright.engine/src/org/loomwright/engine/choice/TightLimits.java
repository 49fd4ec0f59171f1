// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The limits that can still bind: not those that hold whatever is chosen, nor those that follow from another. */
final class TightLimits {
    private final Tables tables;
    private final Domains domains;

    private TightLimits(Tables tables, Domains domains) {
        this.tables = tables;
        this.domains = domains;
    }

    /** The tables with these limits only. */
    static Tables of(Tables tables, Domains domains) {
        return tables.only(new TightLimits(tables, domains).places());
    }

    private int[] places() {
        Map<List<Integer>, List<Integer>> byItems = new LinkedHashMap<>();
        for (int l = 0; l < tables.atMost.length; l++) {
            int limit = l;
            if (canBind(limit)) {
                List<Integer> items = IntStream.of(tables.itemsOf[limit]).sorted().boxed().toList();
                List<Integer> alike = byItems.computeIfAbsent(items, k -> new ArrayList<>());
                if (alike.stream().noneMatch(other -> follows(limit, other))) {
                    alike.removeIf(other -> follows(other, limit));
                    alike.add(limit);
                }
            }
        }
        return byItems.values().stream().flatMap(List::stream).mapToInt(Integer::intValue).sorted().toArray();
    }

    private boolean canBind(int limit) {
        double most = 0;
        for (int k = 0; k < tables.itemsOf[limit].length; k++) {
            most += StrictMath.max(0, domains.most(tables.itemsOf[limit][k], tables.values[limit][k]));
        }
        return most > tables.atMost[limit];
    }

    /** True when a limit holds wherever the other does: relative to the figures, its values are nowhere above the other's. */
    private boolean follows(int limit, int other) {
        double atMost = tables.atMost[limit];
        double otherMost = tables.atMost[other];
        if (!(atMost > 0 && otherMost > 0)) {
            return false;
        }
        for (int k = 0; k < tables.itemsOf[limit].length; k++) {
            int item = tables.itemsOf[limit][k];
            double[] values = tables.values[limit][k];
            double[] beside = beside(other, item, k);
            for (int o = 0; o < values.length; o++) {
                if (domains.isOpen(item, o) && values[o] * otherMost > beside[o] * atMost) {
                    return false;
                }
            }
        }
        return true;
    }

    /** What an item takes of a limit; items mostly stand at the same place in both. */
    private double[] beside(int limit, int item, int place) {
        int[] items = tables.itemsOf[limit];
        if (items[place] == item) {
            return tables.values[limit][place];
        }
        for (int k = 0; k < items.length; k++) {
            if (items[k] == item) {
                return tables.values[limit][k];
            }
        }
        throw new IllegalStateException("limits of the same items differ in their items");
    }
}
