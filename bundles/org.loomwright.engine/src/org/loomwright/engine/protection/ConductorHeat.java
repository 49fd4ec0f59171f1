// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.heat.Adiabatic;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.heat.Ratings;

/**
 * How one conductor is loaded, rated and warmed, at its worst over the cases.
 *
 * @param conductor   index in the plan
 * @param startC      highest temperature before a fault: of all cases with an operating point, steady or peak of the cycle;
 *                    the hottest ambient without any; degrees Celsius
 * @param startCase   case it belongs to; null without any
 * @param rating      smallest corrected rating over the cases; null without a case
 * @param izA         smallest corrected rating of the conductor, A; NaN when not known
 * @param groupIzA    the same of all cores in parallel with it together, A
 * @param hottest     the thermal equation in the hottest ambient of the cases; null when the rating is not known
 * @param sectionMm2  section, mm2
 * @param limitC      short-time limit of the cable, degrees Celsius; NaN when not stated
 */
record ConductorHeat(int conductor, double startC, String startCase, ConductorRating rating, double izA, double groupIzA,
        ConductorTemperature hottest, double sectionMm2, double limitC) {

    static ConductorHeat of(Plan plan, List<SolvedCase> cases, int conductor) {
        Plan.Conductor core = plan.conductors().get(conductor);
        double startC = Double.NaN;
        String startCase = null;
        ConductorRating rating = null;
        ConductorTemperature hottest = null;
        double groupIzA = Double.NaN;
        for (SolvedCase solved : cases) {
            ConductorRating here = solved.ratings().get(conductor);
            double hotC = solved.running().conductorC(conductor);
            hotC = Double.isNaN(hotC) ? here.ambientC() : hotC;
            if (Double.isNaN(startC) || hotC > startC) {
                startC = hotC;
                startCase = solved.state().name();
            }
            if (!Double.isNaN(here.correctedA()) && (rating == null || here.correctedA() < rating.correctedA())) {
                rating = here;
            }
            double groupA = groupA(plan, solved, core, here);
            groupIzA = Double.isNaN(groupIzA) || groupA < groupIzA ? groupA : groupIzA;
            ConductorTemperature thermal = Ratings.thermal(plan, conductor, here);
            if (thermal != null && (hottest == null || thermal.ambientC() > hottest.ambientC())) {
                hottest = thermal;
            }
        }
        Plan.Cable cable = plan.cables().get(core.cable());
        if (Double.isNaN(startC)) {
            startC = cable.zone() < 0 ? plan.practice().value("state.outside-hot") : plan.zones().get(cable.zone()).ambientMaxC();
        }
        return new ConductorHeat(conductor, startC, startCase, rating, rating == null ? Double.NaN : rating.correctedA(),
                groupIzA, hottest, core.sectionMm2(), cable.shortTimeMaxC());
    }

    private static double groupA(Plan plan, SolvedCase solved, Plan.Conductor core, ConductorRating own) {
        if (core.parallelGroup() == null) {
            return own.correctedA();
        }
        double sum = 0;
        for (int c = 0; c < plan.conductors().size(); c++) {
            Plan.Conductor other = plan.conductors().get(c);
            boolean sameEnds = other.a() == core.a() && other.b() == core.b() || other.a() == core.b() && other.b() == core.a();
            if (sameEnds && core.parallelGroup().equals(other.parallelGroup())) {
                sum += solved.ratings().get(c).correctedA();
            }
        }
        return sum;
    }

    /** Temperature after so many seconds at a current from the start, at most that of melting copper, degrees Celsius. */
    double afterC(double currentA, double seconds) {
        return afterC(startC, currentA, seconds);
    }

    /** The same from another temperature. */
    double afterC(double fromC, double currentA, double seconds) {
        double hotC;
        if (currentA == 0) {
            return fromC;
        } else if (hottest == null) {
            hotC = adiabaticC(fromC, currentA * currentA * seconds);
        } else {
            hotC = Double.isInfinite(seconds) ? StrictMath.max(fromC, hottest.steadyC(currentA))
                    : hottest.afterC(fromC, currentA, seconds);
        }
        return hotC < FlowOptions.COPPER_MELTS_C ? hotC : FlowOptions.COPPER_MELTS_C;
    }

    /** Temperature that an integral of squared current would give without any loss of heat, degrees Celsius (IEC 60949). */
    double adiabaticC(double fromC, double a2s) {
        double k = 226 * sectionMm2;
        return (234.5 + fromC) * StrictMath.exp(a2s / (k * k)) - 234.5;
    }

    /** Factor k from the start to the short-time limit. */
    double k() {
        return Adiabatic.k(startC, limitC);
    }
}
