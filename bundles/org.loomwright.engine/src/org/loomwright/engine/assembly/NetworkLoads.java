// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import org.loomwright.engine.flow.Network;

/**
 * The loads of one case. A load that is on is one item: its power over its efficiency plus what it takes without load, its
 * current, or its resistance (that of its power at the voltage where it is stated). A load that is off draws its standby
 * current.
 */
final class NetworkLoads {
    private final Plan.DemandState[] states;
    private final NetworkNodes nodes;
    private final NetworkDesign design;

    /**
     * @param design what feeds the network of the drop; null in other networks
     */
    NetworkLoads(Plan plan, Plan.Case state, NetworkOptions options, NetworkNodes nodes, NetworkDesign design) {
        this.nodes = nodes;
        this.design = design;
        states = new Plan.DemandState[plan.elements().size()];
        for (Plan.DemandState demand : state.demands()) {
            boolean duty = demand.onS() < demand.periodS();
            if (demand.factor() > 0 && !(duty && options.variant() == NetworkOptions.Variant.BASE)) {
                states[demand.demand()] = demand;
            }
        }
    }

    /** The load while it is on; null when it is off or takes nothing. */
    Network.Item on(int e, Plan.Demand demand) {
        if (states[e] == null) {
            return null;
        }
        double value = value(demand, states[e].factor());
        if (!(value > 0)) {
            return null;
        }
        int a = nodes.of(demand.a());
        int b = nodes.of(demand.b());
        if (design != null) {
            double volts = design.nominalV(a);
            double amps = switch (law(demand)) {
                case POWER -> value / volts;
                case CURRENT -> value;
                case RESISTANCE -> volts / value;
            };
            return new Network.Load(demand.id(), a, b, Network.LoadLaw.CURRENT, amps, Double.NaN, Double.NaN);
        }
        double restartV = Double.isNaN(demand.offV()) ? Double.NaN
                : demand.restartV() >= demand.offV() ? demand.restartV() : demand.offV();
        return new Network.Load(demand.id(), a, b, law(demand), value, demand.offV(), restartV);
    }

    /** The standby current of a load that is off; null when it has none. */
    Network.Item standby(int e, Plan.Demand demand) {
        return states[e] != null || !(demand.standbyA() > 0) ? null
                : new Network.Load(demand.id(), nodes.of(demand.a()), nodes.of(demand.b()), Network.LoadLaw.CURRENT,
                        demand.standbyA(), Double.NaN, Double.NaN);
    }

    private static double value(Plan.Demand demand, double factor) {
        return switch (law(demand)) {
            case POWER -> demand.watts() * factor / (demand.efficiency() > 0 ? demand.efficiency() : 1)
                    + (demand.noLoadW() > 0 ? demand.noLoadW() : 0);
            case CURRENT -> demand.amps() * factor;
            case RESISTANCE -> (demand.ohms() > 0 ? demand.ohms() : demand.refV() * demand.refV() / demand.watts()) / factor;
        };
    }

    private static Network.LoadLaw law(Plan.Demand demand) {
        return switch (demand.law()) {
            case "power" -> Network.LoadLaw.POWER;
            case "current" -> Network.LoadLaw.CURRENT;
            case "resistance" -> Network.LoadLaw.RESISTANCE;
            default -> throw new IllegalArgumentException(demand.id() + ": law '" + demand.law()
                    + "'; expected power, current or resistance");
        };
    }
}
