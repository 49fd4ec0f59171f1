// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;

/** Ratings of all conductors of a plan in one case. */
public final class Ratings {
    private Ratings() {
    }

    /**
     * The ratings for given counts.
     *
     * @param counts what is together with each conductor, see {@link GroupCount}
     * @return in the plan's order; a conductor whose table is missing or cannot be used has NaN as its table's rating, and
     * the reason in place of the source
     */
    public static List<ConductorRating> of(Plan plan, Plan.Case state, int[] counts) {
        List<ConductorRating> ratings = new ArrayList<>(plan.conductors().size());
        for (int i = 0; i < plan.conductors().size(); i++) {
            Plan.Conductor core = plan.conductors().get(i);
            ratings.add(of(plan.cables().get(core.cable()), core.sectionMm2(), ConductorAmbient.ambientC(plan, state, i),
                    counts[i]));
        }
        return ratings;
    }

    /** The rating of one section of a cable in an ambient, with so many together. */
    public static ConductorRating of(Plan.Cable cable, double sectionMm2, double ambientC, int together) {
        Plan.Ampacity table = cable.ampacity();
        double grouping = AmpacityTables.groupingFactor(cable.grouping(), together);
        if (table == null) {
            return new ConductorRating(Double.NaN, Double.NaN, cable.maxC(), ambientC, Double.NaN, together, grouping,
                    "no rating table for " + cable.part());
        }
        double maxC = Double.isNaN(cable.maxC()) ? table.maxC() : StrictMath.min(table.maxC(), cable.maxC());
        try {
            double tableA = AmpacityTables.ratedA(table, sectionMm2) * AmpacityTables.lowerClassFactor(table, cable.maxC());
            double factor = maxC > table.referenceC() ? AmpacityTables.ambientFactor(maxC, table.referenceC(), ambientC) : 0;
            return new ConductorRating(tableA, table.referenceC(), maxC, ambientC, factor, together, grouping,
                    source(cable, table, maxC));
        } catch (AmpacityTables.TableException e) {
            return new ConductorRating(Double.NaN, table.referenceC(), maxC, ambientC, Double.NaN, together, grouping,
                    e.getMessage());
        }
    }

    private static String source(Plan.Cable cable, Plan.Ampacity table, double maxC) {
        String source = table.table() + " (" + table.source() + ")";
        if (maxC < table.maxC()) {
            source += ", reduced to the cable's " + maxC + " degC";
        }
        return cable.grouping() == null ? source
                : source + "; " + cable.grouping().table() + " (" + cable.grouping().source() + ")";
    }

    /**
     * Which conductors count for grouping: those that carry more than the practice's {@code conductor.grouping-ignore} of
     * their own grouped rating; those without a rating when they carry any current.
     */
    public static boolean[] loaded(Plan plan, List<ConductorRating> ratings, double[] currentA) {
        double ignore = plan.practice().value("conductor.grouping-ignore");
        boolean[] loaded = new boolean[ratings.size()];
        for (int i = 0; i < loaded.length; i++) {
            double gradedA = ratings.get(i).correctedA();
            double amps = StrictMath.abs(currentA[i]);
            loaded[i] = Double.isNaN(gradedA) ? amps > 0 : amps > ignore * gradedA;
        }
        return loaded;
    }

    /** How a conductor of the plan warms in its case; null when its rating is not known or 0. */
    public static ConductorTemperature thermal(Plan plan, int conductor, ConductorRating rating) {
        double ratedA = rating.atReferenceA();
        Plan.Conductor core = plan.conductors().get(conductor);
        if (!(ratedA > 0) || !(rating.maxC() > rating.referenceC()) || !(core.sectionMm2() > 0) || !(core.r20MaxOhmPerM() > 0)) {
            return null;
        }
        return new ConductorTemperature(core.r20MaxOhmPerM(), core.sectionMm2(),
                insulationMm2(plan.cables().get(core.cable()), core.sectionMm2()), ratedA, rating.referenceC(), rating.maxC(),
                rating.ambientC());
    }

    /** Each core's share of what lies round the metal, mm2; 0 when the cable's diameter is not known. */
    private static double insulationMm2(Plan.Cable cable, double sectionMm2) {
        int cores = Math.max(1, cable.cores());
        double round = Math.PI / 4 * cable.outerDiameterMm() * cable.outerDiameterMm() / cores - sectionMm2;
        return round > 0 ? round : 0;
    }
}
