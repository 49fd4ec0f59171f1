// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import org.loomwright.engine.assembly.Plan;

/** The hottest surroundings along a conductor in one case. */
public final class ConductorAmbient {
    private ConductorAmbient() {
    }

    /**
     * Highest ambient of the zones that the conductor's cable passes, degrees Celsius; of the zones of the devices at its
     * ends when it lies in no run; outside where there is no zone.
     */
    public static double ambientC(Plan plan, Plan.Case state, int conductor) {
        Plan.Conductor core = plan.conductors().get(conductor);
        Plan.Cable cable = plan.cables().get(core.cable());
        double hottestC = cable.zone() >= 0 ? of(state, cable.zone()) : Double.NEGATIVE_INFINITY;
        for (int run : cable.path()) {
            hottestC = StrictMath.max(hottestC, of(state, plan.runs().get(run).zone()));
        }
        if (hottestC == Double.NEGATIVE_INFINITY) {
            hottestC = StrictMath.max(of(state, zoneOf(plan, core.a())), of(state, zoneOf(plan, core.b())));
        }
        return hottestC;
    }

    /** Ambient of a zone, outside for -1, degrees Celsius. */
    public static double of(Plan.Case state, int zone) {
        return zone < 0 || zone >= state.ambientC().size() ? state.outsideC() : state.ambientC().get(zone);
    }

    private static int zoneOf(Plan plan, int terminal) {
        Plan.Terminal at = plan.terminals().get(terminal);
        if (at.device() >= 0) {
            return plan.devices().get(at.device()).zone();
        }
        return at.place() < 0 ? -1 : plan.places().get(at.place()).zone();
    }
}
