// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The gates of one time-current curve, over multiples of the rated current. */
final class Gates {
    /** A multiple this little below a gate, relative to it, is at the gate: what rounding makes of it. */
    private static final double SAME = 1e-12;

    private final double[] times;
    private final double[] seconds;

    private Gates(double[] times, double[] seconds) {
        this.times = times;
        this.seconds = seconds;
    }

    /** Gates in any order; of two at the same multiple the shorter time counts above it, the longer one below. */
    static Gates of(List<Double> times, List<Double> seconds) {
        List<double[]> gates = new ArrayList<>();
        for (int i = 0; i < Math.min(times.size(), seconds.size()); i++) {
            if (!(times.get(i) > 0) || !(seconds.get(i) > 0)) {
                throw new IllegalArgumentException("a gate needs a current and a time above 0; got " + times.get(i) + " x and "
                        + seconds.get(i) + " s");
            }
            gates.add(new double[] {times.get(i), seconds.get(i)});
        }
        gates.sort(Comparator.<double[]>comparingDouble(gate -> gate[0]).thenComparing(gate -> -gate[1]));
        return new Gates(gates.stream().mapToDouble(gate -> gate[0]).toArray(),
                gates.stream().mapToDouble(gate -> gate[1]).toArray());
    }

    double first() {
        return times[0];
    }

    double[] times() {
        return times.clone();
    }

    double seconds(double multiple) {
        int last = times.length - 1;
        if (!(multiple >= times[0] * (1 - SAME))) {
            return Double.POSITIVE_INFINITY;
        }
        if (multiple >= times[last]) {
            double ratio = times[last] / multiple;
            return seconds[last] * ratio * ratio;
        }
        if (multiple <= times[0]) {
            return seconds[0];
        }
        int i = 0;
        while (times[i + 1] <= multiple) {
            i++;
        }
        double share = StrictMath.log(multiple / times[i]) / StrictMath.log(times[i + 1] / times[i]);
        return seconds[i] * StrictMath.exp(share * StrictMath.log(seconds[i + 1] / seconds[i]));
    }

    /** Smallest multiple at which the time is not longer than this. */
    double current(double within) {
        int last = times.length - 1;
        if (!(within > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        if (seconds[0] <= within) {
            return times[0];
        }
        for (int i = 1; i <= last; i++) {
            if (seconds[i] <= within) {
                double share = StrictMath.log(within / seconds[i - 1]) / StrictMath.log(seconds[i] / seconds[i - 1]);
                return times[i - 1] * StrictMath.exp(share * StrictMath.log(times[i] / times[i - 1]));
            }
        }
        return times[last] * StrictMath.sqrt(seconds[last] / within);
    }
}
