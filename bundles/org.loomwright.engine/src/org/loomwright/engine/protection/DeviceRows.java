// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.Fault.Target;
import org.loomwright.engine.protection.FaultNetworks.Stand;

/**
 * Works out what protective devices have to break and how selective they are. The largest current is that of a fault at the
 * device's own load terminal, to the nearest return there or to the body at the device or beside a cable from it.
 */
final class DeviceRows {
    private final Plan plan;
    private final FaultNetworks networks;
    private final ReturnPoints points;
    private final DeviceCurves curves;

    DeviceRows(Plan plan, FaultNetworks networks, ReturnPoints points, DeviceCurves curves) {
        this.plan = plan;
        this.networks = networks;
        this.points = points;
        this.curves = curves;
    }

    List<DeviceProtection> rows(List<ConductorProtection> conductors) {
        List<List<Integer>> below = new ArrayList<>();
        plan.elements().forEach(e -> below.add(new ArrayList<>(0)));
        for (ConductorProtection row : conductors) {
            for (Feed feed : row.feeds()) {
                for (int e : feed.next()) {
                    if (!below.get(e).contains(row.conductor())) {
                        below.get(e).add(row.conductor());
                    }
                }
            }
        }
        List<DeviceProtection> rows = new ArrayList<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Protector protector) {
                rows.add(row(e, protector, below.get(e)));
            }
        }
        return rows;
    }

    private record Worst(int terminal, Target target, int partner, double amps, FaultFlow flow) {
    }

    private DeviceProtection row(int e, Plan.Protector protector, List<Integer> below) {
        Worst worst = worst(Stand.TOGETHER, e, protector);
        if (worst == null && networks.hasOther()) {
            worst = worst(Stand.OTHER, e, protector);
        }
        if (worst == null) {
            return new DeviceProtection(e, -1, null, -1, 0, 0, Verdict.NOT_NEEDED, below, List.of());
        }
        double volts = StrictMath.abs(worst.flow().openV());
        Verdict verdict = Double.isNaN(protector.breakingA()) || Double.isNaN(protector.ratedV()) ? Verdict.UNKNOWN
                : Verdict.HOLDS;
        if (worst.amps() > protector.breakingA() || volts > protector.ratedV()) {
            verdict = Verdict.FAILS;
        }
        return new DeviceProtection(e, worst.terminal(), worst.target(), worst.partner(), worst.amps(), volts, verdict, below,
                selectivity(e, protector, worst));
    }

    private Worst worst(Stand stand, int e, Plan.Protector protector) {
        FaultNetwork network = networks.network(stand, Extreme.LARGEST);
        Worst worst = null;
        for (int terminal : new int[] {protector.a(), protector.b()}) {
            List<int[]> partners = new ArrayList<>();
            partners.add(new int[] {0, points.returnAt(e, terminal)});
            for (int body : points.bodiesAt(terminal)) {
                partners.add(new int[] {1, body});
            }
            for (int[] partner : partners) {
                if (partner[1] < 0) {
                    continue;
                }
                FaultFlow flow = networks.flow(stand, Extreme.LARGEST, network.node(terminal),
                        partner[0] == 0 ? network.node(partner[1]) : network.bodyNode(partner[1]));
                double into = flow.elementA(e) * (terminal == protector.b() ? 1 : -1) * (flow.currentA() < 0 ? -1 : 1);
                if (into > (worst == null ? 0 : worst.amps())) {
                    worst = new Worst(terminal, Target.values()[partner[0]], partner[1], into, flow);
                }
            }
        }
        return worst;
    }

    private List<Selectivity> selectivity(int e, Plan.Protector protector, Worst worst) {
        int feed = worst.terminal() == protector.b() ? protector.a() : protector.b();
        FaultNetwork network = worst.flow().network();
        List<Selectivity> found = new ArrayList<>();
        for (int upstream : worst.flow().upstream(network.node(feed), network.branch(FaultBranch.Kind.ELEMENT, e)).next()) {
            double share = StrictMath.abs(worst.flow().elementA(upstream)) / worst.amps();
            if (curves.cold(upstream) == null || curves.cold(e) == null) {
                found.add(Selectivity.unknown(upstream, e, share, worst.amps()));
                continue;
            }
            Selectivity hot = Selectivity.of(upstream, curves.hot(upstream), e, curves.hot(e), share, worst.amps());
            Selectivity cold = Selectivity.of(upstream, curves.cold(upstream), e, curves.cold(e), share, worst.amps());
            found.add(hot.limitA() <= cold.limitA() ? hot : cold);
        }
        return found;
    }
}
