// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

/**
 * The current rating of one conductor in one case.
 *
 * @param tableA         rating of the published table at its reference ambient, A; NaN when there is none
 * @param referenceC     ambient of the table, degrees Celsius
 * @param maxC           conductor temperature of the table, or the cable's highest where that is lower, degrees Celsius
 * @param ambientC       ambient in the case, degrees Celsius
 * @param ambientFactor  sqrt((Tmax - Ta) / (Tmax - Tref)), 0 when the ambient is above Tmax
 * @param counted        circuits or conductors counted together, itself included
 * @param groupingFactor factor of the grouping table
 * @param source         table and source, for derivations
 */
public record ConductorRating(double tableA, double referenceC, double maxC, double ambientC, double ambientFactor,
        int counted, double groupingFactor, String source) {

    /** The same conductor with another number together. */
    ConductorRating grouped(int together, double factor) {
        return new ConductorRating(tableA, referenceC, maxC, ambientC, ambientFactor, together, factor, source);
    }

    /** Rating at the table's reference ambient with grouping, A: what the thermal equation takes as Iz. */
    public double atReferenceA() {
        return tableA * groupingFactor;
    }

    /** Rating in this case, ambient and grouping included, A. */
    public double correctedA() {
        return tableA * groupingFactor * ambientFactor;
    }
}
