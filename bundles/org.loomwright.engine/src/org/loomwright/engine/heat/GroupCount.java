// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;

/**
 * Counts what warms a conductor from beside: the largest number of circuits or conductors together in one run, in the same
 * duct or all open, along its cable. It counts what the conductor's grouping table counts.
 *
 * <ul>
 * <li>Conductors: every loaded core. A supply whose load returns through the structure is one. The rating of a multi-core
 * cable already includes as many cores as its rating table says are loaded; of the cable's own cores only the further ones
 * are added.
 * <li>Circuits: a multi-core cable is one circuit whatever it carries; single cores make one circuit for as many as the
 * rating table says are loaded, rounded up (IEC 60364-5-52, table of groups, note on single-core cables; recalled).
 * </ul>
 *
 * Cores that are not loaded (at or below the practice's share of their grouped rating) are not counted; the conductor in question
 * always is.
 */
public final class GroupCount {
    private final Plan plan;
    private final List<List<Integer>> coresOf = new ArrayList<>();
    private final List<List<Integer>> bunches = new ArrayList<>();
    private final List<List<Integer>> bunchesOf = new ArrayList<>();

    /** Prepares the count for a plan. */
    public GroupCount(Plan plan) {
        this.plan = plan;
        Map<String, Integer> bunchOf = new LinkedHashMap<>();
        for (int c = 0; c < plan.cables().size(); c++) {
            coresOf.add(new ArrayList<>());
            List<Integer> mine = new ArrayList<>();
            Plan.Cable cable = plan.cables().get(c);
            for (int leg = 0; leg < cable.path().size(); leg++) {
                String duct = leg < cable.ducts().size() ? cable.ducts().get(leg) : "";
                join(bunchOf, cable.path().get(leg) + " " + duct, c, mine);
            }
            bunchesOf.add(mine);
        }
        for (int i = 0; i < plan.conductors().size(); i++) {
            coresOf.get(plan.conductors().get(i).cable()).add(i);
        }
    }

    private void join(Map<String, Integer> bunchOf, String where, int cable, List<Integer> mine) {
        int bunch = bunchOf.computeIfAbsent(where, k -> {
            bunches.add(new ArrayList<>());
            return bunches.size() - 1;
        });
        if (!mine.contains(bunch)) {
            bunches.get(bunch).add(cable);
            mine.add(bunch);
        }
    }

    /**
     * Count for each conductor, itself included.
     *
     * @param loaded whether each conductor of the plan is loaded
     */
    public int[] counts(boolean[] loaded) {
        int[] loadedCores = new int[plan.cables().size()];
        for (int c = 0; c < loadedCores.length; c++) {
            for (int core : coresOf.get(c)) {
                loadedCores[c] += loaded[core] ? 1 : 0;
            }
        }
        int[] cores = new int[bunches.size()];
        int[] multi = new int[bunches.size()];
        int[] single = new int[bunches.size()];
        for (int b = 0; b < bunches.size(); b++) {
            for (int cable : bunches.get(b)) {
                cores[b] += loadedCores[cable];
                if (loadedCores[cable] > 0 && isMulti(cable)) {
                    multi[b]++;
                } else {
                    single[b] += loadedCores[cable];
                }
            }
        }
        int[] counts = new int[plan.conductors().size()];
        for (int i = 0; i < counts.length; i++) {
            int cable = plan.conductors().get(i).cable();
            int own = loadedCores[cable] + (loaded[i] ? 0 : 1);
            counts[i] = together(cable, own, 0, 0, 0);
            for (int b : bunchesOf.get(cable)) {
                int cable1 = isMulti(cable) && loadedCores[cable] > 0 ? 1 : 0;
                int single1 = isMulti(cable) ? 0 : loadedCores[cable];
                counts[i] = Math.max(counts[i], together(cable, own, cores[b] - loadedCores[cable], multi[b] - cable1,
                        single[b] - single1));
            }
        }
        return counts;
    }

    /** Own cores and those of the others beside them, by what the cable's table counts. */
    private int together(int cable, int own, int otherCores, int otherMulti, int otherSingle) {
        int included = included(cable);
        if (countsConductors(plan.cables().get(cable))) {
            return Math.max(1, own - (isMulti(cable) ? included - 1 : 0)) + otherCores;
        }
        if (isMulti(cable)) {
            return 1 + otherMulti + upward(otherSingle, included);
        }
        return otherMulti + upward(own + otherSingle, included);
    }

    private boolean isMulti(int cable) {
        return plan.cables().get(cable).cores() > 1;
    }

    private int included(int cable) {
        Plan.Ampacity table = plan.cables().get(cable).ampacity();
        return table == null ? 1 : Math.max(1, table.loadedCores());
    }

    private static int upward(int cores, int each) {
        return (cores + each - 1) / each;
    }

    /** True when the cable's tables count conductors, false for circuits. */
    static boolean countsConductors(Plan.Cable cable) {
        if (cable.grouping() != null) {
            return cable.grouping().countsConductors();
        }
        return cable.ampacity() != null && cable.ampacity().countsConductors();
    }
}
