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
    private final List<Map<Integer, ReturnDuty>> duties = new ArrayList<>();

    ReturnDuties(Plan plan, SupplyGraph graph) {
        this.plan = plan;
        for (int c = 0; c < plan.conductors().size(); c++) {
            duties.add(new TreeMap<>());
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
            if (amps == 0) {
                continue;
            }
            ReturnDuty old = duties.get(c).get(device);
            boolean more = old == null || amps > old.largestA();
            boolean less = old == null || amps < old.smallestA();
            duties.get(c).put(device, new ReturnDuty(device, more ? fault : old.largest(), more ? amps : old.largestA(),
                    less ? fault : old.smallest(), less ? amps : old.smallestA(), less ? deviceA : old.deviceA()));
        }
    }

    /** Duties of a return, the device with the largest rating first, faults without a device before all. */
    List<ReturnDuty> of(int conductor) {
        List<ReturnDuty> found = new ArrayList<>(duties.get(conductor).values());
        found.sort((x, y) -> Double.compare(rating(y.protector()), rating(x.protector())));
        return found;
    }

    private double rating(int protector) {
        return protector < 0 ? Double.POSITIVE_INFINITY : ((Plan.Protector) plan.elements().get(protector)).ratingA();
    }
}
