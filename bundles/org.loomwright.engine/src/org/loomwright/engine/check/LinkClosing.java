// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.assembly.NetworkBuilder;
import org.loomwright.engine.assembly.NetworkOptions;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.OperatingPoint;

/**
 * A split-charge link just closed between batteries of different charge: one side full, the other as low as any case has it
 * or the practice's {@code state.rest-charge}, with the smallest resistances of batteries, joints and conductors, so that the
 * current is the largest. The network of a case is solved anew for it.
 */
final class LinkClosing {
    private final CheckContext context;
    private final BatteryLinks links;

    LinkClosing(CheckContext context, BatteryLinks links) {
        this.context = context;
        this.links = links;
    }

    /**
     * The link (contacts of one device, indexes in elements) closed in a case, the side of {@code fuller} full; null when
     * nothing comes of it.
     *
     * @param first the first moment, in which only the batteries' resistances hold the current back; else the current that
     *              lasts, as the lower battery accepts it
     */
    SolvedCase.Solved solve(SolvedCase solved, List<Integer> contacts, int fuller, int emptier, boolean first) {
        Set<Integer> full = new TreeSet<>(links.cells(fuller));
        Set<Integer> low = new TreeSet<>(links.cells(emptier));
        low.removeAll(full);
        if (full.isEmpty() || low.isEmpty()) {
            return null;
        }
        Plan.Case state = charged(solved.state(), full, low);
        CaseNetwork at = NetworkBuilder.build(context.plan(), state, NetworkOptions.running(solved.ratings()));
        List<Network.Item> items = new ArrayList<>(at.network().items());
        for (int e : contacts) {
            int item = at.elementItem()[e];
            if (item >= 0 && items.get(item) instanceof Network.Switch s) {
                items.set(item, new Network.Switch(s.id(), s.a(), s.b(), s.ohm(), new Network.Fixed(true)));
            }
        }
        for (int i = 0; first && i < items.size(); i++) {
            if (items.get(i) instanceof Network.Emf emf) {
                items.set(i, new Network.Emf(emf.id(), emf.a(), emf.b(), emf.volt(), emf.ohm()));
            }
        }
        OperatingPoint point = FlowSolver.solve(new Network(at.network().nodeIds(), at.network().reference(), items),
                FlowOptions.standard(), new BasicMonitor());
        return point.status() == OperatingPoint.Status.SOLVED ? new SolvedCase.Solved(at, point) : null;
    }

    /** Lowest charge of a battery over the cases, or the practice's. */
    double lowest(int cell) {
        double charge = context.practice().value("state.rest-charge");
        for (SolvedCase solved : context.cases()) {
            for (Plan.CellState state : solved.state().cells()) {
                charge = state.cell() == cell ? StrictMath.min(charge, state.charge()) : charge;
            }
        }
        return charge;
    }

    private Plan.Case charged(Plan.Case c, Set<Integer> full, Set<Integer> low) {
        List<Plan.CellState> cells = new ArrayList<>();
        for (Plan.CellState state : c.cells()) {
            double charge = full.contains(state.cell()) ? context.practice().value("state.full-charge")
                    : low.contains(state.cell()) ? lowest(state.cell()) : state.charge();
            cells.add(new Plan.CellState(state.cell(), charge, state.temperatureC(), state.age()));
        }
        return new Plan.Case(c.id(), c.name(), c.kind(), c.byEngine(), c.ignition(), c.engineRunning(), c.engineRpm(), c.shore(),
                c.sun(), c.outsideC(), c.ambientC(), cells, c.contacts(), c.demands(), true);
    }
}
