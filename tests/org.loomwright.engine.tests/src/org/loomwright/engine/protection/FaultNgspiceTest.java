// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;

/**
 * Fault currents and currents of bonds against ngspice, a general-purpose circuit simulator, which is told the resistances and
 * the sources; their modes are judged by the voltages that it finds.
 */
class FaultNgspiceTest {
    private static final double WITHIN = 1e-6;
    private static final int PER_DECK = 12;
    private static final int VEHICLES = 12;

    @Test
    void randomVehiclesAgreeWithAllBondsAndWithEachLost() {
        List<SpiceFault> faults = new ArrayList<>();
        for (int seed = 0; seed < VEHICLES; seed++) {
            RandomVehicle vehicle = new RandomVehicle(100 + seed);
            Plan plan = vehicle.plan();
            for (Extreme extreme : Extreme.values()) {
                FaultNetwork network = extreme == Extreme.LARGEST ? FaultNetwork.together(plan, extreme)
                        : FaultNetwork.apart(plan, extreme);
                List<int[]> pairs = vehicle.supplyToReturn(plan);
                for (int k = 0; k < pairs.size(); k += 3) {
                    faults.add(new SpiceFault(network, pairs.get(k)));
                }
                for (int bond = 0; bond < plan.bonds().size(); bond++) {
                    FaultNetwork less = network.without(network.branch(FaultBranch.Kind.BOND, bond));
                    faults.add(new SpiceFault(less, pairs.get(bond % pairs.size())));
                }
            }
        }
        assertTrue(faults.size() > 150, "faults " + faults.size());
        compare(faults);
    }

    static void compare(List<SpiceFault> faults) {
        int limited = 0;
        for (int from = 0; from < faults.size(); from += PER_DECK) {
            List<SpiceFault> batch = faults.subList(from, Math.min(faults.size(), from + PER_DECK));
            Map<String, Double> simulated = SpiceFault.run(batch);
            for (int k = 0; k < batch.size(); k++) {
                SpiceFault fault = batch.get(k);
                FaultFlow flow = fault.flow();
                double expected = SpiceFault.printed(simulated, "f" + k);
                String where = fault.toString();
                assertEquals(expected, flow.currentA(), 2e-3 + WITHIN * Math.abs(expected), where);
                for (int branch : fault.bonds()) {
                    double there = SpiceFault.printed(simulated, "b" + k + "y" + branch);
                    double most = Math.max(Math.abs(expected), Math.abs(there));
                    assertEquals(there, flow.branchA(branch), 2e-3 + WITHIN * most, where);
                }
                fault.checkModes(k, simulated);
                limited += fault.limited();
            }
        }
        assertTrue(limited > 0, "no source at its limit was compared");
    }
}
