// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
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
    private final OpenItems open;
    private final GroupMemory groups;
    private final OptionRatings ratings;
    private final Map<SolvedCase, double[][]> hot = new IdentityHashMap<>();
    private final Map<SolvedCase, double[][]> shares = new IdentityHashMap<>();

    OptionHeat(Plan plan, OpenItems open, GroupMemory groups, OptionRatings ratings) {
        this.plan = plan;
        this.open = open;
        this.groups = groups;
        this.ratings = ratings;
    }

    private List<Plan.SectionOption> options(int conductor) {
        return open.cable(open.ofConductor(conductor)).options();
    }

    /** Rating of an open conductor with each section in a case; its current is NaN where there is none. */
    ConductorRating[] ratings(SolvedCase solved, int conductor) {
        int cable = plan.conductors().get(conductor).cable();
        return ratings.of(plan.cables().get(cable), cable, options(conductor), solved.ratings().get(conductor).ambientC(),
                groups.counted(solved, conductor));
    }

    /** Temperature with each section, degrees Celsius; that of the section at hand when ratings are not known. */
    double[] hotC(SolvedCase solved, int conductor) {
        double[][] ofCase = hot.computeIfAbsent(solved, s -> new double[plan.conductors().size()][]);
        if (ofCase[conductor] == null) {
            ofCase[conductor] = computeHotC(solved, conductor);
        }
        return ofCase[conductor];
    }

    private double[] computeHotC(SolvedCase solved, int conductor) {
        List<Plan.SectionOption> options = options(conductor);
        double[] hotC = new double[options.size()];
        double nowC = solved.running().conductorC(conductor);
        ConductorRating rating = solved.ratings().get(conductor);
        ConductorTemperature now = Ratings.thermal(plan, conductor, rating);
        if (Double.isNaN(nowC) || now == null) {
            Arrays.fill(hotC, nowC);
            return hotC;
        }
        double amps = nowC > rating.ambientC() ? now.currentA(StrictMath.min(nowC, FlowOptions.COPPER_MELTS_C)) : 0;
        ConductorRating[] with = ratings(solved, conductor);
        for (int o = 0; o < hotC.length; o++) {
            hotC[o] = hotC(with[o], options.get(o), amps);
        }
        return hotC;
    }

    private static double hotC(ConductorRating with, Plan.SectionOption option, double amps) {
        if (!(with.atReferenceA() > 0) || !(with.maxC() > with.referenceC())) {
            return Double.NaN;
        }
        return StrictMath.min(FlowOptions.COPPER_MELTS_C, new ConductorTemperature(option.r20MaxOhmPerM(), option.sectionMm2(), 0,
                with.atReferenceA(), with.referenceC(), with.maxC(), with.ambientC()).steadyC(amps));
    }

    /** Volts lost in the metal of a conductor with each section over those lost in it now. */
    double[] shares(SolvedCase solved, int conductor) {
        double[][] ofCase = shares.computeIfAbsent(solved, s -> new double[plan.conductors().size()][]);
        if (ofCase[conductor] == null) {
            List<Plan.SectionOption> options = options(conductor);
            double nowC = solved.running().conductorC(conductor);
            double nowOhm = plan.conductors().get(conductor).r20MaxOhmPerM();
            double[] thenC = hotC(solved, conductor);
            double[] share = new double[thenC.length];
            for (int o = 0; o < share.length; o++) {
                double warm = Double.isNaN(nowC) || Double.isNaN(thenC[o]) ? 1 : Copper.factor(thenC[o]) / Copper.factor(nowC);
                share[o] = options.get(o).r20MaxOhmPerM() / nowOhm * warm;
            }
            ofCase[conductor] = share;
        }
        return ofCase[conductor];
    }
}
