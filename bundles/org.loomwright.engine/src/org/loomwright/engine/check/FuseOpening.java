// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.loomwright.engine.assembly.Plan;

/** Whether a protective device may open at a current within a time, by its fastest curve, log-log between its points. */
final class FuseOpening {
    private FuseOpening() {
    }

    /** True when a device may open; without a curve, when the current is above its rating. Above the curve I2t is constant. */
    static boolean mayOpen(Plan.Protector protector, double amps, double seconds) {
        double times = amps / protector.ratingA();
        Plan.FuseCurve curve = protector.curve();
        if (curve == null || curve.fastestTimes().isEmpty()) {
            return Beyond.above(times, 1);
        }
        List<Double> at = curve.fastestTimes();
        List<Double> opens = curve.fastestSeconds();
        int last = at.size() - 1;
        if (times < at.get(0)) {
            return false;
        }
        int i = 1;
        while (i < last && at.get(i) < times) {
            i++;
        }
        double slope = last == 0 || times > at.get(last) ? -2
                : StrictMath.log(opens.get(i) / opens.get(i - 1)) / StrictMath.log(at.get(i) / at.get(i - 1));
        int from = times > at.get(last) ? last : last == 0 ? 0 : i - 1;
        double opensS = opens.get(from) * StrictMath.exp(slope * StrictMath.log(times / at.get(from)));
        return opensS < seconds;
    }
}
