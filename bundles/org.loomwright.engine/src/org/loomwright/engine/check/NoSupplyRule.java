// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/**
 * A load that a case of the user wants has closed paths to the plus and to the minus of a source. What opens the path is
 * named: a switch, the switch of a relay's coil, a way without a fuse. The engine's own cases want nothing by name and are
 * left out. A cut-out between its two voltages may be either way and gives a note. A load that no case wants and no conductor
 * reaches is forgotten wiring, and gives a warning.
 */
final class NoSupplyRule implements Rule {
    @Override
    public String slug() {
        return "no-supply";
    }

    @Override
    public String says() {
        return "A load that is wanted in a case has a supply in it.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Wiring wiring = Wiring.of(context.plan());
        Set<Integer> wantedSomewhere = new TreeSet<>();
        for (SolvedCase solved : context.settled()) {
            if (solved.state().byEngine()) {
                continue;
            }
            LivePaths live = LivePaths.of(context.plan(), solved.running());
            SupplySearch search = new SupplySearch(context.plan(), solved.running());
            for (Plan.DemandState wanted : solved.state().demands()) {
                Plan.Demand load = (Plan.Demand) context.plan().elements().get(wanted.demand());
                int a = solved.running().at().terminalNode()[load.a()];
                int b = solved.running().at().terminalNode()[load.b()];
                if (wanted.factor() > 0) {
                    wantedSomewhere.add(wanted.demand());
                }
                if (wanted.factor() > 0 && !live.supplied(a, b) && !live.supplied(b, a)) {
                    findings.add(finding(context, solved, wiring, search, wanted.demand(), load));
                }
            }
        }
        unwired(context, wiring, wantedSomewhere, findings);
        return findings;
    }

    private void unwired(CheckContext context, Wiring wiring, Set<Integer> wanted, List<Finding> findings) {
        for (int element = 0; element < context.plan().elements().size(); element++) {
            if (context.plan().elements().get(element) instanceof Plan.Demand load && !wanted.contains(element)
                    && (isBare(wiring, load.a()) || isBare(wiring, load.b()))) {
                String bare = Stream.of(load.a(), load.b()).filter(terminal -> isBare(wiring, terminal))
                        .map(terminal -> context.names().shown(context.plan().terminals().get(terminal).id()))
                        .collect(Collectors.joining(" and "));
                findings.add(Finding.of(slug(), Severity.WARNING, context.names().element(element),
                        context.names().shownElement(element) + " is not wired yet")
                        .because("No conductor ends at " + bare + ".")
                        .mend(Mend.inWords("Connect it, or take it out of the plan.")).build());
            }
        }
    }

    /** True when a terminal, and what the inside of its device joins with it, meets no conductor and no structure. */
    private static boolean isBare(Wiring wiring, int terminal) {
        Predicate<Wiring.Step> inside = step -> step.via() == Wiring.Via.ELEMENT || step.via() == Wiring.Via.BAR;
        return wiring.reach(terminal, inside).stream().allMatch(node -> wiring.from(node).stream().allMatch(inside));
    }

    private Finding finding(CheckContext context, SolvedCase solved, Wiring wiring, SupplySearch search, int element,
            Plan.Demand load) {
        int a = solved.running().at().terminalNode()[load.a()];
        int b = solved.running().at().terminalNode()[load.b()];
        List<Integer> supply = search.toPlus(a);
        List<Integer> back = search.toMinus(b);
        boolean certain = supply == null || back == null || supply.isEmpty() && back.isEmpty()
                || Stream.concat(supply.stream(), back.stream()).anyMatch(e -> !mayBeClosed(context.plan(), solved, e));
        FindingBuilder builder = Finding.of(slug(), certain ? Severity.ERROR : Severity.NOTE, context.names().element(element),
                context.names().shownElement(element) + (certain ? " is wanted and has no supply"
                        : " is wanted; the figures have it without supply"))
                .inCase(solved.state().name());
        Set<Integer> told = new TreeSet<>();
        if (supply == null) {
            noWay(context, wiring, load.a(), "plus", builder);
        } else {
            supply.forEach(open -> open(context, solved, search, open, told, builder));
        }
        if (back == null) {
            noWay(context, wiring, load.b(), "minus", builder);
        } else {
            back.forEach(open -> open(context, solved, search, open, told, builder));
        }
        if (supply != null && back != null && told.isEmpty()) {
            builder.because("Both of its terminals are on the same side, or its source and its return do not belong together.");
        }
        return builder.build();
    }

    private static void open(CheckContext context, SolvedCase solved, SupplySearch search, int element, Set<Integer> told,
            FindingBuilder builder) {
        if (!told.add(element)) {
            return;
        }
        String id = context.names().element(element);
        String shown = context.names().shown(id);
        if (!(context.plan().elements().get(element) instanceof Plan.Contact contact)) {
            builder.because("The diode of " + shown + " blocks.").causedBy(id, "blocks", null);
            return;
        }
        if ("hand".equals(contact.driver())) {
            builder.because("The switch " + shown + " is open in this case.").causedBy(id, "open switch", null)
                    .mend(Mend.inWords("State in the case that " + shown + " is closed, or leave the load out of the case."));
        } else if ("coil".equals(contact.driver()) && contact.drivenBy() >= 0) {
            builder.because("The contact of " + shown + " is open: its coil "
                    + (contact.restClosed() ? "is on." : "does not pull in.")).causedBy(id, "open contact", null);
            Plan.Coil coil = (Plan.Coil) context.plan().elements().get(contact.drivenBy());
            for (int end : new int[] {coil.a(), coil.b()}) {
                int node = solved.running().at().terminalNode()[end];
                List<Integer> way = end == coil.a() ? search.toPlus(node) : search.toMinus(node);
                if (way != null && !contact.restClosed()) {
                    way.forEach(open -> open(context, solved, search, open, told, builder));
                }
            }
        } else if ("threshold".equals(contact.driver())) {
            builder.because("The contact of " + shown + (mayBeClosed(context.plan(), solved, element)
                    ? " stays as it was at the voltage it senses in this case, and is taken as open."
                    : " is open at the voltage it senses in this case."))
                    .causedBy(id, "open at this voltage", null);
        } else {
            String why = "engine".equals(contact.driver()) ? "closes when the engine runs"
                    : "start".equals(contact.driver()) ? "closes while starting" : "follows the ignition switch ("
                    + contact.driver() + ")";
            builder.because("The contact of " + shown + " " + why + "; in this case it is open.").causedBy(id, "open contact",
                    null);
        }
    }

    /** True for a contact whose threshold senses a voltage between those for on and off, where it stays as it was. */
    private static boolean mayBeClosed(Plan plan, SolvedCase solved, int element) {
        if (!(plan.elements().get(element) instanceof Plan.Contact contact) || contact.drivenBy() < 0
                || !(plan.elements().get(contact.drivenBy()) instanceof Plan.Threshold threshold) || threshold.plus() < 0
                || threshold.minus() < 0) {
            return false;
        }
        double volts = solved.running().voltage(threshold.plus(), threshold.minus());
        return volts > StrictMath.min(threshold.onAt(), threshold.offAt())
                && volts < StrictMath.max(threshold.onAt(), threshold.offAt());
    }

    private static void noWay(CheckContext context, Wiring wiring, int terminal, String side, FindingBuilder builder) {
        List<Plan.Terminal> empty = emptyWays(context.plan(), wiring, terminal);
        for (Plan.Terminal way : empty) {
            Plan.Device box = context.plan().devices().get(way.device());
            String id = box.id() + "/" + way.name();
            builder.because("Way " + context.names().shown(id) + " holds no protective device, so it is open.")
                    .causedBy(id, "empty way", null)
                    .mend(Mend.inWords("Fit a protective device into way " + context.names().shown(id) + "."));
        }
        if (empty.isEmpty()) {
            builder.because("No conductor leads from " + context.names().shown(context.plan().terminals().get(terminal).id())
                    + " to the " + side + " of a source.");
        }
    }

    /** Outlets of boxes at which nothing inside ends, among the terminals that are joined with one. */
    private static List<Plan.Terminal> emptyWays(Plan plan, Wiring wiring, int terminal) {
        List<Plan.Terminal> found = new ArrayList<>();
        for (int node : wiring.reach(terminal, step -> step.via() != Wiring.Via.STRUCTURE)) {
            if (wiring.isTerminal(node) && plan.terminals().get(node).device() >= 0) {
                Plan.Terminal at = plan.terminals().get(node);
                boolean inside = wiring.from(node).stream().anyMatch(step -> step.via() == Wiring.Via.ELEMENT);
                if ("box".equals(plan.devices().get(at.device()).kind()) && !inside && at.bar() == null
                        && !isFeed(plan, node)) {
                    found.add(at);
                }
            }
        }
        return found;
    }

    /** True for the feed of a box: DIN 72552 names it 30 or 15, outlets bear the numbers of their ways. */
    private static boolean isFeed(Plan plan, int terminal) {
        String name = plan.terminals().get(terminal).name();
        boolean feeds = plan.elements().stream().anyMatch(element -> element instanceof Plan.Protector protector
                && protector.a() == terminal);
        return feeds || "30".equals(name) || "15".equals(name);
    }
}
