// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import org.loomwright.engine.assembly.Plan;

/** Where terminals are. */
final class TerminalPlaces {
    private final Plan plan;

    TerminalPlaces(Plan plan) {
        this.plan = plan;
    }

    /** Straight distance of two terminals, mm; 0 on one device, infinite where a place is not known. */
    double distanceMm(int a, int b) {
        int deviceA = plan.terminals().get(a).device();
        if (a == b || deviceA >= 0 && deviceA == plan.terminals().get(b).device()) {
            return 0;
        }
        double[] at = position(a);
        double[] other = position(b);
        if (at == null || other == null) {
            return Double.POSITIVE_INFINITY;
        }
        double square = 0;
        for (int k = 0; k < 3; k++) {
            square += (at[k] - other[k]) * (at[k] - other[k]);
        }
        return StrictMath.sqrt(square);
    }

    /** Whether a run begins or ends at the place of a terminal. */
    boolean touches(Plan.Run run, int terminal) {
        Plan.Terminal at = plan.terminals().get(terminal);
        int place = at.device() < 0 ? at.place() : plan.devices().get(at.device()).place();
        return place >= 0 && (run.from() == place || run.to() == place);
    }

    private double[] position(int terminal) {
        Plan.Terminal at = plan.terminals().get(terminal);
        if (at.device() < 0) {
            return at.place() < 0 ? null : ofPlace(at.place());
        }
        int device = at.device();
        for (int hops = 0; device >= 0 && hops <= plan.devices().size(); hops++) {
            Plan.Device here = plan.devices().get(device);
            if (here.place() >= 0) {
                return ofPlace(here.place());
            } else if (here.run() >= 0) {
                return onRun(plan.runs().get(here.run()), here.atMm());
            }
            device = here.mountedIn();
        }
        return null;
    }

    private double[] onRun(Plan.Run run, double atMm) {
        double share = run.lengthMm() > 0 && atMm >= 0 ? StrictMath.min(1, atMm / run.lengthMm()) : 0.5;
        double[] from = ofPlace(run.from());
        double[] to = ofPlace(run.to());
        for (int k = 0; k < 3; k++) {
            from[k] += share * (to[k] - from[k]);
        }
        return from;
    }

    private double[] ofPlace(int place) {
        Plan.Place at = plan.places().get(place);
        return new double[] {at.xMm(), at.yMm(), at.zMm()};
    }
}
