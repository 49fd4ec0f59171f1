// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.HashMap;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.heat.Copper;
import org.loomwright.engine.heat.Ratings;

/**
 * How warm a conductor would be with another section at the same current. A load with a duty is taken as the steady current
 * that gives the same temperature; that is exact for the section at hand.
 */
final class OptionHeat {
    private final Plan plan;
    private final GroupMemory groups;
    private final Map<Asked, ConductorRating> known = new HashMap<>();

    /** What a rating depends on. */
    private record Asked(int cable, double sectionMm2, double ambientC, int counted) {
    }

    OptionHeat(Plan plan, GroupMemory groups) {
        this.plan = plan;
        this.groups = groups;
    }

    /** Rating of a conductor with a section in a case, A; NaN when there is none. */
    double ratedA(SolvedCase solved, int conductor, Plan.SectionOption option) {
        return rating(solved, conductor, option).correctedA();
    }

    private ConductorRating rating(SolvedCase solved, int conductor, Plan.SectionOption option) {
        ConductorRating now = solved.ratings().get(conductor);
        int cable = plan.conductors().get(conductor).cable();
        int counted = groups.counted(solved, conductor);
        return known.computeIfAbsent(new Asked(cable, option.sectionMm2(), now.ambientC(), counted),
                asked -> Ratings.of(plan.cables().get(cable), option.sectionMm2(), now.ambientC(), counted));
    }

    /** Temperature with a section, degrees Celsius; that of the section at hand when ratings are not known. */
    double hotC(SolvedCase solved, int conductor, Plan.SectionOption option) {
        double nowC = solved.running().conductorC(conductor);
        ConductorRating rating = solved.ratings().get(conductor);
        ConductorTemperature now = Ratings.thermal(plan, conductor, rating);
        if (Double.isNaN(nowC) || now == null) {
            return nowC;
        }
        ConductorRating with = rating(solved, conductor, option);
        if (!(with.atReferenceA() > 0) || !(with.maxC() > with.referenceC())) {
            return Double.NaN;
        }
        double amps = nowC > rating.ambientC() ? now.currentA(StrictMath.min(nowC, FlowOptions.COPPER_MELTS_C)) : 0;
        double hotC = new ConductorTemperature(option.r20MaxOhmPerM(), option.sectionMm2(), 0, with.atReferenceA(),
                with.referenceC(), with.maxC(), with.ambientC()).steadyC(amps);
        return StrictMath.min(hotC, FlowOptions.COPPER_MELTS_C);
    }

    /** Volts lost in the metal of a conductor with a section over those lost in it now. */
    double share(SolvedCase solved, int conductor, Plan.SectionOption option) {
        double nowC = solved.running().conductorC(conductor);
        double thenC = hotC(solved, conductor, option);
        double warm = Double.isNaN(nowC) || Double.isNaN(thenC) ? 1 : Copper.factor(thenC) / Copper.factor(nowC);
        return option.r20MaxOhmPerM() / plan.conductors().get(conductor).r20MaxOhmPerM() * warm;
    }
}
