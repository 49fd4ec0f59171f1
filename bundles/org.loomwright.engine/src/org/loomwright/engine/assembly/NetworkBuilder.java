// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.heat.ConductorAmbient;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.Copper;

/**
 * Builds the network of one case. Wires have the largest resistance of their standard, joints and contacts the practice's
 * largest where nothing is stated; a case that wants cold and smallest resistances has nominal wires at 20 degrees Celsius
 * and the smallest joints. What connects a node with itself gives no item.
 */
public final class NetworkBuilder {
    /** A rating so large that a wire stays at its ambient. */
    private static final double NOT_WARMED_A = 1e12;

    private final Plan plan;
    private final Plan.Case state;
    private final NetworkOptions options;
    private final NetworkNodes nodes;
    private final NetworkOhms ohms;
    private final NetworkSources sources;
    private final List<Network.Item> items = new ArrayList<>();

    private NetworkBuilder(Plan plan, Plan.Case state, NetworkOptions options) {
        this.plan = plan;
        this.state = state;
        this.options = options;
        nodes = new NetworkNodes(plan);
        ohms = new NetworkOhms(plan, state);
        sources = new NetworkSources(plan, state);
    }

    /**
     * The network of a case.
     *
     * @throws IllegalArgumentException when a battery states no resistance
     */
    public static CaseNetwork build(Plan plan, Plan.Case state, NetworkOptions options) {
        return new NetworkBuilder(plan, state, options).build();
    }

    private CaseNetwork build() {
        int[] conductorItem = each(plan.conductors().size(), this::conductor);
        int[] bondItem = each(plan.bonds().size(), i -> {
            Plan.Bond bond = plan.bonds().get(i);
            return left(bond.id()) ? null : resistor(bond.id(), nodes.of(bond.a()), nodes.of(bond.b()), ohms.bond(bond));
        });
        int[] linkItem = each(plan.bodyLinks().size(), i -> {
            Plan.BodyLink link = plan.bodyLinks().get(i);
            return left(link.id()) ? null
                    : resistor(link.id(), nodes.bodyNode[link.bodyA()], nodes.bodyNode[link.bodyB()], ohms.bodyLink(link));
        });
        int[] earthItem = each(plan.terminals().size(), this::earthContact);
        int[] caseItem = each(plan.terminals().size(), this::caseContact);
        NetworkElements elements = new NetworkElements(plan, state, options, nodes, ohms, sources, items);
        elements.add();
        List<String> ids = nodes.ids.isEmpty() ? List.of("none") : nodes.ids;
        return new CaseNetwork(new Network(ids, reference(), items), nodes.terminalNode, nodes.bodyNode, conductorItem,
                elements.elementItem(), elements.standbyItem(), bondItem, linkItem, earthItem, caseItem);
    }

    private int[] each(int count, IntFunction<Network.Item> maker) {
        int[] itemOf = new int[count];
        Arrays.fill(itemOf, -1);
        for (int i = 0; i < count; i++) {
            Network.Item item = maker.apply(i);
            if (item != null) {
                itemOf[i] = items.size();
                items.add(item);
            }
        }
        return itemOf;
    }

    /** A core without section or length is only its joints: what it costs cannot be known, what it connects can. */
    private Network.Item conductor(int i) {
        Plan.Conductor core = plan.conductors().get(i);
        int a = nodes.of(core.a());
        int b = nodes.of(core.b());
        if (a == b || left(core.id()) || left(plan.cables().get(core.cable()).id())) {
            return null;
        }
        double ohm = ohms.conductor(core);
        if (!(ohm > 0)) {
            return resistor(core.id(), a, b, ohms.joints(core));
        }
        return new Network.Wire(core.id(), a, b, ohm, ohms.joints(core), heat(i));
    }

    private Network.WireHeat heat(int conductor) {
        if (state.resistancesColdMin()) {
            return null;
        }
        NetworkOptions.Held held = options.held();
        double heldC = options.heldC() == null ? Double.NaN : options.heldC()[conductor];
        if (held != null) {
            int item = held.at().conductorItem()[conductor];
            heldC = item < 0 ? Double.NaN : held.point().temperatureC()[item];
        }
        if (!Double.isNaN(heldC)) {
            return at(heldC);
        }
        if (options.ratings() == null) {
            return at(ConductorAmbient.ambientC(plan, state, conductor));
        }
        ConductorRating rating = options.ratings().get(conductor);
        if (!(rating.atReferenceA() > 0) || !(rating.maxC() > rating.referenceC())) {
            return at(rating.ambientC());
        }
        return new Network.WireHeat(rating.ambientC(), rating.atReferenceA(), rating.referenceC(), rating.maxC(),
                Copper.ALPHA_PER_K);
    }

    private static Network.WireHeat at(double temperatureC) {
        return new Network.WireHeat(temperatureC, NOT_WARMED_A, temperatureC, temperatureC + 1, Copper.ALPHA_PER_K);
    }

    private Network.Item earthContact(int t) {
        Plan.Terminal point = plan.terminals().get(t);
        if (point.device() >= 0 || point.body() < 0 || left(point.id())) {
            return null;
        }
        return resistor(point.id(), nodes.of(t), nodes.bodyNode[point.body()], ohms.earthContact(point));
    }

    private Network.Item caseContact(int t) {
        Plan.Terminal terminal = plan.terminals().get(t);
        int body = terminal.device() < 0 ? -1 : plan.devices().get(terminal.device()).body();
        if (body < 0 || !"case".equals(terminal.role()) || left(terminal.id())) {
            return null;
        }
        return resistor(terminal.id(), nodes.of(t), nodes.bodyNode[body], ohms.caseContact(body));
    }

    private static Network.Item resistor(String id, int a, int b, double ohm) {
        return a == b ? null : new Network.Resistor(id, a, b, ohm);
    }

    private boolean left(String id) {
        return options.leftOut().contains(id);
    }

    /** Minus of the first domain's source, else of the first cell, else the first body. */
    private int reference() {
        int first = -1;
        int source = plan.domains().isEmpty() ? -1 : nodes.of(plan.domains().get(0).sourceTerminal());
        for (Plan.Element element : plan.elements()) {
            int minus = -1;
            int plus = -1;
            if (element instanceof Plan.Cell cell) {
                minus = nodes.of(cell.b());
                plus = nodes.of(cell.a());
                first = first < 0 ? minus : first;
            } else if (element instanceof Plan.Regulated regulated) {
                minus = nodes.of(regulated.b());
                plus = nodes.of(regulated.a());
            }
            if (source >= 0 && plus == source) {
                return minus;
            }
        }
        if (first >= 0) {
            return first;
        }
        return nodes.bodyNode.length > 0 ? nodes.bodyNode[0] : 0;
    }
}
