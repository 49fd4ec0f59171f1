// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.CurvePair;
import org.loomwright.engine.protection.Selectivity;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;

/** Ratings with which two devices in series are selective, where the conductors and loads permit one; same curves. */
final class SelectivityMends {
    private static final int HALVINGS = 40;
    private static final double LARGEST_TIMES = 100;
    private final CheckContext context;
    private final Plan plan;

    SelectivityMends(CheckContext context) {
        this.context = context;
        plan = context.plan();
    }

    List<Mend> of(Selectivity pair) {
        List<Mend> mends = new ArrayList<>();
        Plan.Protector up = (Plan.Protector) plan.elements().get(pair.upstream());
        Plan.Protector down = (Plan.Protector) plan.elements().get(pair.downstream());
        double permittedA = DeviceRatingRule.permittedA(context, pair.upstream());
        String upstream = context.names().shown(context.names().element(pair.upstream()));
        up.options().stream().filter(o -> o.ratingA() > up.ratingA() && !Beyond.above(o.ratingA(), permittedA)
                && holds(pair, o.ratingA(), down.ratingA())).min(Comparator.comparingDouble(Plan.ProtectorOption::ratingA))
                .filter(o -> up.way() != null)
                .ifPresent(o -> mends.add(new Mend("Fit " + o.part() + " (" + Figures.three(o.ratingA()) + " A) at " + upstream
                        + ": the conductors behind it permit " + Quantity.of(permittedA, "A") + ".",
                        List.of(new Mend.FitProtector(up.way(), o.part())))));
        double best = down.options().stream().mapToDouble(Plan.ProtectorOption::ratingA)
                .filter(ratingA -> ratingA < down.ratingA() && holds(pair, up.ratingA(), ratingA)).max().orElse(0);
        if (best > 0) {
            mends.addAll(ProtectorMends.atMost(context, pair.downstream(), best));
        }
        if (mends.isEmpty()) {
            double neededA = neededA(pair, up.ratingA(), down.ratingA());
            mends.add(Mend.inWords(Double.isInfinite(neededA) ? "No rating of the same kind at " + upstream + " is selective."
                    : "Selective would be " + Figures.three(StrictMath.ceil(neededA)) + " A and more at " + upstream
                            + ", of the same kind; " + (Double.isInfinite(permittedA) ? "it" : "the conductors behind it permit "
                                    + Quantity.of(permittedA, "A") + ", so they") + " would have to follow."));
        }
        return mends;
    }

    /** Smallest rating upstream that is selective, A; infinite when none up to a hundred times the present one is. */
    private double neededA(Selectivity pair, double upA, double downA) {
        double high = upA;
        while (!holds(pair, high, downA)) {
            high *= 2;
            if (high > LARGEST_TIMES * upA) {
                return Double.POSITIVE_INFINITY;
            }
        }
        double low = upA;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (holds(pair, middle, downA)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private boolean holds(Selectivity pair, double upA, double downA) {
        return holds(pair, upA, downA, true) && holds(pair, upA, downA, false);
    }

    private boolean holds(Selectivity pair, double upA, double downA, boolean hot) {
        CurvePair up = curve(pair.upstream(), upA, hot);
        CurvePair down = curve(pair.downstream(), downA, hot);
        return up != null && down != null && Selectivity.limitA(up, down, pair.share()) > pair.largestA();
    }

    private CurvePair curve(int element, double ratingA, boolean hot) {
        Plan.Protector device = (Plan.Protector) plan.elements().get(element);
        double ambientC = hot ? Ambients.hottestOfDevice(plan, device.device())
                : Ambients.coldestOfDevice(plan, device.device());
        return device.curve() == null ? null
                : CurvePair.of(ratingA, device.curve()).map(curve -> curve.at(ambientC)).orElse(null);
    }
}
