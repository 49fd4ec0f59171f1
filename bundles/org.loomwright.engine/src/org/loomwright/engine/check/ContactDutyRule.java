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
 * A contact carries its current, closes on the inrush of the loads behind it and opens their running current, at a voltage it
 * is made for; shunts, diodes and joints carry their current. Ratings are the part's. Loads with a duty that alone bring the
 * current above the continuous rating give a warning, as a contact heats up within minutes. Cranking lasts seconds, so the
 * current then is held against the making capacity. What links batteries is judged by its own rule.
 */
final class ContactDutyRule implements Rule {
    @Override
    public String slug() {
        return "contact-duty";
    }

    @Override
    public String says() {
        return "Contacts carry, close and open their current at a voltage they are made for.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Wiring wiring = Wiring.of(context.plan());
        DomainVolts volts = new DomainVolts(context);
        BatteryLinks links = BatteryLinks.of(context.plan());
        for (int e = 0; e < context.plan().elements().size(); e++) {
            Plan.Element element = context.plan().elements().get(e);
            if (element instanceof Plan.Contact contact) {
                voltage(context, e, contact, volts, findings);
            }
            if (Wiring.ends(element) == null || element instanceof Plan.Protector || links.contains(e)) {
                continue;
            }
            FedThrough fed = element instanceof Plan.Contact ? FedThrough.of(context, wiring, e) : null;
            for (SolvedCase solved : context.settled()) {
                continuous(context, solved, e, element, findings);
                if (element instanceof Plan.Contact contact && isClosed(solved, e)) {
                    make(context, solved, e, contact, fed, findings);
                    opening(context, solved, e, contact, fed, findings);
                }
            }
        }
        return findings;
    }

    private static boolean isClosed(SolvedCase solved, int element) {
        int item = solved.running().at().elementItem()[element];
        return item >= 0 && solved.running().point().on()[item];
    }

    private void voltage(CheckContext context, int e, Plan.Contact contact, DomainVolts volts, List<Finding> findings) {
        double highestV = StrictMath.max(orZero(volts.highestAt(contact.a())), orZero(volts.highestAt(contact.b())));
        if (Beyond.above(highestV, contact.ratedV())) {
            Quantity is = Quantity.of(highestV, "V");
            Quantity wanted = Quantity.of(contact.ratedV(), "V");
            findings.add(Finding.of(slug(), Severity.ERROR, context.names().element(e),
                    what(context, e) + " switches " + is + ", made for " + wanted).figures(is, wanted)
                    .because("Above its voltage the arc on opening does not go out.")
                    .mend(Mend.inWords("Use a contact made for at least " + is + ".")).build());
        }
    }

    private static double orZero(double volts) {
        return Double.isNaN(volts) ? 0 : volts;
    }

    private void continuous(CheckContext context, SolvedCase solved, int e, Plan.Element element, List<Finding> findings) {
        boolean cranking = "cranking".equals(solved.state().kind());
        double limitA = cranking ? element instanceof Plan.Contact contact ? contact.makeA() : Double.NaN : ratedA(element);
        double amps = StrictMath.abs(solved.running().elementA(e));
        if (!Beyond.above(amps, limitA)) {
            return;
        }
        boolean always = cranking || Beyond.above(StrictMath.abs(solved.base().elementA(e)), limitA);
        Quantity is = Quantity.of(amps, "A");
        Quantity wanted = Quantity.of(limitA, "A");
        FindingBuilder builder = Finding.of(slug(), always ? Severity.ERROR : Severity.WARNING, context.names().element(e),
                what(context, e) + " carries " + is + (cranking ? " while cranking, made to close on " : ", made for ") + wanted)
                .inCase(solved.state().name()).figures(is, wanted)
                .because(always ? "It heats up and wears out, or welds."
                        : "Only while loads that come and go are on; it heats up within minutes.");
        findings.add(builder.mend(Mend.inWords("Use one made for at least " + is + ", or part the loads over two."))
                .derived(new Derivation("current", is, "operating point of the case", List.of(), "Kirchhoff's current law"))
                .build());
    }

    private void make(CheckContext context, SolvedCase solved, int e, Plan.Contact contact, FedThrough fed,
            List<Finding> findings) {
        double amps = StrictMath.max(StrictMath.abs(solved.running().elementA(e)), fed.inrushA(solved));
        if (!"cranking".equals(solved.state().kind()) && Beyond.above(amps, contact.makeA())) {
            Quantity is = Quantity.of(amps, "A");
            Quantity wanted = Quantity.of(contact.makeA(), "A");
            FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(e),
                    what(context, e) + " closes on " + is + ", made to close on " + wanted)
                    .inCase(solved.state().name()).figures(is, wanted)
                    .because("The inrush of the loads behind it can weld it.");
            fed.causes(solved).forEach(cause -> builder.causedBy(cause.element(), cause.what(), cause.share()));
            findings.add(builder.mend(Mend.inWords("Use a contact made to close on at least " + is
                    + ", or let the loads start one after the other.")).derived(fed.derivation(solved, is)).build());
        }
    }

    private void opening(CheckContext context, SolvedCase solved, int e, Plan.Contact contact, FedThrough fed,
            List<Finding> findings) {
        double amps = StrictMath.abs(solved.running().elementA(e));
        boolean told = Beyond.above(amps, contact.continuousA());
        if (!"cranking".equals(solved.state().kind()) && !told && Beyond.above(amps, contact.breakA())) {
            Quantity is = Quantity.of(amps, "A");
            Quantity wanted = Quantity.of(contact.breakA(), "A");
            FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(e),
                    what(context, e) + " opens " + is + ", made to open " + wanted)
                    .inCase(solved.state().name()).figures(is, wanted)
                    .because("It burns away a little every time it opens under that current.");
            fed.causes(solved).forEach(cause -> builder.causedBy(cause.element(), cause.what(), cause.share()));
            findings.add(builder.mend(Mend.inWords("Use a contact made to open at least " + is
                    + ", or switch the loads by a relay.")).build());
        }
    }

    private static double ratedA(Plan.Element element) {
        return element instanceof Plan.Contact contact ? contact.continuousA()
                : element instanceof Plan.Shunt shunt ? shunt.currentMaxA()
                : element instanceof Plan.Diode diode ? diode.currentMaxA() : ((Plan.Joint) element).currentMaxA();
    }

    private static String what(CheckContext context, int e) {
        String shown = context.names().shown(context.names().element(e));
        Plan.Element element = context.plan().elements().get(e);
        return (element instanceof Plan.Contact ? "Contact of " : element instanceof Plan.Shunt ? "Shunt "
                : element instanceof Plan.Diode ? "Diode of " : "Joint of ") + shown;
    }
}
