// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.cases;

import java.util.List;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.heat.ConductorRating;

/**
 * One case with its networks solved.
 *
 * @param plan       the plan
 * @param state      the case
 * @param running    network and operating point with the running currents of all loads that are on; the temperature of a
 *                   conductor is steady at its current, or, where loads with a duty pass through it, the peak of the cycle
 * @param base       as running, but with every load that is on only part of the time at its standby current;
 *                   the same object as running when no load of the case has a duty
 * @param design     network and operating point for the drop: loads that are on as constant currents at nominal voltage, each
 *                   domain fed at its source terminal at nominal voltage without inner resistance, other sources resting,
 *                   conductors at the temperatures of {@code running} and contacts as they were there; parts that no domain's
 *                   source reaches are fed at their first battery, converter or regulated source; a converter draws at nominal
 *                   voltage the power that it draws in {@code running}
 * @param ratings    rating of each conductor of the plan
 */
public record SolvedCase(Plan plan, Plan.Case state, Solved running, Solved base, Solved design,
        List<ConductorRating> ratings) {
    public SolvedCase {
        ratings = List.copyOf(ratings);
    }

    /** A network with its operating point. */
    public record Solved(CaseNetwork at, OperatingPoint point) {

        /** Potential of a terminal of the plan, V; NaN where nothing feeds it. */
        public double terminalV(int terminal) {
            int node = at.terminalNode()[terminal];
            return node < 0 ? Double.NaN : point.potentialV()[node];
        }

        /** Potential of a structure body, V. */
        public double bodyV(int body) {
            return point.potentialV()[at.bodyNode()[body]];
        }

        /** Voltage between two terminals of the plan, V. */
        public double voltage(int a, int b) {
            return terminalV(a) - terminalV(b);
        }

        /** Current of a conductor of the plan from a to b, A; 0 when it is not part of the network. */
        public double conductorA(int conductor) {
            return itemA(at.conductorItem()[conductor]);
        }

        /** Current of an element of the plan from a to b, A; 0 when it is not part of the network. */
        public double elementA(int element) {
            return itemA(at.elementItem()[element]);
        }

        /** Temperature of a conductor of the plan, degrees Celsius; NaN when it is not part of the network. */
        public double conductorC(int conductor) {
            int item = at.conductorItem()[conductor];
            return item < 0 ? Double.NaN : point.temperatureC()[item];
        }

        /** Current of an item of the network, A; 0 for -1. */
        public double itemA(int item) {
            return item < 0 ? 0 : point.currentA()[item];
        }
    }
}
