// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.engine.assembly.Plan;

/** Collects what returns carry while far-end faults flow. */
final class ReturnDuties implements Faults.Listener {
    private final Plan plan;
    private final List<Integer> returns = new ArrayList<>();
    private final List<Map<Integer, Carried>> largest = new ArrayList<>();
    private final List<Map<Integer, Carried>> smallest = new ArrayList<>();

    ReturnDuties(Plan plan, SupplyGraph graph) {
        this.plan = plan;
        for (int c = 0; c < plan.conductors().size(); c++) {
            largest.add(new TreeMap<>());
            smallest.add(new TreeMap<>());
            if (!graph.supply(plan.conductors().get(c).a())) {
                returns.add(c);
            }
        }
    }

    @Override
    public void far(Fault fault, FaultFlow flow, int device) {
        double deviceA = device < 0 ? 0 : StrictMath.abs(flow.elementA(device));
        for (int c : returns) {
            double amps = StrictMath.abs(flow.conductorA(c));
            if (amps > 0) {
                Carried now = new Carried(fault, amps, deviceA);
                if (fault.extreme() == Extreme.SMALLEST) {
                    smallest.get(c).merge(device, now, (old, other) -> other.amps() < old.amps() ? other : old);
                } else {
                    largest.get(c).merge(device, now, (old, other) -> other.amps() > old.amps() ? other : old);
                }
            }
        }
    }

    /**
     * Duties of a return, the device with the largest rating first, faults without a device before all. Only devices whose
     * faults it carries with batteries alone: with charging sources at work it may carry what these give to the batteries.
     */
    List<ReturnDuty> of(int conductor) {
        List<ReturnDuty> found = new ArrayList<>();
        smallest.get(conductor).forEach((device, least) -> {
            Carried most = largest.get(conductor).getOrDefault(device, least);
            most = most.amps() < least.amps() ? least : most;
            found.add(new ReturnDuty(device, most.fault(), most.amps(), least.fault(), least.amps(), least.deviceA()));
        });
        found.sort((x, y) -> Double.compare(rating(y.protector()), rating(x.protector())));
        return found;
    }

    private record Carried(Fault fault, double amps, double deviceA) {
    }

    private double rating(int protector) {
        return protector < 0 ? Double.POSITIVE_INFINITY : ((Plan.Protector) plan.elements().get(protector)).ratingA();
    }
}
