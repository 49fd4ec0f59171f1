// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.assembly.DisjointSets;
import org.loomwright.engine.assembly.NetworkBuilder;
import org.loomwright.engine.assembly.NetworkOptions;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.heat.Copper;

/**
 * What faults are worked out on: the network of a state made for one extreme, without loads and coils (against a short they
 * hardly count), contacts in given positions.
 *
 * <ul>
 * <li>Largest: batteries full, at 25 degrees Celsius (where open-circuit voltages are stated) and new; every charging source
 * working at the coldest ambient; nominal wires at 20 degrees Celsius, smallest joints.
 * <li>Smallest: batteries at {@code state.rest-charge}, {@code state.cold} and aged; charging sources and converters only
 * where no battery feeds the same net; largest wires at the highest continuous temperature of their cable (as IEC 60909-0
 * has it for the smallest short-circuit current: conductors at a raised temperature), largest joints.
 * </ul>
 */
final class FaultModel {
    final int[] terminalNode;
    final int[] bodyNode;
    final int nodes;
    final List<FaultBranch> branches = new ArrayList<>();
    final List<FaultSource> sources = new ArrayList<>();
    private final Plan plan;
    private final int[][] around;

    FaultModel(Plan plan, Extreme extreme, boolean[] closed) {
        this.plan = plan;
        CaseNetwork at = NetworkBuilder.build(plan, state(extreme), options(extreme));
        terminalNode = at.terminalNode();
        bodyNode = at.bodyNode();
        nodes = at.network().nodes();
        branches(FaultBranch.Kind.CONDUCTOR, at, at.conductorItem(), null);
        branches(FaultBranch.Kind.ELEMENT, at, at.elementItem(), closed);
        branches(FaultBranch.Kind.BOND, at, at.bondItem(), null);
        branches(FaultBranch.Kind.SEAM, at, at.linkItem(), null);
        branches(FaultBranch.Kind.EARTH_POINT, at, at.earthItem(), null);
        branches(FaultBranch.Kind.CASE, at, at.caseItem(), null);
        for (int e = 0; e < plan.elements().size(); e++) {
            int item = at.elementItem()[e];
            FaultSource source = item < 0 ? null : source(e, at.network().items().get(item));
            if (source != null) {
                sources.add(source);
            }
        }
        if (extreme == Extreme.SMALLEST) {
            dropWhereBatteriesFeed();
        }
        around = new int[nodes][0];
        for (int i = 0; i < branches.size(); i++) {
            note(branches.get(i).a(), i);
            note(branches.get(i).b(), i);
        }
    }

    private void note(int node, int branch) {
        around[node] = Arrays.copyOf(around[node], around[node].length + 1);
        around[node][around[node].length - 1] = branch;
    }

    int[] around(int node) {
        return around[node];
    }

    private Plan.Case state(Extreme extreme) {
        boolean largest = extreme == Extreme.LARGEST;
        double charge = plan.practice().value(largest ? "state.full-charge" : "state.rest-charge");
        double coldC = plan.practice().value("state.cold");
        List<Plan.CellState> cells = new ArrayList<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Cell) {
                cells.add(new Plan.CellState(e, charge, largest ? 25 : coldC, largest ? 0 : 1));
            }
        }
        return new Plan.Case("protection:" + extreme.word(), extreme.word() + " fault currents", "working", true, "on", true,
                plan.practice().value("state.charge-rpm"), true, 1, coldC,
                plan.zones().stream().map(Plan.Zone::ambientMinC).toList(), cells, List.of(), List.of(), largest);
    }

    private NetworkOptions options(Extreme extreme) {
        double[] hotC = new double[plan.conductors().size()];
        for (int c = 0; c < hotC.length; c++) {
            double maxC = plan.cables().get(plan.conductors().get(c).cable()).maxC();
            hotC[c] = Double.isNaN(maxC) ? 20 : maxC;
        }
        return new NetworkOptions(NetworkOptions.Variant.RUNNING, null, extreme == Extreme.LARGEST ? null : hotC, null, Set.of());
    }

    private void branches(FaultBranch.Kind kind, CaseNetwork at, int[] itemOf, boolean[] closed) {
        for (int i = 0; i < itemOf.length; i++) {
            boolean coil = closed != null && plan.elements().get(i) instanceof Plan.Coil;
            if (itemOf[i] < 0 || coil) {
                continue;
            }
            Network.Item item = at.network().items().get(itemOf[i]);
            if (item instanceof Network.Wire wire) {
                double factor = wire.heat() == null ? 1 : Copper.factor(wire.heat().alphaPerK(), wire.heat().ambientC());
                add(kind, i, wire.a(), wire.b(), wire.r20Ohm() * factor + wire.jointsOhm());
            } else if (item instanceof Network.Resistor resistor) {
                add(kind, i, resistor.a(), resistor.b(), resistor.ohm());
            } else if (item instanceof Network.Switch contact && closed != null && closed[i]) {
                add(kind, i, contact.a(), contact.b(), contact.ohm());
            }
        }
    }

    private void add(FaultBranch.Kind kind, int index, int a, int b, double ohm) {
        branches.add(new FaultBranch(kind, index, a, b, ohm(ohm)));
    }

    private FaultSource source(int element, Network.Item item) {
        if (item instanceof Network.Emf cell) {
            return new FaultSource(element, cell.a(), cell.b(), cell.volt(), ohm(cell.ohm()), false, Double.POSITIVE_INFINITY);
        } else if (item instanceof Network.Regulator r && r.limitA() > 0) {
            return new FaultSource(element, r.a(), r.b(), r.setV(), ohm(r.droopOhm()), true, r.limitA());
        } else if (item instanceof Network.ConverterItem c && c.limitA() > 0 && c.outA() != c.outB()) {
            return new FaultSource(element, c.outA(), c.outB(), c.setV(), ohm(c.droopOhm()), true, c.limitA());
        } else if (item instanceof Network.Rectifier d) {
            return new FaultSource(element, d.b(), d.a(), -d.forwardV(), ohm(d.ohm()), true, Double.POSITIVE_INFINITY);
        }
        return null;
    }

    private static double ohm(double given) {
        return StrictMath.max(FlowOptions.standard().smallestOhm(), given);
    }

    /** Leaves out charging sources and converters whose plus a battery feeds as well. */
    private void dropWhereBatteriesFeed() {
        DisjointSets nets = new DisjointSets(nodes);
        branches.forEach(branch -> nets.join(branch.a(), branch.b()));
        boolean[] fed = new boolean[nodes];
        for (FaultSource source : sources) {
            if (plan.elements().get(source.element()) instanceof Plan.Diode) {
                nets.join(source.a(), source.b());
            }
        }
        for (FaultSource source : sources) {
            if (plan.elements().get(source.element()) instanceof Plan.Cell) {
                fed[nets.find(source.a())] = true;
            }
        }
        sources.removeIf(source -> !(plan.elements().get(source.element()) instanceof Plan.Cell)
                && !(plan.elements().get(source.element()) instanceof Plan.Diode) && fed[nets.find(source.a())]);
    }

    /** Positions of the branches of a kind by their index in the plan, -1 where there is none. */
    int[] positions(FaultBranch.Kind kind, int count) {
        int[] at = new int[count];
        Arrays.fill(at, -1);
        for (int i = 0; i < branches.size(); i++) {
            if (branches.get(i).kind() == kind) {
                at[branches.get(i).index()] = i;
            }
        }
        return at;
    }
}
