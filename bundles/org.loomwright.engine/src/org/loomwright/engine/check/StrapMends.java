// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import java.util.Optional;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.DropBreakdown.Part;
import org.loomwright.engine.check.DropBreakdown.Share;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;

/** Proposes a second strap beside one that loses too much; resistance of a strap goes with its length over its section. */
final class StrapMends {
    private final Plan plan;
    private final ElementNames names;

    StrapMends(Plan plan, ElementNames names) {
        this.plan = plan;
        this.names = names;
    }

    /** A strap alike beside the one with the largest share, where that brings the drop to a limit, V. */
    Optional<Mend> forDrop(DropBreakdown parts, double limitV) {
        Share worst = null;
        for (Share share : parts.shares()) {
            if (share.part() == Part.BOND && (worst == null || share.volts() > worst.volts())) {
                worst = share;
            }
        }
        if (worst == null || parts.dropV() - worst.volts() / 2 > limitV) {
            return Optional.empty();
        }
        double dropV = parts.dropV() - worst.volts() / 2;
        return beside(plan.bonds().get(worst.index()), 1, "the drop becomes " + Quantity.of(dropV, "V") + ", permitted are "
                + Quantity.of(limitV, "V"));
    }

    /**
     * A strap beside a bond so that the bond's voltage, at the same current through both, falls to a limit.
     *
     * @param volts  voltage over the bond now, V
     * @param limitV voltage wanted, V
     */
    Optional<Mend> forVolts(Plan.Bond bond, double volts, double limitV) {
        double times = volts / limitV - 1;
        return beside(bond, times, "together they lose at most " + Quantity.of(limitV, "V"));
    }

    private Optional<Mend> beside(Plan.Bond bond, double times, String effect) {
        int bodyA = plan.terminals().get(bond.a()).body();
        int bodyB = plan.terminals().get(bond.b()).body();
        if (Double.isNaN(bond.sectionMm2()) || Double.isNaN(bond.lengthMm()) || bodyA < 0 || bodyB < 0) {
            return Optional.empty();
        }
        double sectionMm2 = StrictMath.max(1, StrictMath.ceil(bond.sectionMm2() * times));
        return Optional.of(new Mend("Fit another strap of at least " + Figures.three(sectionMm2) + " mm2 and at most "
                + Figures.three(bond.lengthMm()) + " mm beside " + names.shown(bond.id()) + ": " + effect + ".",
                List.of(new Mend.AddBond(plan.bodies().get(bodyA).id(), plan.bodies().get(bodyB).id(), sectionMm2,
                        bond.lengthMm()))));
    }
}
