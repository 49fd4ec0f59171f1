// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.flow.OperatingPoint.Status;

/** Work grows with the network no faster than near linear: counted, not timed. */
class LargeNetworkTest {
    private static final FlowOptions OPTIONS = FlowOptions.standard();

    /** A trunk with boxes of ten ways; half of the loads return by the structure, half by a cable of their own. */
    static Wiring vehicle(int loads) {
        Random random = new Random(loads);
        Network.WireHeat heat = new Network.WireHeat(40, 25, 30, 105, 0.00393);
        Wiring wiring = new Wiring().emf("G1", "batt", "minus", 12.6, 0.004).regulator("G2", "alt", "engine", 14.3, 0.002, 120)
                .wire("W.alt", "alt", "batt", 0.001).wire("W.minus", "minus", "0", 0.0005).wire("W.eng", "engine", "0", 0.0003);
        String from = "batt";
        for (int k = 0; k < loads; k++) {
            if (k % 10 == 0) {
                String box = "box" + k / 10;
                wiring.wire("W." + box, k % 100 == 0 ? "batt" : from, box, 0.0005 + 0.001 * random.nextDouble());
                from = box;
            }
            wiring.resistor("F" + k, from, "way" + k, 0.004);
            wiring.wire("W" + k, "way" + k, "plus" + k, 0.01 + 0.03 * random.nextDouble(), 0.0005, heat);
            String back = k % 2 == 0 ? "0" : "back" + k;
            if (k % 2 == 1) {
                wiring.wire("R" + k, back, "minus", 0.01 + 0.03 * random.nextDouble(), 0.0005, heat);
            }
            Network.LoadLaw law = Network.LoadLaw.values()[k % 3];
            double watt = (0.5 + random.nextDouble()) * 2000 / loads;
            wiring.load("E" + k, "plus" + k, back, law, law == Network.LoadLaw.POWER ? watt
                    : law == Network.LoadLaw.CURRENT ? watt / 12 : 144 / watt);
        }
        return wiring;
    }

    @Test
    void twoThousandLoadsAreSolvedInAFewSteps() {
        int[] steps = {0};
        BasicMonitor counting = new BasicMonitor() {
            @Override
            public boolean isCanceled() {
                steps[0]++;
                return false;
            }
        };
        Network network = vehicle(2000).network();
        OperatingPoint point = FlowSolver.solve(network, OPTIONS, counting);
        FlowAssert.checked(point, OPTIONS);
        assertEquals(Status.SOLVED, point.status());
        assertTrue(steps[0] <= 40, () -> steps[0] + " Newton steps");
    }

    @Test
    void entriesOfTheFactorsGrowWithTheBranches() {
        for (int loads : new int[] {60, 500, 2000, 8000}) {
            Network network = vehicle(loads).network();
            int entries = new Circuit(network, OPTIONS).matrix.factorEntries();
            assertTrue(entries <= 3 * network.items().size(), () -> entries + " for " + network.items().size() + " items");
        }
    }

    @Test
    void stepsDoNotGrowWithTheNetwork() {
        for (int loads : new int[] {20, 200, 4000}) {
            int[] steps = {0};
            FlowSolver.solve(vehicle(loads).network(), OPTIONS, new BasicMonitor() {
                @Override
                public boolean isCanceled() {
                    steps[0]++;
                    return false;
                }
            });
            assertTrue(steps[0] <= 40, () -> steps[0] + " Newton steps for " + loads + " loads");
        }
    }
}
