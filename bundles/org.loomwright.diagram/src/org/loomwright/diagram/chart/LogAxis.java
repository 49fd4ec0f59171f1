// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A logarithmic axis.
 *
 * @param min   value at {@code minPx}, above 0
 * @param max   value at {@code maxPx}, above min
 * @param minPx position of min on the sheet, px
 * @param maxPx position of max on the sheet, px; may be below minPx
 */
public record LogAxis(double min, double max, double minPx, double maxPx) {
    public LogAxis {
        if (!(min > 0) || !(max > min)) {
            throw new IllegalArgumentException("a logarithmic axis needs 0 < min < max");
        }
    }

    /** Position of a value, also beyond the ends. */
    public double px(double value) {
        double share = StrictMath.log(value / min) / StrictMath.log(max / min);
        return minPx + share * (maxPx - minPx);
    }

    /** True when the value lies on the axis. */
    public boolean holds(double value) {
        return value >= min && value <= max;
    }

    /** The value, or the end nearest to it. */
    public double clamped(double value) {
        return StrictMath.max(min, StrictMath.min(max, value));
    }

    /** Powers of ten on the axis, rising. */
    public List<Double> decades() {
        return ticks(new int[] {1});
    }

    /** 1, 2, 5 of each decade on the axis, rising. */
    public List<Double> oneTwoFive() {
        return ticks(new int[] {1, 2, 5});
    }

    /** 1 to 9 of each decade on the axis, rising. */
    public List<Double> all() {
        return ticks(new int[] {1, 2, 3, 4, 5, 6, 7, 8, 9});
    }

    private List<Double> ticks(int[] steps) {
        List<Double> ticks = new ArrayList<>();
        int first = (int) StrictMath.floor(StrictMath.log10(min)) - 1;
        int last = (int) StrictMath.ceil(StrictMath.log10(max)) + 1;
        for (int decade = first; decade <= last; decade++) {
            for (int step : steps) {
                double value = Double.parseDouble(step + "e" + decade);
                if (holds(value)) {
                    ticks.add(value);
                }
            }
        }
        return ticks;
    }
}
