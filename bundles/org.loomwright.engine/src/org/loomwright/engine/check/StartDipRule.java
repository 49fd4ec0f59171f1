// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.Network.Item;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * While one load starts, with the inrush current its maker states, the others that are on stay above the voltage at which they
 * switch themselves off. The starting load is a constant current; the others cannot switch off in this network, so that the
 * dip itself is judged. Contacts are those of the case, and so are the temperatures of conductors: an inrush is over long
 * before they warm.
 */
final class StartDipRule implements Rule {

    @Override
    public String slug() {
        return "start-dip";
    }

    @Override
    public String says() {
        return "While one load starts, the others stay above the voltage at which they switch themselves off.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (SolvedCase solved : context.settled()) {
            List<Integer> sensitive = sensitive(context.plan(), solved);
            if (sensitive.isEmpty()) {
                continue;
            }
            Map<Integer, List<Dip>> dips = new TreeMap<>();
            List<Integer> starters = solved.state().demands().stream().map(Plan.DemandState::demand)
                    .filter(demand -> starts(context.plan(), solved, demand)).distinct().toList();
            dips(context, solved, starters, sensitive, dips);
            dips.forEach((load, causes) -> findings.add(finding(context, solved, load, causes)));
        }
        return FindingMerge.perElement(findings);
    }

    private record Dip(int starter, double volts) {
    }

    private static boolean starts(Plan plan, SolvedCase solved, int demand) {
        Plan.Demand load = (Plan.Demand) plan.elements().get(demand);
        return load.inrushA() > StrictMath.abs(solved.running().elementA(demand)) && working(solved, demand);
    }

    /** Loads on in the case that switch themselves off at some voltage. */
    private static List<Integer> sensitive(Plan plan, SolvedCase solved) {
        List<Integer> found = new ArrayList<>();
        for (Plan.DemandState state : solved.state().demands()) {
            Plan.Demand load = (Plan.Demand) plan.elements().get(state.demand());
            if (load.offV() > 0 && working(solved, state.demand())) {
                found.add(state.demand());
            }
        }
        return found;
    }

    private static boolean working(SolvedCase solved, int demand) {
        int item = solved.running().at().elementItem()[demand];
        return item >= 0 && solved.running().point().on()[item];
    }

    /**
     * Looks at starters together first: more current never raises a voltage, so where all of them at once bring no other load
     * below its off voltage, none does alone; else each half is looked at, down to one.
     */
    private static void dips(CheckContext context, SolvedCase solved, List<Integer> starters, List<Integer> sensitive,
            Map<Integer, List<Dip>> dips) {
        if (starters.isEmpty()) {
            return;
        }
        OperatingPoint point = FlowSolver.solve(starting(context.plan(), solved, starters), FlowOptions.standard(),
                new BasicMonitor());
        SolvedCase.Solved dipped = new SolvedCase.Solved(solved.running().at(), point);
        boolean any = point.status() != OperatingPoint.Status.SOLVED;
        for (int other : sensitive) {
            Plan.Demand load = (Plan.Demand) context.plan().elements().get(other);
            double volts = dipped.voltage(load.a(), load.b());
            boolean below = Beyond.below(volts, load.offV());
            any |= below;
            if (below && starters.size() == 1 && other != starters.get(0)) {
                dips.computeIfAbsent(other, k -> new ArrayList<>()).add(new Dip(starters.get(0), volts));
            }
        }
        if (any && starters.size() > 1) {
            int half = starters.size() / 2;
            dips(context, solved, starters.subList(0, half), sensitive, dips);
            dips(context, solved, starters.subList(half, starters.size()), sensitive, dips);
        }
    }

    private static Network starting(Plan plan, SolvedCase solved, List<Integer> starters) {
        Network network = solved.running().at().network();
        Map<Integer, Double> inrushOfItem = new TreeMap<>();
        starters.forEach(starter -> inrushOfItem.put(solved.running().at().elementItem()[starter],
                ((Plan.Demand) plan.elements().get(starter)).inrushA()));
        boolean[] on = solved.running().point().on();
        List<Item> items = new ArrayList<>(network.items());
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i) instanceof Network.Wire wire && wire.heat() != null) {
                items.set(i, held(wire, solved.running().point().temperatureC()[i]));
            } else if (items.get(i) instanceof Network.Load load && inrushOfItem.containsKey(i)) {
                items.set(i, new Network.Load(load.id(), load.a(), load.b(), Network.LoadLaw.CURRENT, inrushOfItem.get(i),
                        Double.NaN, Double.NaN));
            } else if (items.get(i) instanceof Network.Load load && on[i]) {
                items.set(i, new Network.Load(load.id(), load.a(), load.b(), load.law(), load.value(), Double.NaN, Double.NaN));
            } else if (items.get(i) instanceof Network.Switch contact) {
                items.set(i, new Network.Switch(contact.id(), contact.a(), contact.b(), contact.ohm(),
                        new Network.Fixed(on[i])));
            }
        }
        return new Network(network.nodeIds(), network.reference(), items);
    }

    private static Item held(Network.Wire wire, double temperatureC) {
        double factor = 1 + wire.heat().alphaPerK() * (temperatureC - 20);
        return new Network.Resistor(wire.id(), wire.a(), wire.b(), wire.r20Ohm() * factor + wire.jointsOhm());
    }

    private Finding finding(CheckContext context, SolvedCase solved, int load, List<Dip> dips) {
        Plan.Demand demand = (Plan.Demand) context.plan().elements().get(load);
        dips.sort((a, b) -> Double.compare(a.volts(), b.volts()));
        Dip worst = dips.get(0);
        Quantity is = Quantity.of(worst.volts(), "V");
        Quantity wanted = Quantity.of(demand.offV(), "V");
        String starter = context.names().element(worst.starter());
        double inrushA = ((Plan.Demand) context.plan().elements().get(worst.starter())).inrushA();
        FindingBuilder builder = Finding.of(slug(), Severity.WARNING, context.names().element(load),
                context.names().shownElement(load) + " dips to " + is + " while " + context.names().shown(starter)
                        + " starts, and switches itself off below " + wanted)
                .inCase(solved.state().name()).figures(is, wanted)
                .because("Before the start it has " + Quantity.of(solved.running().voltage(demand.a(), demand.b()), "V") + "; "
                        + context.names().shown(starter) + " then draws " + Quantity.of(inrushA, "A") + ".");
        for (Dip dip : dips) {
            builder.causedBy(context.names().element(dip.starter()), "voltage during its start",
                    Quantity.of(dip.volts(), "V"));
        }
        return builder.mend(Mend.inWords("Feed " + context.names().shown(context.names().element(load))
                + " from a point before the way that it shares with " + context.names().shown(starter) + "."))
                .derived(new Derivation("voltage during the start", is,
                        "operating point with the starting load at its inrush current, conductors as warm as before it",
                        List.of(new Derivation.Input("inrush", Quantity.of(inrushA, "A"), starter),
                                new Derivation.Input("off below", wanted, context.names().element(load))),
                        "common practice"))
                .build();
    }
}
