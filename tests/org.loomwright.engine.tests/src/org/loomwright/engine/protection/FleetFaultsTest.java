// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.PlanGraph;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Fault currents of the demo fleet against ngspice, with all bonds and with each one lost. */
class FleetFaultsTest {
    private static final Path FLEET = Path.of("../../bundles/org.loomwright.samples/fleet");

    private static List<Plan> plans() {
        List<Plan> plans = new ArrayList<>();
        VehicleFiles files = new VehicleFiles();
        for (String name : List.of("heron", "otter", "beaver")) {
            Vehicle vehicle = files.openVehicle(FLEET.resolve(name + ".vehicle")).root();
            for (Arrangement arrangement : vehicle.getArrangements()) {
                plans.add(Assembly.assemble(vehicle, arrangement, null).plan());
            }
        }
        return plans;
    }

    @Test
    void faultAndBondCurrentsAgreeWithNgspice() {
        List<SpiceFault> faults = new ArrayList<>();
        for (Plan plan : plans()) {
            SupplyGraph graph = new SupplyGraph(plan, PlanGraph.of(plan));
            ReturnPoints points = new ReturnPoints(plan, graph);
            for (Extreme extreme : Extreme.values()) {
                FaultNetwork network = extreme == Extreme.LARGEST ? FaultNetwork.together(plan, extreme)
                        : FaultNetwork.apart(plan, extreme);
                List<int[]> pairs = pairs(plan, graph, points, network);
                assertTrue(pairs.size() > 20, "faults of " + plan.vehicle());
                for (int k = 0; k < pairs.size(); k += 23) {
                    faults.add(new SpiceFault(network, pairs.get(k)));
                }
                for (int bond = 0; bond < plan.bonds().size(); bond++) {
                    int branch = network.branch(FaultBranch.Kind.BOND, bond);
                    faults.add(new SpiceFault(network.without(branch), pairs.get(bond * 13 % pairs.size())));
                }
            }
        }
        long flowing = faults.stream().filter(fault -> fault.flow().currentA() > 1).count();
        assertTrue(flowing > 60, "faults with a current: " + flowing);
        FaultNgspiceTest.compare(faults);
    }

    @Test
    void bondsLostAgreeWithRebuiltNetworks() {
        for (Plan plan : plans()) {
            FaultNetwork network = FaultNetwork.apart(plan, Extreme.SMALLEST);
            SupplyGraph graph = new SupplyGraph(plan, PlanGraph.of(plan));
            List<int[]> pairs = pairs(plan, graph, new ReturnPoints(plan, graph), network);
            for (int bond = 0; bond < plan.bonds().size(); bond++) {
                FaultNetwork updated = network.without(network.branch(FaultBranch.Kind.BOND, bond));
                FaultNetwork rebuilt = FaultNetwork.apart(LowRankTest.without(plan, List.of(bond)), Extreme.SMALLEST);
                for (int k = bond % 5; k < pairs.size(); k += 5) {
                    double expected = rebuilt.faultA(pairs.get(k)[0], pairs.get(k)[1]);
                    assertEquals(expected, updated.faultA(pairs.get(k)[0], pairs.get(k)[1]), 2e-3 + 1e-7 * Math.abs(expected),
                            plan.vehicle() + " " + plan.arrangement() + " without " + plan.bonds().get(bond).id());
                }
            }
        }
    }

    private static List<int[]> pairs(Plan plan, SupplyGraph graph, ReturnPoints points, FaultNetwork network) {
        List<int[]> pairs = new ArrayList<>();
        for (int c = 0; c < plan.conductors().size(); c++) {
            int end = plan.conductors().get(c).b();
            if (graph.supply(end)) {
                int back = points.returnOf(c, end);
                int body = points.bodyOf(c, end);
                if (back >= 0 && network.node(back) != network.node(end)) {
                    pairs.add(new int[] {network.node(end), network.node(back)});
                }
                if (body >= 0) {
                    pairs.add(new int[] {network.node(end), network.bodyNode(body)});
                }
            }
        }
        return pairs;
    }
}
