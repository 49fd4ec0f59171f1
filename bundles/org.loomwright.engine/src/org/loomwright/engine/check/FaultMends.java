// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.CurvePair;
import org.loomwright.engine.protection.Fault;
import org.loomwright.engine.protection.FaultBranch;
import org.loomwright.engine.protection.LoopShare;
import org.loomwright.engine.protection.UnclearedFault;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;

/**
 * What makes a fault clear: a strap beside the one that is in its way, a smaller rating, a thicker conductor. The current is
 * taken to follow the loop's resistance as a whole.
 */
final class FaultMends {
    /** Resistivity of annealed copper at 20 degrees Celsius, ohm mm2/m (IEC 60028). */
    private static final double COPPER_OHM_MM2_PER_M = 0.017241;

    private final CheckContext context;
    private final Plan plan;

    FaultMends(CheckContext context) {
        this.context = context;
        plan = context.plan();
    }

    List<Mend> of(UnclearedFault each) {
        List<Mend> mends = new ArrayList<>();
        structure(each).ifPresent(mends::add);
        mends.addAll(rating(each));
        section(each).ifPresent(mends::add);
        return mends;
    }

    /** Loop resistance at which the device would clear in time, ohm. */
    private static double neededOhm(UnclearedFault each) {
        return each.fault().loopOhm() * each.fault().throughA() / each.neededA();
    }

    private Optional<Mend> structure(UnclearedFault each) {
        LoopShare culprit = each.culprit();
        if (culprit == null || !culprit.branch().kind().structure()) {
            return Optional.empty();
        }
        FaultBranch branch = culprit.branch();
        double mayKeepOhm = branch.ohm() - (each.fault().loopOhm() - neededOhm(each));
        String words = ProtectionReasons.words(context, branch);
        if (!(mayKeepOhm > 0)) {
            return Optional.of(Mend.inWords("Make good " + words + " (" + Quantity.of(1000 * branch.ohm(), "mohm")
                    + "); alone that is not enough."));
        }
        String enough = "Make good " + words + ": with at most " + Quantity.of(1000 * mayKeepOhm, "mohm") + " there the fault"
                + " gives the " + Quantity.of(each.neededA(), "A") + " needed.";
        if (branch.kind() != FaultBranch.Kind.BOND) {
            return Optional.of(Mend.inWords(enough));
        }
        Plan.Bond bond = plan.bonds().get(branch.index());
        double besideOhm = branch.ohm() * mayKeepOhm / (branch.ohm() - mayKeepOhm)
                - 2 * plan.practice().value("joint.bolted-bond") / 1000;
        double sectionMm2 = StrictMath.ceil(plan.practice().value("strap.lay") * COPPER_OHM_MM2_PER_M
                * bond.lengthMm() / 1000 / besideOhm);
        int a = plan.terminals().get(bond.a()).body();
        int b = plan.terminals().get(bond.b()).body();
        if (!(sectionMm2 > 0) || a < 0 || b < 0) {
            return Optional.of(Mend.inWords(enough));
        }
        return Optional.of(new Mend(enough + " Or fit another strap of at least " + Figures.three(sectionMm2)
                + " mm2 and at most " + Figures.three(bond.lengthMm()) + " mm beside it.", List.of(new Mend.AddBond(
                        plan.bodies().get(a).id(), plan.bodies().get(b).id(), sectionMm2, bond.lengthMm()))));
    }

    private List<Mend> rating(UnclearedFault each) {
        Plan.Protector device = (Plan.Protector) plan.elements().get(each.protector());
        if (device.curve() == null) {
            return List.of();
        }
        double ambientC = Ambients.coldestOfDevice(plan, device.device());
        double best = device.options().stream().mapToDouble(Plan.ProtectorOption::ratingA)
                .filter(ratingA -> ratingA > 0 && ratingA < device.ratingA()
                        && CurvePair.of(ratingA, device.curve()).filter(curve -> curve.at(ambientC)
                                .slowestS(each.fault().throughA()) <= each.limitS()).isPresent())
                .max().orElse(0);
        return best > 0 ? ProtectorMends.atMost(context, each.protector(), best) : List.of();
    }

    /** The next section of the conductor itself with which the loop is low enough. */
    private Optional<Mend> section(UnclearedFault each) {
        Fault fault = each.fault();
        Plan.Conductor core = plan.conductors().get(fault.conductor());
        Plan.Cable cable = plan.cables().get(core.cable());
        LoopShare own = each.shares().stream().filter(share -> share.branch().kind() == FaultBranch.Kind.CONDUCTOR
                && share.branch().index() == fault.conductor()).findFirst().orElse(null);
        if (own == null || cable.existing()) {
            return Optional.empty();
        }
        double metalOhm = own.branch().ohm() - core.jointsOhm();
        return cable.options().stream().filter(option -> option.sectionMm2() > core.sectionMm2())
                .sorted(Comparator.comparingDouble(Plan.SectionOption::sectionMm2))
                .filter(option -> fault.loopOhm() - metalOhm * (1 - option.r20MaxOhmPerM() / core.r20MaxOhmPerM())
                        <= neededOhm(each))
                .findFirst().map(option -> new Mend("Use " + Figures.three(option.sectionMm2()) + " mm2 for "
                        + context.names().shown(cable.id()) + ": the fault then gives "
                        + Quantity.of(fault.throughA() * fault.loopOhm() / (fault.loopOhm()
                                - metalOhm * (1 - option.r20MaxOhmPerM() / core.r20MaxOhmPerM())), "A") + ".",
                        List.of(new Mend.UseSection(cable.id(), option.sectionMm2()))));
    }
}
