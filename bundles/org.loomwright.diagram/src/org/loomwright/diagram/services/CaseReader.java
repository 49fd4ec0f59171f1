// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CaseFigures;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.earth.CaseEarth;
import org.loomwright.engine.earth.StructureLevels;

/** Reads the figures of one solved case. */
final class CaseReader {
    private final CheckContext context;
    private final Plan plan;
    private final SolvedCase solved;
    private final SolvedCase.Solved running;
    private final CaseFigures figures;

    CaseReader(CheckContext context, SolvedCase solved) {
        this.context = context;
        this.solved = solved;
        plan = context.plan();
        running = solved.running();
        figures = new CaseFigures(context, solved);
    }

    CaseView read() {
        CaseEarth earth = plan.terminals().isEmpty() ? null : StructureLevels.of(plan, solved);
        Map<String, Double> contacts = CaseView.filling();
        Map<String, Double> bodies = CaseView.filling();
        Map<String, CaseView.Strap> bonds = CaseView.filling();
        Map<String, CaseView.Strap> seams = CaseView.filling();
        if (earth != null) {
            earth.contacts().forEach(flow -> contacts.put(plan.terminals().get(flow.terminal()).id(), flow.currentA()));
            for (int b = 0; b < plan.bodies().size(); b++) {
                if (!Double.isNaN(earth.bodyV().get(b))) {
                    bodies.put(plan.bodies().get(b).id(), earth.bodyV().get(b));
                }
            }
            for (int b = 0; b < plan.bonds().size(); b++) {
                bonds.put(plan.bonds().get(b).id(), strap(earth.bondA().get(b), plan.bonds().get(b).ohm()));
            }
            for (int s = 0; s < plan.bodyLinks().size(); s++) {
                seams.put(plan.bodyLinks().get(s).id(), strap(earth.seamA().get(s), plan.bodyLinks().get(s).ohm()));
            }
        }
        Map<String, CaseView.Load> loads = CaseView.filling();
        Map<String, CaseView.Protector> protectors = CaseView.filling();
        Map<String, Double> sources = CaseView.filling();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (running.at().elementItem()[e] >= 0) {
                element(e, loads, protectors, sources);
            }
        }
        return new CaseView(solved.state().name(), running.point().status(), terminals(earth), conductors(), loads, protectors,
                sources, bonds, seams, contacts, bodies, waiting(loads), closed());
    }

    private static CaseView.Strap strap(double amps, double ohm) {
        return new CaseView.Strap(amps, StrictMath.abs(amps) * ohm);
    }

    private void element(int e, Map<String, CaseView.Load> loads, Map<String, CaseView.Protector> protectors,
            Map<String, Double> sources) {
        Plan.Element element = plan.elements().get(e);
        if (element instanceof Plan.Demand load) {
            CaseFigures.Drop drop = figures.drop(e);
            loads.put(context.names().element(e), new CaseView.Load(running.voltage(load.a(), load.b()), running.elementA(e),
                    drop == null ? Double.NaN : drop.dropV(), drop == null ? Double.NaN : drop.share(),
                    drop == null ? Double.NaN : drop.limit()));
        } else if (element instanceof Plan.Protector) {
            protectors.put(context.names().element(e), new CaseView.Protector(figures.heatingA(e), figures.ratingA(e)));
        } else if (element instanceof Plan.Cell || element instanceof Plan.Regulated) {
            sources.merge(plan.devices().get(element.device()).id(), -running.elementA(e), Double::sum);
        }
    }

    private Map<String, Double> waiting(Map<String, CaseView.Load> on) {
        Map<String, Double> waiting = CaseView.filling();
        for (int e = 0; e < plan.elements().size(); e++) {
            String id = context.names().element(e);
            int item = running.at().standbyItem()[e];
            if (item >= 0 && !on.containsKey(id)) {
                waiting.put(id, running.itemA(item));
            }
        }
        return waiting;
    }

    private Set<String> closed() {
        Set<String> closed = new LinkedHashSet<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            int item = running.at().elementItem()[e];
            if (plan.elements().get(e) instanceof Plan.Contact contact && item >= 0 && running.point().on()[item]) {
                closed.add(contact.id());
            }
        }
        return closed;
    }

    private Map<String, Double> terminals(CaseEarth earth) {
        Map<String, Double> volts = CaseView.filling();
        double minus = earth == null ? 0 : running.terminalV(StructureLevels.minus(plan, solved));
        for (int t = 0; t < plan.terminals().size(); t++) {
            double v = running.terminalV(t) - minus;
            if (!Double.isNaN(v)) {
                volts.put(plan.terminals().get(t).id(), v);
            }
        }
        return volts;
    }

    private Map<String, CaseView.Conductor> conductors() {
        Map<String, CaseView.Conductor> cores = CaseView.filling();
        for (int c = 0; c < plan.conductors().size(); c++) {
            Plan.Conductor core = plan.conductors().get(c);
            if (running.at().conductorItem()[c] < 0) {
                continue;
            }
            CaseView.Conductor view = new CaseView.Conductor(running.conductorA(c),
                    StrictMath.abs(running.voltage(core.a(), core.b())), running.conductorC(c),
                    solved.ratings().isEmpty() ? Double.NaN : solved.ratings().get(c).correctedA());
            cores.put(core.id(), view);
            cores.merge(plan.cables().get(core.cable()).id(), view,
                    (a, b) -> StrictMath.abs(b.amps()) > StrictMath.abs(a.amps()) ? b : a);
        }
        return cores;
    }
}
