// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.Network.Item;
import org.loomwright.engine.flow.OperatingPoint;

/**
 * The network of a case with one charging source at its current limit, all loads off, other sources resting and contacts as
 * they are.
 */
final class FullOutput {
    /** A voltage no battery reaches, so that the source stays at its current limit, V. */
    private static final double UNREACHED_V = 1000;
    /** What stands for a load that is off, ohm. */
    private static final double OFF_OHM = 1e9;

    private final Plan plan;
    private final SolvedCase.Solved solved;
    private final CurrentPaths paths;
    private final int sourceItem;
    private final double limitA;

    private FullOutput(Plan plan, SolvedCase.Solved solved, int sourceItem, double limitA) {
        this.plan = plan;
        this.solved = solved;
        this.sourceItem = sourceItem;
        this.limitA = limitA;
        paths = CurrentPaths.of(plan, solved);
    }

    /** Current limit of a regulated source's or converter's item in a case, A. */
    static double limitA(SolvedCase state, int item) {
        Item it = state.running().at().network().items().get(item);
        return it instanceof Network.Regulator regulator ? regulator.limitA()
                : it instanceof Network.ConverterItem converter ? converter.limitA() : Double.NaN;
    }

    /** The source at full output in a case; null when no operating point comes of it. */
    static FullOutput of(Plan plan, SolvedCase state, int source) {
        Network network = state.running().at().network();
        int sourceItem = state.running().at().elementItem()[source];
        double limitA = limitA(state, sourceItem);
        if (Double.isInfinite(limitA)) {
            return null;
        }
        boolean[] on = state.running().point().on();
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < network.items().size(); i++) {
            items.add(i == sourceItem ? full(network.items().get(i), limitA) : resting(network.items().get(i), on[i]));
        }
        OperatingPoint point = FlowSolver.solve(new Network(network.nodeIds(), network.reference(), items),
                FlowOptions.standard(), new BasicMonitor());
        return point.status() != OperatingPoint.Status.SOLVED || !point.limiting()[sourceItem] ? null
                : new FullOutput(plan, new SolvedCase.Solved(state.running().at(), point), sourceItem, limitA);
    }

    /** Current of the source, A. */
    double amps() {
        return limitA;
    }

    /** True when a battery (index in elements) takes current. */
    boolean charges(int cell) {
        return solved.elementA(cell) > 1e-6 * limitA;
    }

    /** A cell and those in series below it, down to the minus of the battery. */
    List<Integer> seriesOf(int cell) {
        List<Integer> series = new ArrayList<>(List.of(cell));
        int at = cell;
        for (int hops = 0; hops < plan.elements().size(); hops++) {
            int node = solved.at().terminalNode()[((Plan.Cell) plan.elements().get(at)).b()];
            int next = -1;
            for (int e = 0; e < plan.elements().size(); e++) {
                if (e != at && plan.elements().get(e) instanceof Plan.Cell other
                        && solved.at().terminalNode()[other.a()] == node) {
                    next = e;
                }
            }
            if (next < 0 || series.contains(next)) {
                break;
            }
            series.add(next);
            at = next;
        }
        return series;
    }

    /** What is lost between the source and a battery that takes current; null when its current comes by another way. */
    DropBreakdown path(ElementNames names, int cell) {
        Plan.Cell battery = (Plan.Cell) plan.elements().get(cell);
        int plus = solved.at().terminalNode()[battery.a()];
        List<Integer> series = seriesOf(cell);
        int minus = solved.at().terminalNode()[((Plan.Cell) plan.elements().get(series.get(series.size() - 1))).b()];
        DropBreakdown parts = DropBreakdown.between(plan, names, solved, paths, cell, plus, minus);
        int start = paths.supplyOf(plus).end();
        return paths.sourceAt(start) == sourceItem ? parts : null;
    }

    private static Item full(Item item, double limitA) {
        if (item instanceof Network.Regulator r) {
            return new Network.Regulator(r.id(), r.a(), r.b(), UNREACHED_V, r.droopOhm(), limitA, r.a(), r.b());
        }
        Network.ConverterItem c = (Network.ConverterItem) item;
        return new Network.Regulator(c.id(), c.outA(), c.outB(), UNREACHED_V, c.droopOhm(), limitA, c.outA(), c.outB());
    }

    private static Item resting(Item item, boolean on) {
        if (item instanceof Network.Load l) {
            return new Network.Load(l.id(), l.a(), l.b(), Network.LoadLaw.RESISTANCE, OFF_OHM, Double.NaN, Double.NaN);
        } else if (item instanceof Network.Regulator r) {
            return new Network.Regulator(r.id(), r.a(), r.b(), r.setV(), r.droopOhm(), 0, r.senseA(), r.senseB());
        } else if (item instanceof Network.ConverterItem c) {
            return new Network.Regulator(c.id(), c.outA(), c.outB(), c.setV(), c.droopOhm(), 0, c.outA(), c.outB());
        } else if (item instanceof Network.Switch s) {
            return new Network.Switch(s.id(), s.a(), s.b(), s.ohm(), new Network.Fixed(on));
        }
        return item;
    }
}
