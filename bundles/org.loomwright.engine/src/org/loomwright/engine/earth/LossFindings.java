// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.earth.LossCase.HotPart;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * Findings of lost straps: a warning where heat, clearing of faults or a declared way for a large current no longer hold, a note
 * where loads stop working. A loss that the rest bears gives none.
 */
final class LossFindings {
    static final String RULE = "bond-loss";

    private final Plan plan;
    private final EarthNames names;
    private final LossWords words;
    private final LossDerivations derivations;

    LossFindings(Plan plan, EarthNames names, LossWords words) {
        this.plan = plan;
        this.names = names;
        this.words = words;
        derivations = new LossDerivations(plan, names);
    }

    /** One finding a row that deserves one, in the order of the rows. */
    List<Finding> of(List<LossRow> rows) {
        List<Finding> findings = new ArrayList<>();
        for (LossRow row : rows) {
            if (row.rank().compareTo(LossRank.STOPS) <= 0) {
                findings.add(finding(row));
            }
        }
        return findings;
    }

    private Finding finding(LossRow row) {
        LossCase worst = row.worst();
        FindingBuilder builder = Finding.of(RULE, row.rank().harmful() ? Severity.WARNING : Severity.NOTE,
                plan.bonds().get(row.bonds().get(0)).id(), "Without " + names.straps(row.bonds()) + " " + title(row))
                .because(row.symptom());
        if (worst != null && row.rank() != LossRank.DOES_NOT_CLEAR) {
            builder.inCase(worst.caseName());
        }
        figures(row, builder);
        if (worst != null) {
            builder.because(words.when(worst) + names.straps(row.bonds()) + (row.bonds().size() == 1 ? " carries "
                    : " carry up to ")
                    + LossWords.amps(worst.carriedA()) + ". " + words.way(worst));
            words.moved(worst).forEach(builder::because);
            worst.hot().stream().skip(1).forEach(part -> builder.because("Besides, " + words.hot(part) + "."));
        }
        row.bonds().stream().skip(1).forEach(bond -> builder.causedBy(plan.bonds().get(bond).id(), "lost as well", null));
        causes(row, builder);
        for (int bond : row.bonds()) {
            mend(bond).ifPresent(builder::mend);
        }
        derivations.of(row).forEach(builder::derived);
        return builder.build();
    }

    private String title(LossRow row) {
        LossCase worst = row.worst();
        return switch (row.rank()) {
            case BURNS, OVERLOADS -> words.hot(worst.hot().get(0));
            case DOES_NOT_CLEAR -> row.uncleared().size() == 1 ? "a fault to the structure is no longer cleared in time"
                    : row.uncleared().size() + " faults to the structure are no longer cleared in time";
            case STRANDS -> LossWords.amps(worst.strandedA()) + " of return current have no declared way";
            default -> "loads or charging stop: " + worst.loads().size() + (worst.loads().size() == 1 ? " load" : " loads")
                    + (worst.sources().isEmpty() ? "" : ", " + worst.sources().size() + " charging source"
                            + (worst.sources().size() == 1 ? "" : "s"));
        };
    }

    private void figures(LossRow row, FindingBuilder builder) {
        LossCase worst = row.worst();
        if (row.rank() == LossRank.STRANDS) {
            builder.figures(Quantity.of(worst.strandedA(), "A"), Quantity.of(plan.practice().value(LossEffects.STRANDED), "A"));
        } else if (row.rank() == LossRank.DOES_NOT_CLEAR) {
            builder.figures(Quantity.of(row.uncleared().get(0).afterS(), "s"),
                    Quantity.of(plan.practice().value(FaultClearing.TIME), "s"));
        } else if (row.rank() != LossRank.STOPS) {
            HotPart part = worst.hot().get(0);
            builder.figures(Double.isNaN(part.afterC()) ? Quantity.of(part.countsA(), "A") : Quantity.of(part.afterC(), "degC"),
                    Double.isNaN(part.afterC()) ? Quantity.of(part.detour().ratedA(), "A") : Quantity.of(part.maxC(), "degC"));
        }
    }

    private void causes(LossRow row, FindingBuilder builder) {
        if (row.worst() != null) {
            row.worst().hot().forEach(part -> builder.causedBy(part.detour().element(), "carries it instead",
                    Quantity.of(part.detour().afterA(), "A")));
            row.worst().sources().forEach(source -> builder.causedBy(names.id(source), "no longer charges", null));
            row.worst().loads().forEach(load -> builder.causedBy(names.id(load.demand()), "no longer supplied as it should be",
                    Double.isNaN(load.afterV()) ? null : Quantity.of(load.afterV(), "V")));
        }
        row.uncleared().forEach(fault -> builder.causedBy(names.id(fault.protector()), "no longer clears a fault of "
                + names.conductorId(fault.conductor()) + " to " + names.body(fault.body()), Quantity.of(fault.afterA(), "A")));
    }

    /** A second strap beside the one that may be lost, alike; in words where its size is not known. */
    private Optional<Mend> mend(int index) {
        Plan.Bond bond = plan.bonds().get(index);
        int bodyA = plan.terminals().get(bond.a()).body();
        int bodyB = plan.terminals().get(bond.b()).body();
        if (bodyA < 0 || bodyB < 0 || bodyA == bodyB) {
            return Optional.empty();
        }
        String between = names.body(bodyA) + " and " + names.body(bodyB);
        if (!(bond.sectionMm2() > 0) || !(bond.lengthMm() > 0)) {
            return Optional.of(Mend.inWords("Fit a second strap between " + between + ", at other points than "
                    + names.strap(index) + "."));
        }
        return Optional.of(new Mend("Fit a second strap of " + Figures.three(bond.sectionMm2()) + " mm2 between "
                + between + ", at other points than " + names.strap(index) + ": then either can be lost.",
                List.of(new Mend.AddBond(names.body(bodyA), names.body(bodyB), bond.sectionMm2(), bond.lengthMm()))));
    }

    /** A limit as an input of a derivation. */
    static Input limit(Practice.Limit limit) {
        return new Input("limit", Quantity.of(limit.value(), limit.unit()), limit.name() + ", " + limit.source());
    }

    static Derivation kirchhoff(String figure, Quantity value, String formula, List<Input> inputs) {
        return new Derivation(figure, value, formula, inputs, "Kirchhoff's laws");
    }
}
