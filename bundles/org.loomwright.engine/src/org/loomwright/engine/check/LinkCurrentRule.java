// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A split-charge link carries the charging current, what flows through it while cranking, and what flows at the moment it
 * closes between batteries of different charge; fuses in its line hold. Contacts carry their continuous rating and, for
 * seconds, what they can close on.
 */
final class LinkCurrentRule implements Rule {
    private static final double SAME = 1e-6;

    @Override
    public String slug() {
        return "link-current";
    }

    @Override
    public String says() {
        return "A link between batteries bears the current when it closes, charges and while cranking, and its fuses hold.";
    }

    @Override
    public List<String> limits() {
        return List.of("state.rest-charge", "state.full-charge", "state.crank-time");
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        BatteryLinks links = BatteryLinks.of(context.plan());
        LinkClosing closing = new LinkClosing(context, links);
        links.byDevice().forEach((device, elements) -> {
            for (SolvedCase solved : context.settled()) {
                for (int e : elements) {
                    carried(context, solved, e, findings);
                }
                if ("cranking".equals(solved.state().kind())) {
                    fuses(context, solved.running(), solved.state().name(), elements, true, findings);
                }
            }
            closed(context, closing, elements.stream()
                    .filter(e -> context.plan().elements().get(e) instanceof Plan.Contact).toList(), findings);
        });
        return findings;
    }

    private void carried(CheckContext context, SolvedCase solved, int e, List<Finding> findings) {
        Plan.Element element = context.plan().elements().get(e);
        boolean cranking = "cranking".equals(solved.state().kind());
        double limitA = element instanceof Plan.Diode diode ? diode.currentMaxA()
                : cranking ? ((Plan.Contact) element).makeA() : ((Plan.Contact) element).continuousA();
        double amps = StrictMath.abs(solved.running().elementA(e));
        if (Beyond.above(amps, limitA)) {
            findings.add(finding(context, e, solved.state().name(), cranking
                    ? " carries %s while cranking, made for %s for seconds"
                    : " carries %s, made for %s", amps, limitA,
                    cranking ? "The other battery helps the starter through the link."
                    : "The link takes the whole charging current.")
                    .build());
        }
    }

    private FindingBuilder finding(CheckContext context, int e, String caseName, String text, double amps, double limitA,
            String why) {
        Quantity is = Quantity.of(amps, "A");
        Quantity wanted = Quantity.of(limitA, "A");
        String id = context.names().element(e);
        return Finding.of(slug(), Severity.WARNING, id, "Link " + context.names().shown(id) + String.format(text, is, wanted))
                .inCase(caseName).figures(is, wanted).because(why)
                .mend(Mend.inWords("Use a link made for at least " + is
                + ", or charge over a converter with a limit of its own."));
    }

    private void closed(CheckContext context, LinkClosing closing, List<Integer> contacts, List<Finding> findings) {
        SolvedCase at = chargingCase(context);
        if (contacts.isEmpty() || at == null) {
            return;
        }
        SolvedCase.Solved lasting = worst(context, closing, at, contacts, false);
        if (lasting != null) {
            fuses(context, lasting, at.state().name(), contacts, false, findings);
        }
        SolvedCase.Solved worst = worst(context, closing, at, contacts, true);
        double mostA = worst == null ? 0 : amps(worst, contacts);
        double makeA = contacts.stream().mapToDouble(e -> ((Plan.Contact) context.plan().elements().get(e)).makeA()).max()
                .orElseThrow();
        double full = context.practice().value("state.full-charge");
        if (Beyond.above(mostA, makeA)) {
            Quantity is = Quantity.of(mostA, "A");
            findings.add(finding(context, contacts.get(0), at.state().name(), " closes on %s, made to close on %s", mostA, makeA,
                    "One battery is full, the other low, and only their resistances hold the current back.")
                    .derived(new Derivation("current on closing", is, "operating point with the link closed", List.of(
                            new Derivation.Input("charge of the fuller side", Quantity.of(full, "1"), "state.full-charge"),
                            new Derivation.Input("least charge of the other side", Quantity.of(lowest(context, closing), "1"),
                                    "least of the cases and state.rest-charge")),
                            "Kirchhoff's laws; smallest resistances of batteries, joints and conductors")).build());
        }
    }

    /** The side that gives the larger current being full. */
    private static SolvedCase.Solved worst(CheckContext context, LinkClosing closing, SolvedCase at, List<Integer> contacts,
            boolean first) {
        Plan.Contact contact = (Plan.Contact) context.plan().elements().get(contacts.get(0));
        SolvedCase.Solved aFull = closing.solve(at, contacts, contact.a(), contact.b(), first);
        SolvedCase.Solved bFull = closing.solve(at, contacts, contact.b(), contact.a(), first);
        return aFull == null || bFull != null && amps(bFull, contacts) > amps(aFull, contacts) ? bFull : aFull;
    }

    private static double amps(SolvedCase.Solved solved, List<Integer> contacts) {
        return contacts.stream().mapToDouble(e -> StrictMath.abs(solved.elementA(e))).sum();
    }

    private static double lowest(CheckContext context, LinkClosing closing) {
        double charge = 1;
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (context.plan().elements().get(e) instanceof Plan.Cell) {
                charge = StrictMath.min(charge, closing.lowest(e));
            }
        }
        return charge;
    }

    private static SolvedCase chargingCase(CheckContext context) {
        SolvedCase best = null;
        for (SolvedCase solved : context.settled()) {
            if (best == null || rank(solved) > rank(best)) {
                best = solved;
            }
        }
        return best;
    }

    private static int rank(SolvedCase solved) {
        return (solved.state().engineRunning() ? 2 : 0) + ("charging".equals(solved.state().kind()) ? 1 : 0);
    }

    /** Protective devices in the line of the link: those that carry its current. */
    private void fuses(CheckContext context, SolvedCase.Solved solved, String caseName, List<Integer> elements,
            boolean cranking, List<Finding> findings) {
        double amps = StrictMath.abs(elements.stream().mapToDouble(solved::elementA).sum());
        double seconds = cranking ? context.practice().value("state.crank-time") : Double.POSITIVE_INFINITY;
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (context.plan().elements().get(e) instanceof Plan.Protector protector && amps > 0
                    && StrictMath.abs(StrictMath.abs(solved.elementA(e)) - amps) <= SAME * amps
                    && Beyond.above(amps, protector.ratingA()) && FuseOpening.mayOpen(protector, amps, seconds)) {
                String fuse = context.names().element(e);
                String link = context.names().element(elements.get(0));
                Quantity is = Quantity.of(amps, "A");
                Quantity wanted = Quantity.of(protector.ratingA(), "A");
                findings.add(Finding.of(slug(), Severity.WARNING, link, "Link " + context.names().shown(link) + " carries " + is
                        + (cranking ? " while cranking" : " when it closes") + ", the " + protector.kind() + " "
                        + context.names().shown(fuse) + " in its line is for " + wanted)
                        .inCase(caseName).figures(is, wanted)
                        .because(cranking ? "The other battery helps the starter through the link."
                                : "One battery is full, the other low, and only their resistances hold the current back.")
                        .because("Once the " + protector.kind()
                        + " has opened the second battery is charged no more, and nobody notices.")
                        .causedBy(fuse, "may open at that current", wanted)
                        .mend(Mend.inWords(cranking ? "Let the link open while starting, as by the charging voltage it senses."
                                : "Charge over a converter with a limit of its own, or use cable and fuse for at least " + is
                                + "."))
                        .build());
            }
        }
    }
}
