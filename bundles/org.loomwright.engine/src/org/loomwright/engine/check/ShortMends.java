// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.heat.Ratings;
import org.loomwright.engine.protection.CurvePair;
import org.loomwright.engine.protection.ShortTransient;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;

/**
 * Sections and ratings with which a conductor stays below its short-time limit. The fault currents of the present section are
 * kept, and the range of currents so at least as wide as with a thicker one.
 */
final class ShortMends {
    private final CheckContext context;

    ShortMends(CheckContext context) {
        this.context = context;
    }

    /**
     * The next section on offer.
     *
     * @param share share of the device's current that flows in the conductor
     */
    Optional<Mend> section(int conductor, int protector, double share, ShortTransient heat) {
        Plan.Cable cable = context.plan().cables().get(context.plan().conductors().get(conductor).cable());
        CurvePair curve = ProtectionReasons.cold(context, protector);
        DeviceRatingRule.Smallest smallest = DeviceRatingRule.smallest(context, conductor);
        if (curve == null || smallest == null || cable.existing()) {
            return Optional.empty();
        }
        List<Plan.SectionOption> larger = new ArrayList<>(cable.options());
        larger.removeIf(option -> option.sectionMm2() <= cable.sectionMm2());
        larger.sort(Comparator.comparingDouble(Plan.SectionOption::sectionMm2));
        for (Plan.SectionOption option : larger) {
            double peakC = peakC(cable, option, smallest.rating(), curve, share, heat);
            if (!Beyond.above(peakC, heat.limitC())) {
                return Optional.of(new Mend("Use " + Figures.three(option.sectionMm2()) + " mm2 for "
                        + context.names().shown(cable.id()) + ": it stays below " + Quantity.of(StrictMath.ceil(peakC), "degC")
                        + ".", List.of(new Mend.UseSection(cable.id(), option.sectionMm2()))));
            }
        }
        return Optional.empty();
    }

    /** The largest rating that would do behind the same kind of curve. */
    List<Mend> rating(int conductor, int protector, double share, ShortTransient heat) {
        Plan.Protector device = (Plan.Protector) context.plan().elements().get(protector);
        DeviceRatingRule.Smallest smallest = DeviceRatingRule.smallest(context, conductor);
        ConductorTemperature thermal = smallest == null ? null
                : Ratings.thermal(context.plan(), conductor, smallest.rating());
        if (thermal == null || device.curve() == null) {
            return List.of();
        }
        double best = 0;
        for (Plan.ProtectorOption option : device.options()) {
            CurvePair curve = CurvePair.of(option.ratingA(), device.curve())
                    .map(c -> c.at(Ambients.coldestOfDevice(context.plan(), device.device()))).orElse(null);
            boolean holds = curve != null && option.ratingA() < device.ratingA() && !Beyond.above(ShortPeak.ofC(thermal,
                    heat.startC(), curve, share, heat.smallestA(), heat.largestA()), heat.limitC());
            best = holds ? StrictMath.max(best, option.ratingA()) : best;
        }
        return best > 0 ? ProtectorMends.atMost(context, protector, best) : List.of();
    }

    private static double peakC(Plan.Cable cable, Plan.SectionOption option, ConductorRating present, CurvePair curve,
            double share, ShortTransient heat) {
        ConductorRating there = Ratings.of(cable, option.sectionMm2(), present.ambientC(), present.counted());
        if (!(there.atReferenceA() > 0) || !(there.maxC() > there.referenceC())) {
            return Double.POSITIVE_INFINITY;
        }
        ConductorTemperature thermal = new ConductorTemperature(option.r20MaxOhmPerM(), option.sectionMm2(), 0,
                there.atReferenceA(), there.referenceC(), there.maxC(), there.ambientC());
        return ShortPeak.ofC(thermal, heat.startC(), curve, share, heat.smallestA(), heat.largestA());
    }
}
