// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.check.NetworkIndex.Owner;
import org.loomwright.engine.earth.LossCase.Detour;
import org.loomwright.engine.earth.LossCase.HotPart;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.heat.DutyCycle;
import org.loomwright.engine.heat.Ratings;

/**
 * Which detours carry more than they bear. Where loads of the case come and go, a start among them, conductors are judged by the
 * peak of the cycle of the thermal equation, other things by the mean square, all such loads taken to be on together; else by the
 * steady current.
 */
final class LossHeat {
    /** A figure at its limit, but for the last digits of arithmetic, still meets it. */
    private static final double DIGITS = 1e-9;

    private final Plan plan;

    LossHeat(Plan plan) {
        this.plan = plan;
    }

    /**
     * The detours that carry more than they bear.
     *
     * @param base network after the loss with loads that come and go at standby; asked for when it is needed
     */
    List<HotPart> of(SolvedCase solved, List<Detour> detours, Supplier<SolvedCase.Solved> base) {
        DutyCycle duty = duty(solved.state());
        List<HotPart> hot = new ArrayList<>();
        for (Detour detour : detours) {
            if (beyond(detour.afterA(), detour.ratedA())) {
                Owner owner = new Owner(detour.kind(), detour.index());
                SolvedCase.Solved off = duty == null ? null : base.get();
                double offA = off == null ? 0 : StrictMath.abs(off.itemA(PlanItems.item(off.at(), owner)));
                HotPart part = detour.kind() == NetworkIndex.Kind.CONDUCTOR ? conductor(solved, detour, duty, offA)
                        : other(detour, duty, offA);
                if (part != null) {
                    hot.add(part);
                }
            }
        }
        hot.sort((a, b) -> a.burns() != b.burns() ? (a.burns() ? -1 : 1) : Double.compare(b.times(), a.times()));
        return hot;
    }

    /** One duty for all loads of a case that come and go; null when none does. */
    static DutyCycle duty(Plan.Case state) {
        List<DutyCycle> duties = new ArrayList<>();
        for (Plan.DemandState demand : state.demands()) {
            if (demand.factor() > 0 && demand.onS() > 0 && demand.onS() < demand.periodS()) {
                duties.add(new DutyCycle(demand.onS(), demand.periodS()));
            }
        }
        return duties.isEmpty() ? null : DutyCycle.covering(duties);
    }

    private HotPart conductor(SolvedCase solved, Detour detour, DutyCycle duty, double offA) {
        ConductorRating rating = solved.ratings().get(detour.index());
        ConductorTemperature thermal = Ratings.thermal(plan, detour.index(), rating);
        if (thermal == null) {
            return null;
        }
        double peakC = duty == null ? thermal.steadyC(detour.afterA())
                : offA > detour.afterA() ? thermal.steadyC(offA) : duty.peakC(thermal, detour.afterA(), offA);
        if (!beyond(peakC, rating.maxC())) {
            return null;
        }
        double destroyedC = plan.cables().get(plan.conductors().get(detour.index()).cable()).shortTimeMaxC();
        return new HotPart(detour, countsA(detour, duty, offA), solved.running().conductorC(detour.index()), peakC,
                rating.maxC(), Double.isNaN(destroyedC) ? Double.POSITIVE_INFINITY : destroyedC);
    }

    private HotPart other(Detour detour, DutyCycle duty, double offA) {
        double countsA = countsA(detour, duty, offA);
        return beyond(countsA, detour.ratedA())
                ? new HotPart(detour, countsA, Double.NaN, Double.NaN, Double.NaN, Double.NaN) : null;
    }

    private static double countsA(Detour detour, DutyCycle duty, double offA) {
        return duty == null ? detour.afterA() : duty.rmsA(detour.afterA(), offA);
    }

    private static boolean beyond(double figure, double limit) {
        return figure > limit + DIGITS * StrictMath.abs(limit);
    }
}
