// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.earth.LossCase.LostLoad;
import org.loomwright.engine.flow.OperatingPoint;

/** Which loads and charging sources no longer do what they did. */
final class LossFunctions {
    static final String DROP = "drop-class.other";

    private final Plan plan;

    LossFunctions(Plan plan) {
        this.plan = plan;
    }

    /**
     * Loads that are on and were supplied, and now get less than their part bears, or, where it states nothing, lose more than
     * the share of voltage that the practice permits as drop. Without an operating point after the loss the voltage is not known.
     */
    List<LostLoad> loads(SolvedCase solved, EarthNetwork after) {
        SolvedCase.Solved before = solved.running();
        List<LostLoad> lost = new ArrayList<>();
        boolean[] trouble = troubled(after);
        boolean settled = after.solved().point().status() == OperatingPoint.Status.SOLVED;
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Demand load && before.at().elementItem()[e] >= 0) {
                double had = before.voltage(load.a(), load.b());
                double has = after.solved().voltage(load.a(), load.b());
                boolean supplied = before.point().on()[before.at().elementItem()[e]] && had > 0 && !(had < load.minV());
                double least = Double.isNaN(load.minV()) ? had * (1 - plan.practice().value(DROP)) : load.minV();
                if (supplied && (!(has >= least) || trouble[e])) {
                    lost.add(new LostLoad(e, had, settled ? has : Double.NaN));
                }
            }
        }
        return lost;
    }

    private boolean[] troubled(EarthNetwork after) {
        boolean[] trouble = new boolean[plan.elements().size()];
        if (after.solved().point().status() != OperatingPoint.Status.SOLVED) {
            for (int item : after.solved().point().trouble()) {
                NetworkIndex.Owner owner = after.index().owner(item);
                if (owner != null && owner.kind() == NetworkIndex.Kind.ELEMENT) {
                    trouble[owner.index()] = true;
                }
            }
        }
        return trouble;
    }

    /** Regulated sources that delivered and no longer do. */
    List<Integer> sources(SolvedCase solved, EarthNetwork after) {
        List<Integer> lost = new ArrayList<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Regulated && delivers(solved.running(), e)
                    && !delivers(after.solved(), e)) {
                lost.add(e);
            }
        }
        return lost;
    }

    private static boolean delivers(SolvedCase.Solved solved, int element) {
        int item = solved.at().elementItem()[element];
        return item >= 0 && solved.point().on()[item];
    }
}
