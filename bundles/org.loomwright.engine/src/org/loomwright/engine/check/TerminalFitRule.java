// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/** A conductor's section suits its terminal, a lug's hole the stud, and a stud holds no more lugs than it may. */
final class TerminalFitRule implements Rule {
    static final String LUGS = "terminal-fit.lugs-max";

    @Override
    public String slug() {
        return "terminal-fit";
    }

    @Override
    public String says() {
        return "Conductors and lugs fit their terminals, and studs are not overfull.";
    }

    @Override
    public List<String> limits() {
        return List.of(LUGS);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Plan plan = context.plan();
        List<List<String>> lugs = new ArrayList<>();
        plan.terminals().forEach(terminal -> lugs.add(new ArrayList<>()));
        for (int c = 0; c < plan.conductors().size(); c++) {
            Plan.Conductor core = plan.conductors().get(c);
            end(context, c, core.a(), core.lugA(), findings);
            end(context, c, core.b(), core.lugB(), findings);
            lugs.get(core.a()).add(context.names().conductor(c));
            lugs.get(core.b()).add(context.names().conductor(c));
        }
        for (Plan.Bond bond : plan.bonds()) {
            lugs.get(bond.a()).add(bond.id());
            lugs.get(bond.b()).add(bond.id());
        }
        Practice.Limit most = context.practice().limit(LUGS);
        for (int t = 0; t < lugs.size(); t++) {
            stud(context, plan.terminals().get(t), lugs.get(t), most, findings);
        }
        return findings;
    }

    private void end(CheckContext context, int conductor, int at, double holeMm, List<Finding> findings) {
        Plan.Conductor core = context.plan().conductors().get(conductor);
        Plan.Terminal terminal = context.plan().terminals().get(at);
        if (Beyond.above(core.sectionMm2(), terminal.sectionMaxMm2())) {
            findings.add(section(context, conductor, terminal, terminal.sectionMaxMm2(), "at most ", List.of(Mend.inWords(
                    "End the cable on a stud or splice of its size, and go on with a conductor that fits."))));
        } else if (Beyond.below(core.sectionMm2(), terminal.sectionMinMm2())) {
            Plan.Cable cable = context.plan().cables().get(core.cable());
            findings.add(section(context, conductor, terminal, terminal.sectionMinMm2(), "at least ",
                    new SectionMends(context.plan(), context.names()).atLeast(cable, terminal.sectionMinMm2()).stream()
                    .toList()));
        }
        if (Beyond.above(holeMm, terminal.studMm()) || Beyond.below(holeMm, terminal.studMm())) {
            Quantity is = Quantity.of(holeMm, "mm");
            Quantity wanted = Quantity.of(terminal.studMm(), "mm");
            findings.add(Finding.of(slug(), Severity.ERROR, context.names().conductor(conductor),
                    "Lug of " + context.names().shownConductor(conductor) + " at " + context.names().shown(terminal.id())
                            + " has a hole for " + metric(holeMm) + ", the stud is " + metric(terminal.studMm()))
                    .figures(is, wanted)
                    .because(holeMm > terminal.studMm() ? "A lug with too much room presses on a rim only, works loose and "
                    + "heats up."
                            : "The lug does not go over the stud; a drilled-out lug has no metal left.")
                    .causedBy(terminal.id(), "stud " + metric(terminal.studMm()), wanted)
                    .mend(Mend.inWords("Use a lug for " + metric(terminal.studMm()) + ".")).build());
        }
    }

    private static String metric(double mm) {
        return "M" + Figures.three(mm);
    }

    private Finding section(CheckContext context, int conductor, Plan.Terminal terminal, double limitMm2, String bound,
            List<Mend> mends) {
        Plan.Conductor core = context.plan().conductors().get(conductor);
        Quantity is = Quantity.of(core.sectionMm2(), "mm2");
        Quantity wanted = Quantity.of(limitMm2, "mm2");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(conductor),
                context.names().shownConductor(conductor) + " has " + is + ", terminal " + context.names().shown(terminal.id())
                        + " takes " + bound + wanted)
                .figures(is, wanted)
                .because(core.sectionMm2() > limitMm2 ? "Strands left out of a clamp or a crimp carry no current and break off."
                        : "A thin conductor is not held firmly in a clamp or a crimp made for thicker ones.")
                .causedBy(terminal.id(), "range of the terminal", wanted);
        mends.forEach(builder::mend);
        return builder.build();
    }

    private void stud(CheckContext context, Plan.Terminal terminal, List<String> lugs, Practice.Limit most,
            List<Finding> findings) {
        boolean isStud = terminal.device() < 0 || "stud".equals(terminal.form());
        double limit = terminal.lugsMax() > 0 ? terminal.lugsMax() : most.value();
        if (!isStud || !Beyond.above(lugs.size(), limit)) {
            return;
        }
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, terminal.id(), "Stud " + context.names().shown(terminal.id())
                + " holds " + lugs.size() + " lugs, " + Figures.three(limit) + " at most")
                .figures(Quantity.of(lugs.size(), "1"), Quantity.of(limit, "1"))
                .because(terminal.lugsMax() > 0 ? "The part states how many lugs the stud takes."
                        : "The part states no number; " + most.name() + " of the practice holds (" + most.source() + ").")
                .because("Each lug more is one more joint that the nut has to hold, and the thread runs out.");
        lugs.forEach(lug -> builder.causedBy(lug, "lug on the stud", null));
        findings.add(builder.mend(Mend.inWords("Set a bar beside it and lead one cable over.")).build());
    }
}
