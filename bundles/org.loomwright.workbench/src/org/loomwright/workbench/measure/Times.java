// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.measure;

import java.util.Arrays;

/** Measured times. */
final class Times {
    private static final double NS_PER_MS = 1e6;
    private long[] ns = new long[64];
    private int count;

    void add(long tookNs) {
        if (count == ns.length) {
            ns = Arrays.copyOf(ns, 2 * count);
        }
        ns[count++] = tookNs;
    }

    int count() {
        return count;
    }

    /** The time that so much of all measured does not exceed, ms; 1 gives the longest, 0.5 the median. */
    double ms(double share) {
        if (count == 0) {
            throw new IllegalStateException("nothing was measured");
        }
        long[] sorted = Arrays.copyOf(ns, count);
        Arrays.sort(sorted);
        int at = (int) StrictMath.ceil(share * count) - 1;
        return sorted[StrictMath.max(0, at)] / NS_PER_MS;
    }
}
