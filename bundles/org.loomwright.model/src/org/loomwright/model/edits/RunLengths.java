// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;

/** Lengths of runs. */
public final class RunLengths {
    private RunLengths() {
    }

    /** Stated length, else the straight distance, mm; NaN when neither is known. */
    public static double mm(Run run) {
        return run.getLengthMm() != null ? run.getLengthMm().doubleValue() : straightMm(run.getFrom(), run.getTo());
    }

    /** Straight distance of two places, mm; NaN when one has no position. */
    public static double straightMm(Place a, Place b) {
        if (a == null || b == null || a.getXMm() == null || a.getYMm() == null || a.getZMm() == null || b.getXMm() == null
                || b.getYMm() == null || b.getZMm() == null) {
            return Double.NaN;
        }
        double dx = apart(a.getXMm(), b.getXMm());
        double dy = apart(a.getYMm(), b.getYMm());
        double dz = apart(a.getZMm(), b.getZMm());
        return StrictMath.sqrt(dx * dx + dy * dy + dz * dz);
    }

    private static double apart(BigDecimal a, BigDecimal b) {
        return a.doubleValue() - b.doubleValue();
    }
}
