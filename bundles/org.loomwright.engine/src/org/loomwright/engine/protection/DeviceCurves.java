// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import org.loomwright.engine.assembly.Plan;

/** Curves of all protective devices of a plan at the ends of their ambient, by element; null where none are stated. */
public final class DeviceCurves {
    private final Plan plan;
    private final CurvePair[] cold;
    private final CurvePair[] hot;

    /** The curves of a plan's devices. */
    public DeviceCurves(Plan plan) {
        this.plan = plan;
        cold = new CurvePair[plan.elements().size()];
        hot = new CurvePair[cold.length];
        for (int e = 0; e < cold.length; e++) {
            if (plan.elements().get(e) instanceof Plan.Protector protector) {
                CurvePair curve = CurvePair.of(protector).orElse(null);
                cold[e] = curve == null ? null : curve.at(coldC(protector.device()));
                hot[e] = curve == null ? null : curve.at(hotC(protector.device()));
            }
        }
    }

    /** At the coldest ambient: slowest, for protection. */
    public CurvePair cold(int element) {
        return cold[element];
    }

    CurvePair[] cold() {
        return cold;
    }

    /** At the hottest ambient: fastest, for what must not open. */
    CurvePair hot(int element) {
        return hot[element];
    }

    /** Coldest ambient of a device: that of its zone, outside else; degrees Celsius. */
    public double coldC(int device) {
        int zone = zone(device);
        return zone < 0 ? plan.practice().value("state.cold") : plan.zones().get(zone).ambientMinC();
    }

    /** Hottest ambient of a device likewise, degrees Celsius. */
    double hotC(int device) {
        int zone = zone(device);
        return zone < 0 ? plan.practice().value("state.outside-hot") : plan.zones().get(zone).ambientMaxC();
    }

    private int zone(int device) {
        int at = device;
        for (int hops = 0; hops <= plan.devices().size(); hops++) {
            if (plan.devices().get(at).zone() >= 0 || plan.devices().get(at).mountedIn() < 0) {
                return plan.devices().get(at).zone();
            }
            at = plan.devices().get(at).mountedIn();
        }
        return -1;
    }
}
