// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

/**
 * A sum over parts, some of which may not state their figure.
 *
 * @param known   sum of the figures stated
 * @param unknown number of parts that state none
 */
public record Tally(double known, int unknown) {
    /** Nothing yet. */
    public static final Tally ZERO = new Tally(0, 0);

    /** The sum with one figure more; NaN counts as not stated. */
    public Tally with(double figure) {
        return Double.isNaN(figure) ? new Tally(known, unknown + 1) : new Tally(known + figure, unknown);
    }

    /** Both sums together. */
    public Tally with(Tally other) {
        return new Tally(known + other.known, unknown + other.unknown);
    }

    /** True when every part states its figure. */
    public boolean complete() {
        return unknown == 0;
    }
}
