// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.Comparator;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Mend;

/** Proposes another rating for a protective device. */
final class ProtectorMends {
    private ProtectorMends() {
    }

    /**
     * A rating of at least so many amperes, unless the conductors below do not permit one.
     *
     * @param ratingA smallest rating that would do, A
     */
    static List<Mend> atLeast(CheckContext context, int protector, double ratingA) {
        Plan.Protector device = (Plan.Protector) context.plan().elements().get(protector);
        double permittedA = DeviceRatingRule.permittedA(context, protector);
        String name = context.names().shown(context.names().element(protector));
        Plan.ProtectorOption option = device.options().stream().filter(o -> !Beyond.below(o.ratingA(), ratingA))
                .min(Comparator.comparingDouble(Plan.ProtectorOption::ratingA)).orElse(null);
        if (Beyond.above(option == null ? ratingA : option.ratingA(), permittedA)) {
            return List.of(Mend.inWords("Part the loads over two ways, or fit at least " + Figures.three(ratingA) + " A at "
                    + name
                    + " and thicker conductors behind it: those there permit " + Figures.three(permittedA) + " A."));
        }
        if (option != null && device.way() != null) {
            return List.of(fit(device, option, name, "its loads need at least " + Figures.three(ratingA)
                    + " A, and the conductors behind it permit it"));
        }
        return List.of(Mend.inWords("Fit at least " + Figures.three(ratingA) + " A at " + name
                + (Double.isInfinite(permittedA) ? "." : " and at most " + Figures.three(permittedA) + " A.")));
    }

    /**
     * A rating of at most so many amperes, where the loads leave room for one.
     *
     * @param ratingA largest rating that would do, A
     */
    static List<Mend> atMost(CheckContext context, int protector, double ratingA) {
        Plan.Protector device = (Plan.Protector) context.plan().elements().get(protector);
        String name = context.names().shown(context.names().element(protector));
        double neededA = neededA(context, protector, device);
        if (Beyond.above(neededA, ratingA)) {
            return List.of();
        }
        Plan.ProtectorOption option = device.options().stream()
                .filter(o -> !Beyond.above(o.ratingA(), ratingA) && !Beyond.below(o.ratingA(), neededA))
                .max(Comparator.comparingDouble(Plan.ProtectorOption::ratingA)).orElse(null);
        if (option != null && device.way() != null) {
            return List.of(fit(device, option, name, "its loads need at least " + Figures.three(neededA) + " A"));
        }
        return device.options().isEmpty() ? List.of(Mend.inWords("Fit at most " + Figures.three(ratingA) + " A at " + name
                + "; its loads need at least " + Figures.three(neededA) + " A.")) : List.of();
    }

    /** Rating that its loads need without ageing it, over all settled cases but cranking, A. */
    private static double neededA(CheckContext context, int protector, Plan.Protector device) {
        ProtectorLoad load = new ProtectorLoad(context, protector, device);
        double neededA = 0;
        for (SolvedCase solved : context.settled()) {
            if (!"cranking".equals(solved.state().kind())) {
                neededA = StrictMath.max(neededA, load.heatingA(solved) / load.ambientFactor(solved)
                        / context.practice().value("device-loading.warning"));
            }
        }
        return neededA;
    }

    private static Mend fit(Plan.Protector device, Plan.ProtectorOption option, String name, String why) {
        return new Mend("Fit " + option.part() + " (" + Figures.three(option.ratingA()) + " A) at " + name + ": " + why + ".",
                List.of(new Mend.FitProtector(device.way(), option.part())));
    }
}
