// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.DesignFigures;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

class SizingByChanceTest {
    private static List<Finding> findings(Plan plan) {
        CheckContext context = new CheckContext(plan, CaseSolver.solveAll(plan, new BasicMonitor()), NetFinder.find(plan));
        return DesignFigures.findings(context, SizingStudy.RULES, new BasicMonitor()).stream()
                .filter(finding -> finding.severity() != Severity.NOTE).toList();
    }

    private static SizingResult sized(Plan plan, boolean all) {
        return SizingStudy.run(plan, List.of(), new SizingOptions(SizingObjective.COPPER, all, List.of(), false),
                new BasicMonitor());
    }

    @Test
    void fiveHundredVehiclesPassTheCheckOrSayWhatCannotBeMet() {
        int passed = 0;
        for (int seed = 0; seed < 500; seed++) {
            SizingResult result = sized(SmallVehicle.of(seed, 1 + seed % 4), true);
            List<Finding> found = findings(result.plan());
            assertEquals(result.troubles().stream().map(Finding::title).toList(), found.stream().map(Finding::title).toList(),
                    "seed " + seed);
            passed += found.isEmpty() ? 1 : 0;
        }
        assertTrue(passed > 450, passed + " of 500 pass");
    }

    @Test
    void agreesWithTryingEverySectionInTheCheckItself() {
        int compared = 0;
        for (int seed = 0; seed < 14; seed++) {
            Plan plan = SmallVehicle.only(SmallVehicle.of(seed, 2), List.of("W2", "W10", "W21"), 2);
            OpenItems open = OpenItems.of(plan, SizingOptions.leastCopper());
            Objectives copper = new Objectives(plan, open, SizingOptions.leastCopper());
            double best = Double.POSITIVE_INFINITY;
            int[] choice = new int[open.size()];
            boolean more = true;
            while (more) {
                double kg = copper.totals(choice).copperKg();
                if (kg < best && findings(SizedPlan.of(plan, open, choice)).isEmpty()) {
                    best = kg;
                }
                more = false;
                for (int i = 0; i < choice.length && !more; i++) {
                    more = choice[i] < open.options(i) - 1;
                    choice[i] = more ? choice[i] + 1 : 0;
                }
            }
            SizingResult result = sized(plan, false);
            if (Double.isFinite(best)) {
                compared++;
                assertEquals(best, result.after().copperKg(), 1e-9, "seed " + seed);
                assertEquals(List.of(), result.troubles());
            } else {
                assertTrue(!result.troubles().isEmpty(), "seed " + seed);
            }
        }
        assertTrue(compared >= 7, compared + " compared");
    }
}
