// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.DisjointSets;
import org.loomwright.engine.assembly.FixedJoins;
import org.loomwright.engine.assembly.Plan;

/**
 * Batteries that are always connected side by side, in branches of one or several in series. Isolators that rest closed count
 * as connected; switches that rest open, split-charge links and converters part batteries.
 */
final class BatteryBanks {
    private final List<List<Integer>> branches = new ArrayList<>();
    private final List<List<List<Integer>>> banks = new ArrayList<>();

    private BatteryBanks(Plan plan) {
        DisjointSets joined = FixedJoins.of(plan);
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Contact contact && "hand".equals(contact.driver()) && contact.restClosed()) {
                joined.join(contact.a(), contact.b());
            }
        }
        Set<Integer> used = new HashSet<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Cell && cells(plan, joined, e, true).isEmpty()) {
                branches.add(branch(plan, joined, e, used));
            }
        }
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Cell && !used.contains(e)) {
                branches.add(branch(plan, joined, e, used));
            }
        }
        Map<List<Integer>, List<List<Integer>>> sideBySide = new LinkedHashMap<>();
        for (List<Integer> branch : branches) {
            Plan.Cell top = (Plan.Cell) plan.elements().get(branch.get(0));
            Plan.Cell bottom = (Plan.Cell) plan.elements().get(branch.get(branch.size() - 1));
            sideBySide.computeIfAbsent(List.of(joined.find(top.a()), joined.find(bottom.b())), key -> new ArrayList<>())
                    .add(branch);
        }
        sideBySide.values().stream().filter(bank -> bank.size() > 1).forEach(banks::add);
    }

    /** The batteries of a plan. */
    static BatteryBanks of(Plan plan) {
        return new BatteryBanks(plan);
    }

    /** All branches; cells from the top down. */
    List<List<Integer>> branches() {
        return branches;
    }

    /** Banks of two branches and more, side by side. */
    List<List<List<Integer>>> banks() {
        return banks;
    }

    private static List<Integer> branch(Plan plan, DisjointSets joined, int top, Set<Integer> used) {
        List<Integer> branch = new ArrayList<>(List.of(top));
        used.add(top);
        while (true) {
            List<Integer> below = cells(plan, joined, branch.get(branch.size() - 1), false);
            boolean alone = below.size() == 1 && cells(plan, joined, below.get(0), true).size() == 1;
            if (!alone || !used.add(below.get(0))) {
                return List.copyOf(branch);
            }
            branch.add(below.get(0));
        }
    }

    /** Cells in series with one: above it, or below it. */
    private static List<Integer> cells(Plan plan, DisjointSets joined, int cell, boolean above) {
        Plan.Cell of = (Plan.Cell) plan.elements().get(cell);
        List<Integer> found = new ArrayList<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (e != cell && plan.elements().get(e) instanceof Plan.Cell other
                    && (above ? joined.joined(other.b(), of.a()) : joined.joined(other.a(), of.b()))) {
                found.add(e);
            }
        }
        return found;
    }
}
