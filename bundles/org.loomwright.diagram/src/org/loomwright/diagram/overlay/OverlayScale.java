// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.overlay;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.MapTone;

/**
 * The scale of an overlay, from its low end to its high end.
 *
 * @param kind   what is shown
 * @param from   value at the low end, in the kind's unit
 * @param to     value at the high end, above from
 * @param step   distance of the ticks
 * @param limits values that must not be exceeded, for the notches of the legend; those beyond the scale are not shown
 */
public record OverlayScale(OverlayKind kind, double from, double to, double step, List<Double> limits) {
    private static final int TICKS = 5;

    public OverlayScale {
        limits = List.copyOf(limits);
        if (!(to > from) || !(step > 0)) {
            throw new IllegalArgumentException("an overlay's scale runs from a lower to a higher value");
        }
    }

    /**
     * A scale with round ticks from 0 that holds the largest value and the limits.
     *
     * @param largest largest value shown, at least 0
     */
    public static OverlayScale upTo(OverlayKind kind, double largest, List<Double> limits) {
        double most = largest;
        for (double limit : limits) {
            most = StrictMath.max(most, limit);
        }
        double step = round(StrictMath.max(most, 1e-6) / TICKS);
        return new OverlayScale(kind, 0, step * StrictMath.max(1, StrictMath.ceil(most / step - 1e-9)), step, limits);
    }

    /** The next of 1, 2, 5 times a power of ten. */
    private static double round(double value) {
        double power = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(value)));
        for (double digit : new double[] {1, 2, 5}) {
            if (value <= digit * power * (1 + 1e-9)) {
                return digit * power;
            }
        }
        return 10 * power;
    }

    /** Values at the ticks, both ends included. */
    public List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        for (int i = 0; from + i * step <= to + step * 1e-6; i++) {
            ticks.add(from + i * step);
        }
        return ticks;
    }

    /** Place of a value on the scale, 0 to 1. */
    public double position(double value) {
        return StrictMath.min(1, StrictMath.max(0, (value - from) / (to - from)));
    }

    /** Colour of a value. */
    public MapTone tone(double value) {
        return new MapTone(position(value));
    }
}
