// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.CurvePair;
import org.loomwright.engine.protection.FaultBranch;
import org.loomwright.engine.protection.ShortTransient;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/** What findings about protection have in common: derivations, words for temperatures, times and parts of a fault's loop. */
final class ProtectionReasons {
    private ProtectionReasons() {
    }

    /** Adds how the figures of a conductor's protection came about. */
    static FindingBuilder derived(FindingBuilder builder, CheckContext context, int conductor) {
        return derived(builder, context, context.plan().conductors().get(conductor).id());
    }

    /** Adds how the protection figures of an element came about. */
    static FindingBuilder derived(FindingBuilder builder, CheckContext context, String element) {
        for (ElementFigures figures : context.protection().explainer().explain(element)) {
            figures.derivations().forEach(builder::derived);
        }
        return builder;
    }

    /** How hot a conductor gets, in words: melting copper is said to be that. */
    static String hot(ShortTransient heat) {
        return heat.peakC() >= org.loomwright.engine.flow.FlowOptions.COPPER_MELTS_C ? "melts"
                : "reaches " + Quantity.of(heat.peakC(), "degC");
    }

    /** A time, s or ms, or that it never ends. */
    static String time(double seconds) {
        if (Double.isInfinite(seconds)) {
            return "for ever";
        }
        return "for " + (seconds < 1 ? Quantity.of(seconds * 1000, "ms") : Quantity.of(seconds, "s"));
    }

    /** Curve of a protective device in its coldest ambient, at which it is slowest; null when it states none. */
    static CurvePair cold(CheckContext context, int element) {
        Plan.Protector protector = (Plan.Protector) context.plan().elements().get(element);
        return CurvePair.of(protector).map(c -> c.at(Ambients.coldestOfDevice(context.plan(), protector.device()))).orElse(null);
    }

    /** Id under which a finding names a part of a fault's loop. */
    static String id(CheckContext context, FaultBranch branch) {
        Plan plan = context.plan();
        return switch (branch.kind()) {
            case CONDUCTOR -> context.names().conductor(branch.index());
            case ELEMENT -> context.names().element(branch.index());
            case BOND -> plan.bonds().get(branch.index()).id();
            case SEAM -> plan.bodyLinks().get(branch.index()).id();
            case EARTH_POINT, CASE -> plan.terminals().get(branch.index()).id();
        };
    }

    /** A part of a fault's loop as it reads in a sentence, with the article. */
    static String words(CheckContext context, FaultBranch branch) {
        String shown = context.names().shown(id(context, branch));
        return switch (branch.kind()) {
            case CONDUCTOR -> "the cable " + shown;
            case ELEMENT -> "what lies in " + shown;
            case BOND -> "the strap " + shown;
            case SEAM -> "the seam " + shown;
            case EARTH_POINT -> "the earth point " + shown;
            case CASE -> "the case contact " + shown;
        };
    }
}
