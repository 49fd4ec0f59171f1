// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;

/** The length of a run as entered, or the straight distance between its places. */
final class RunLength {
    private RunLength() {
    }

    /** Length, mm. */
    static BigDecimal of(Run run) {
        if (run.getLengthMm() != null) {
            return run.getLengthMm();
        }
        Place from = run.getFrom();
        Place to = run.getTo();
        double x = distance(from.getXMm(), to.getXMm());
        double y = distance(from.getYMm(), to.getYMm());
        double z = distance(from.getZMm(), to.getZMm());
        return BigDecimal.valueOf(StrictMath.sqrt(x * x + y * y + z * z));
    }

    private static double distance(BigDecimal a, BigDecimal b) {
        return a == null || b == null ? 0 : b.subtract(a).doubleValue();
    }
}
