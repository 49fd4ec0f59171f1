// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Mend;

/** Proposes another rating for a protective device. */
final class ProtectorMends {
    private ProtectorMends() {
    }

    /** A rating of at least so many amperes, unless the conductors below do not permit one. */
    static List<Mend> atLeast(CheckContext context, int protector, double ratingA) {
        double permittedA = DeviceRatingRule.permittedA(context, protector);
        String name = context.names().shown(context.names().element(protector));
        List<Mend> mends = new ArrayList<>();
        if (permittedA >= ratingA) {
            mends.add(Mend.inWords("Fit at least " + Figures.three(ratingA) + " A and at most " + Figures.three(permittedA)
                    + " A at " + name + "; the conductors behind it permit that."));
        } else {
            mends.add(Mend.inWords("Part the loads over two ways, or fit at least " + Figures.three(ratingA) + " A at " + name
                    + " and thicker conductors behind it: those there permit " + Figures.three(permittedA) + " A."));
        }
        return mends;
    }

    /** A rating of at most so many amperes, where the loads leave room for one. */
    static List<Mend> atMost(CheckContext context, int protector, double ratingA) {
        Plan.Protector device = (Plan.Protector) context.plan().elements().get(protector);
        ProtectorLoad load = new ProtectorLoad(context, protector, device);
        double neededA = 0;
        for (SolvedCase solved : context.settled()) {
            if (!"cranking".equals(solved.state().kind())) {
                neededA = StrictMath.max(neededA, load.heatingA(solved) / load.ambientFactor(solved)
                        / context.practice().value("device-loading.warning"));
            }
        }
        return neededA > ratingA ? List.of()
                : List.of(Mend.inWords("Fit at most " + Figures.three(ratingA) + " A at "
                        + context.names().shown(context.names().element(protector)) + "; its loads need at least "
                        + Figures.three(neededA) + " A."));
    }
}
