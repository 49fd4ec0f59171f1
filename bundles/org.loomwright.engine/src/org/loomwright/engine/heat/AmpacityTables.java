// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import java.util.List;
import org.loomwright.engine.assembly.Plan;

/** Reads published rating tables. */
public final class AmpacityTables {
    private AmpacityTables() {
    }

    /** A table that cannot be used, or not for this section; the message says why. */
    public static final class TableException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TableException(String message) {
            super(message);
        }
    }

    /**
     * Refuses a table that no real series of conductors could have.
     *
     * @throws TableException when a section or rating is not above 0, sections do not grow, or a rating falls while the
     * section grows
     */
    public static void check(Plan.Ampacity table) {
        List<Double> sections = table.sectionsMm2();
        if (sections.isEmpty() || sections.size() != table.amps().size()) {
            throw new TableException("rating table " + table.table() + " needs a rating for each of its sections, one at least");
        }
        for (int i = 0; i < sections.size(); i++) {
            if (!(sections.get(i) > 0) || !(table.amps().get(i) > 0)) {
                throw new TableException("rating table " + table.table() + ": sections and ratings must be above 0");
            }
            if (i > 0 && !(sections.get(i) > sections.get(i - 1))) {
                throw new TableException("rating table " + table.table() + ": sections must grow; " + sections.get(i)
                        + " mm2 follows " + sections.get(i - 1) + " mm2");
            }
            if (i > 0 && table.amps().get(i) < table.amps().get(i - 1)) {
                throw new TableException("rating table " + table.table() + ": the rating falls from " + table.amps().get(i - 1)
                        + " A at " + sections.get(i - 1) + " mm2 to " + table.amps().get(i) + " A at " + sections.get(i)
                        + " mm2");
            }
        }
        if (!(table.maxC() > table.referenceC())) {
            throw new TableException("rating table " + table.table()
                    + ": the conductor temperature must be above the reference ambient");
        }
    }

    /**
     * Rating of a section at the table's own ambient and conductor temperature, A: the published value, or between two of
     * them on a straight line in logarithms (ratings follow a power of the section; common practice).
     *
     * @throws TableException also for a section outside the table
     */
    public static double ratedA(Plan.Ampacity table, double sectionMm2) {
        check(table);
        List<Double> sections = table.sectionsMm2();
        int last = sections.size() - 1;
        if (!(sectionMm2 >= sections.get(0)) || !(sectionMm2 <= sections.get(last))) {
            throw new TableException("rating table " + table.table() + " has no " + sectionMm2 + " mm2; it goes from "
                    + sections.get(0) + " to " + sections.get(last) + " mm2");
        }
        int i = 0;
        while (sections.get(i) < sectionMm2) {
            i++;
        }
        if (sections.get(i) == sectionMm2) {
            return table.amps().get(i);
        }
        double share = StrictMath.log(sectionMm2 / sections.get(i - 1)) / StrictMath.log(sections.get(i) / sections.get(i - 1));
        double low = table.amps().get(i - 1);
        return low * StrictMath.exp(share * StrictMath.log(table.amps().get(i) / low));
    }

    /**
     * Factor for an ambient other than the reference: sqrt((Tmax - Ta) / (Tmax - Tref)), 0 at and above Tmax (the rule behind the
     * published ambient factors, 33 CFR 183.425 and cable makers' tables among them).
     */
    public static double ambientFactor(double maxC, double referenceC, double ambientC) {
        return ambientC >= maxC ? 0 : StrictMath.sqrt((maxC - ambientC) / (maxC - referenceC));
    }

    /**
     * Factor for a cable whose highest temperature is below the table's: the steady thermal equation at both temperatures,
     * sqrt((Tmax' - Tref) / (Tmax - Tref) x R(Tmax) / R(Tmax')); 1 when it is not below, 0 when it is not above the reference.
     */
    public static double lowerClassFactor(Plan.Ampacity table, double cableMaxC) {
        if (Double.isNaN(cableMaxC) || cableMaxC >= table.maxC()) {
            return 1;
        }
        double rise = (cableMaxC - table.referenceC()) / (table.maxC() - table.referenceC());
        return rise <= 0 ? 0 : StrictMath.sqrt(rise * Copper.factor(table.maxC()) / Copper.factor(cableMaxC));
    }

    /** Factor of a grouping table for so many together; the last one beyond its end; 1 without a table. */
    public static double groupingFactor(Plan.Grouping grouping, int together) {
        if (grouping == null || grouping.upTo().isEmpty()) {
            return 1;
        }
        for (int i = 0; i < grouping.upTo().size(); i++) {
            if (together <= grouping.upTo().get(i)) {
                return grouping.factors().get(i);
            }
        }
        return grouping.factors().get(grouping.factors().size() - 1);
    }
}
