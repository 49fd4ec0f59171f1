// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.earth.LossRow.Uncleared;
import org.loomwright.engine.protection.Clearing;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.CurvePair;
import org.loomwright.engine.protection.Extreme;
import org.loomwright.engine.protection.Fault;
import org.loomwright.engine.protection.FaultBranch;
import org.loomwright.engine.protection.FaultFlow;
import org.loomwright.engine.protection.FaultNetwork;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.protection.ProtectionTable;

/**
 * Looks again, without some bonds, at the smallest faults to the structure that the protection study found cleared in time. A
 * fault is no longer cleared when a current still flows and the devices take longer than permitted to end it, each at its own
 * current, its slowest curve and the coldest ambient. Where nothing flows any more, nothing heats.
 */
final class FaultClearing {
    static final String TIME = "fault-clears.time";
    private static final String COLD = "state.cold";

    private final Plan plan;
    private final double limitS;
    private final List<Fault> cleared = new ArrayList<>();
    private final Map<Stand, FaultNetwork> networks = new EnumMap<>(Stand.class);

    private enum Stand { APART, LINKED }

    FaultClearing(ProtectionTable protection) {
        plan = protection.plan();
        limitS = plan.practice().value(TIME);
        for (ConductorProtection row : protection.conductors()) {
            for (Feed feed : row.feeds()) {
                Fault fault = feed.fault(Extreme.SMALLEST, Fault.End.FAR, Fault.Target.BODY);
                if (fault != null && fault.throughA() > 0 && fault.clearing().known() && fault.clearing().within(limitS)
                        && !fault.clearing().steps().isEmpty()) {
                    cleared.add(fault);
                }
            }
        }
    }

    /** The faults that were cleared in time with the bonds and are not without them. */
    List<Uncleared> without(List<Integer> bonds) {
        List<Uncleared> found = new ArrayList<>();
        for (Fault fault : cleared) {
            FaultNetwork network = network(fault.linked() ? Stand.LINKED : Stand.APART);
            int[] lost = bonds.stream().mapToInt(bond -> network.branch(FaultBranch.Kind.BOND, bond)).filter(at -> at >= 0)
                    .toArray();
            FaultFlow with = flow(network, fault);
            boolean carries = bonds.stream().anyMatch(bond -> with.bondA(bond) != 0);
            if (carries && lost.length > 0) {
                Uncleared slower = slower(fault, flow(network.without(lost), fault));
                if (slower != null) {
                    found.add(slower);
                }
            }
        }
        return found;
    }

    private FaultNetwork network(Stand stand) {
        return networks.computeIfAbsent(stand, s -> s == Stand.APART ? FaultNetwork.apart(plan, Extreme.SMALLEST)
                : FaultNetwork.together(plan, Extreme.SMALLEST));
    }

    private static FaultFlow flow(FaultNetwork network, Fault fault) {
        return network.fault(network.node(fault.terminal()), network.bodyNode(fault.partner()));
    }

    /** Too slow without the bonds: devices open one after the other and keep what they have melted; null when in time. */
    private Uncleared slower(Fault fault, FaultFlow after) {
        Map<Integer, Double> progress = new TreeMap<>();
        FaultFlow now = after;
        double seconds = 0;
        int last = fault.clearing().steps().get(0).protector();
        while (now.currentA() != 0 && seconds <= limitS) {
            int next = -1;
            double soonestS = Double.POSITIVE_INFINITY;
            for (int e : now.protectors()) {
                double leftS = (1 - progress.getOrDefault(e, 0.0)) * slowestS(e, StrictMath.abs(now.elementA(e)));
                if (leftS < soonestS) {
                    soonestS = leftS;
                    next = e;
                }
            }
            seconds += soonestS;
            if (next >= 0) {
                last = next;
                for (int e : now.protectors()) {
                    progress.merge(e, soonestS / slowestS(e, StrictMath.abs(now.elementA(e))), Double::sum);
                }
                now = flow(now.network().without(now.network().branch(FaultBranch.Kind.ELEMENT, next)), fault);
            }
        }
        return seconds <= limitS ? null
                : new Uncleared(fault.conductor(), fault.partner(), last, fault.totalA(), StrictMath.abs(after.currentA()),
                        fault.clearing().seconds(), seconds);
    }

    private double slowestS(int element, double amps) {
        Plan.Protector protector = (Plan.Protector) plan.elements().get(element);
        int zone = zone(protector.device());
        double coldC = zone < 0 ? plan.practice().value(COLD) : plan.zones().get(zone).ambientMinC();
        return CurvePair.of(protector).map(curve -> curve.at(coldC).slowestS(amps))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private int zone(int device) {
        Plan.Device at = plan.devices().get(device);
        for (int hops = 0; hops <= plan.devices().size() && at.zone() < 0 && at.mountedIn() >= 0; hops++) {
            at = plan.devices().get(at.mountedIn());
        }
        return at.zone();
    }
}
