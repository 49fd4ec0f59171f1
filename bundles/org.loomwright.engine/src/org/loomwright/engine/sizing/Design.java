// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.choice.ChoiceProblem;

/**
 * Demands on the open items, as a problem of choice: sums that must not be exceeded, options that do not go together, options
 * struck out. A demand with an id that is there already takes its place.
 */
final class Design {
    private final OpenItems open;
    private final Map<String, ChoiceProblem.Limit> limits = new LinkedHashMap<>();
    private final Map<String, ChoiceProblem.Pairing> pairings = new LinkedHashMap<>();
    private final Map<String, Constraint> meanings = new LinkedHashMap<>();
    private final Map<String, Double> nominals = new LinkedHashMap<>();
    private final Struck struck = new Struck();

    Design(OpenItems open) {
        this.open = open;
    }

    OpenItems open() {
        return open;
    }

    Struck struck() {
        return struck;
    }

    /** Nominal voltage of the domain that a drop limit belongs to, V; set by {@link #nominal}. */
    double nominalV(String id) {
        return nominals.getOrDefault(id, 0.0);
    }

    /** Notes the nominal voltage of a drop limit. */
    void nominal(String id, double volts) {
        nominals.put(id, volts);
    }

    /** What a limit or pairing means. */
    Constraint meaning(String id) {
        return meanings.get(id);
    }

    Map<String, ChoiceProblem.Limit> limits() {
        return limits;
    }

    Map<String, ChoiceProblem.Pairing> pairings() {
        return pairings;
    }

    /** Adds a sum; values by item, one for each option. Without items there is nothing to choose, and nothing is added. */
    void limit(String id, double atMost, Map<Integer, double[]> values, Constraint meaning) {
        if (values.isEmpty()) {
            return;
        }
        List<ChoiceProblem.Term> terms = new ArrayList<>();
        values.forEach((item, figures) -> {
            List<Double> list = new ArrayList<>();
            for (double figure : figures) {
                list.add(figure);
            }
            terms.add(new ChoiceProblem.Term(item, list));
        });
        limits.put(id, new ChoiceProblem.Limit(id, atMost, terms));
        meanings.put(id, meaning);
    }

    /** Adds a pairing of an item's options with those of another. */
    void pairing(String id, int itemA, int itemB, boolean[][] allowed, Constraint meaning) {
        List<List<Boolean>> rows = new ArrayList<>();
        for (boolean[] row : allowed) {
            List<Boolean> list = new ArrayList<>();
            for (boolean each : row) {
                list.add(each);
            }
            rows.add(list);
        }
        ChoiceProblem.Pairing before = pairings.get(id);
        if (before != null) {
            for (int a = 0; a < rows.size(); a++) {
                for (int b = 0; b < rows.get(a).size(); b++) {
                    rows.get(a).set(b, rows.get(a).get(b) && before.allowed().get(a).get(b));
                }
            }
        }
        pairings.put(id, new ChoiceProblem.Pairing(id, itemA, itemB, rows));
        meanings.put(id, meaning);
    }

    /** Takes over all that another demands. */
    void addAll(Design other) {
        limits.putAll(other.limits);
        other.pairings.forEach((id, pairing) -> pairing(id, pairing.itemA(), pairing.itemB(), array(pairing),
                other.meanings.get(id)));
        meanings.putAll(other.meanings);
        nominals.putAll(other.nominals);
        struck.addAll(other.struck);
    }

    private static boolean[][] array(ChoiceProblem.Pairing pairing) {
        boolean[][] rows = new boolean[pairing.allowed().size()][];
        for (int a = 0; a < rows.length; a++) {
            rows[a] = new boolean[pairing.allowed().get(a).size()];
            for (int b = 0; b < rows[a].length; b++) {
                rows[a][b] = pairing.allowed().get(a).get(b);
            }
        }
        return rows;
    }
}
