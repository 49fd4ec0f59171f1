// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import org.loomwright.engine.assembly.Plan;

/** Straight distances in the vehicle, mm; NaN where a place is not known. */
final class PlaceDistance {
    private PlaceDistance() {
    }

    /** Between the nearest earth points of two bodies. */
    static double betweenBodies(Plan plan, int bodyA, int bodyB) {
        double nearest = Double.NaN;
        for (Plan.Terminal a : plan.terminals()) {
            for (Plan.Terminal b : plan.terminals()) {
                if (a.device() < 0 && b.device() < 0 && a.body() == bodyA && b.body() == bodyB) {
                    double mm = between(plan, a.place(), b.place());
                    nearest = Double.isNaN(nearest) || mm < nearest ? mm : nearest;
                }
            }
        }
        return nearest;
    }

    /** Between two places. */
    static double between(Plan plan, int placeA, int placeB) {
        if (placeA < 0 || placeB < 0) {
            return Double.NaN;
        }
        Plan.Place a = plan.places().get(placeA);
        Plan.Place b = plan.places().get(placeB);
        double x = a.xMm() - b.xMm();
        double y = a.yMm() - b.yMm();
        double z = a.zMm() - b.zMm();
        return StrictMath.sqrt(x * x + y * y + z * z);
    }
}
