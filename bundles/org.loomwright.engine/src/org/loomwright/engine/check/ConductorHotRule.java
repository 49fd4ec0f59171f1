// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.DutyCycle;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * No conductor gets hotter than its insulation bears: steady with its current, or at the peak of the cycle where loads come
 * and go. Loads that come and go are taken to be on together; a start is over before the cable is warm unless the case states
 * its seconds.
 */
final class ConductorHotRule implements Rule {

    @Override
    public String slug() {
        return "conductor-hot";
    }

    @Override
    public String says() {
        return "No conductor gets hotter than its insulation bears, at the peak of the cycle.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (SolvedCase solved : context.settled()) {
            LoadsThrough loads = new LoadsThrough(context, solved);
            for (int c = 0; c < context.plan().conductors().size(); c++) {
                ConductorRating rating = solved.ratings().get(c);
                double hotC = solved.running().conductorC(c);
                if (Beyond.above(hotC, rating.maxC())) {
                    findings.add(finding(context, solved, loads, c, new Heat(rating, loads.dutyOf(c),
                            StrictMath.abs(solved.running().conductorA(c)), StrictMath.abs(solved.base().conductorA(c)), hotC)));
                }
            }
        }
        return FindingMerge.perElement(findings);
    }

    private record Heat(ConductorRating rating, DutyCycle duty, double onA, double offA, double hotC) {
    }

    private Finding finding(CheckContext context, SolvedCase solved, LoadsThrough loads, int conductor, Heat heat) {
        ConductorRating rating = heat.rating();
        Quantity is = Quantity.of(heat.hotC(), "degC");
        Quantity wanted = Quantity.of(rating.maxC(), "degC");
        String name = context.names().shownConductor(conductor);
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(conductor),
                (heat.hotC() >= FlowOptions.COPPER_MELTS_C ? name + " overheats without end" : name + " reaches " + is) + " at "
                        + Quantity.of(heat.onA(), "A") + ", its insulation bears " + wanted)
                .inCase(solved.state().name()).figures(is, wanted)
                .because("At " + Quantity.of(rating.ambientC(), "degC") + " and with " + rating.counted()
                        + " together it is rated for " + Quantity.of(rating.correctedA(), "A") + ".");
        if (heat.duty() != null) {
            builder.because("The peak of " + Quantity.of(heat.duty().onS(), "s") + " on in "
                    + Quantity.of(heat.duty().periodS(), "s") + ", with " + Quantity.of(heat.offA(), "A") + " in between.");
        }
        loads.causes(conductor).forEach(cause -> builder.causedBy(cause.element(), cause.what(), cause.share()));
        mend(context, conductor, heat, builder);
        return builder.derived(RatingDerivation.of(context.plan(), conductor, rating)).derived(derivation(context, conductor,
                heat))
                .build();
    }

    private static void mend(CheckContext context, int conductor, Heat heat, FindingBuilder builder) {
        SectionMends mends = new SectionMends(context.plan(), context.names());
        if (heat.duty() == null) {
            mends.forRating(conductor, heat.rating(), heat.onA()).ifPresent(builder::mend);
        } else {
            mends.forPeak(conductor, heat.rating(), heat.duty(), heat.onA(), heat.offA()).ifPresent(builder::mend);
        }
    }

    private static Derivation derivation(CheckContext context, int conductor, Heat heat) {
        List<Derivation.Input> inputs = new ArrayList<>();
        String id = context.names().conductor(conductor);
        inputs.add(new Derivation.Input("I", Quantity.of(heat.onA(), "A"), "operating point of the case"));
        inputs.add(new Derivation.Input("Iz at Tref", Quantity.of(heat.rating().atReferenceA(), "A"), heat.rating().source()));
        inputs.add(new Derivation.Input("Ta", Quantity.of(heat.rating().ambientC(), "degC"), id));
        if (heat.duty() != null) {
            inputs.add(new Derivation.Input("time on", Quantity.of(heat.duty().onS(), "s"), "duty of the loads behind it"));
            inputs.add(new Derivation.Input("period", Quantity.of(heat.duty().periodS(), "s"), "duty of the loads behind it"));
            inputs.add(new Derivation.Input("I between", Quantity.of(heat.offA(), "A"), "operating point without those loads"));
        }
        return new Derivation(heat.duty() == null ? "steady temperature" : "peak temperature",
                Quantity.of(heat.hotC(), "degC"), heat.duty() == null
                        ? "I^2 R(T) = (T - Ta) Iz^2 R(Tmax) / (Tmax - Tref), solved for T"
                        : "periodic solution of C dT/dt = I^2 R(T) - (T - Ta) Iz^2 R(Tmax) / (Tmax - Tref)",
                inputs, "heat balance that the published rating implies");
    }
}
