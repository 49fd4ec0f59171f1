// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

import java.util.List;

/**
 * One figure of all arrangements compared.
 *
 * @param key    key in files
 * @param words  words for people
 * @param unit   unit; {@code money} stands for the library's currency, {@code 1} for a number
 * @param better which way is better
 * @param values one for each arrangement; NaN where it is not known
 */
public record ComparedFigure(String key, String words, String unit, Better better, List<Double> values) {
    private static final double SAME = 1e-9;

    /** Which way a figure is better. */
    public enum Better { LOWER, HIGHER, NEITHER }

    public ComparedFigure {
        values = List.copyOf(values);
    }

    /** How much more an arrangement has than the first; NaN where either is not known. */
    public double difference(int arrangement) {
        return values.get(arrangement) - values.get(0);
    }

    /** The arrangement that is better than all others; -1 when there is none, or one is not known. */
    public int best() {
        if (better == Better.NEITHER || values.size() < 2 || values.stream().anyMatch(each -> each.isNaN())) {
            return -1;
        }
        int best = 0;
        boolean alone = true;
        for (int i = 1; i < values.size(); i++) {
            double ahead = (values.get(best) - values.get(i)) * (better == Better.LOWER ? 1 : -1);
            double noise = SAME * StrictMath.max(StrictMath.abs(values.get(best)), StrictMath.abs(values.get(i)));
            if (ahead > noise) {
                best = i;
                alone = true;
            } else if (ahead >= -noise) {
                alone = false;
            }
        }
        return alone ? best : -1;
    }
}
