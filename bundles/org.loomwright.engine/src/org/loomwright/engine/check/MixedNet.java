// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.nets.Nets;

/**
 * What joins plus with minus, or two voltages, in one net: conductors without any one of which the net falls apart into sound
 * ones.
 */
final class MixedNet {
    private final CheckContext context;
    private final int net;
    private final List<Integer> guilty = new ArrayList<>();

    private MixedNet(CheckContext context, int net) {
        this.context = context;
        this.net = net;
    }

    static MixedNet of(CheckContext context, int net) {
        MixedNet mixed = new MixedNet(context, net);
        Plan plan = context.plan();
        int best = -1;
        for (int c = 0; c < plan.conductors().size(); c++) {
            Plan.Conductor core = plan.conductors().get(c);
            if (context.nets().netOf()[core.a()] == net) {
                Nets without = NetFinder.find(without(plan, c));
                Nets.Kind a = without.nets().get(without.netOf()[core.a()]).kind();
                Nets.Kind b = without.nets().get(without.netOf()[core.b()]).kind();
                if (without.netOf()[core.a()] != without.netOf()[core.b()] && a != Nets.Kind.MIXED && b != Nets.Kind.MIXED) {
                    int rank = against(plan, core.a(), b) + against(plan, core.b(), a);
                    mixed.guilty.add(rank > best ? 0 : mixed.guilty.size(), c);
                    best = StrictMath.max(best, rank);
                }
            }
        }
        return mixed;
    }

    /** The conductor that most likely is misplaced, -1 when no single one is. */
    int culprit() {
        return guilty.isEmpty() ? -1 : guilty.get(0);
    }

    /** Ids of the other conductors that join the two sides. */
    List<String> others() {
        return guilty.stream().skip(1).map(c -> context.names().conductor(c)).toList();
    }

    /** Devices whose source lies at the net. */
    List<String> sources() {
        List<String> found = new ArrayList<>();
        for (int e = 0; e < context.plan().elements().size(); e++) {
            Plan.Element element = context.plan().elements().get(e);
            int plus = PlanGraph.sourceTerminal(element);
            if (plus >= 0 && Polarised.terminals(element).stream().anyMatch(t -> context.nets().netOf()[t] == net)) {
                found.add(context.names().element(e));
            }
        }
        return found;
    }

    /** True when plus sides of several sources but no minus and no structure meet. */
    boolean twoVoltages() {
        for (int body : context.nets().bodyNet()) {
            if (body == net) {
                return false;
            }
        }
        return context.plan().elements().stream().noneMatch(element -> minus(element) >= 0
                && context.nets().netOf()[minus(element)] == net);
    }

    /** Something of the net, for a finding that has no conductor. */
    String anyElement() {
        List<String> sources = sources();
        return sources.isEmpty() ? context.plan().terminals().get(context.nets().nets().get(net).terminals().get(0)).id()
                : sources.get(0);
    }

    private static int minus(Plan.Element element) {
        return element instanceof Plan.Cell cell ? cell.b()
                : element instanceof Plan.Regulated source ? source.b()
                : element instanceof Plan.Converter converter ? converter.outB() : -1;
    }

    /** 1 when a terminal's role is against what the conductor brings to it. */
    private static int against(Plan plan, int terminal, Nets.Kind brought) {
        String role = plan.terminals().get(terminal).role();
        return "plus".equals(role) && brought == Nets.Kind.MINUS || "minus".equals(role) && brought == Nets.Kind.PLUS
                || "earth".equals(role) && brought == Nets.Kind.PLUS ? 1 : 0;
    }

    private static Plan without(Plan p, int conductor) {
        List<Plan.Conductor> rest = new ArrayList<>(p.conductors());
        rest.remove(conductor);
        return new Plan(p.vehicle(), p.arrangement(), p.practice(), p.domains(), p.zones(), p.places(), p.runs(), p.bodies(),
                p.bodyLinks(), p.bonds(), p.devices(), p.terminals(), p.elements(), p.cables(), rest, p.cases(), p.waivers());
    }
}
