// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.heat.ConductorAmbient;

/** Ambient of devices. */
final class Ambients {
    private Ambients() {
    }

    /** Ambient of a device's zone in a case, of the device it is mounted in where it has none, outside else; degrees Celsius. */
    static double ofDevice(Plan plan, Plan.Case state, int device) {
        int at = device;
        for (int hops = 0; hops <= plan.devices().size(); hops++) {
            Plan.Device here = plan.devices().get(at);
            if (here.zone() >= 0 || here.mountedIn() < 0) {
                return ConductorAmbient.of(state, here.zone());
            }
            at = here.mountedIn();
        }
        return state.outsideC();
    }

    /** Coldest ambient of a device's zone, as above; degrees Celsius. */
    static double coldestOfDevice(Plan plan, int device) {
        int zone = zoneOf(plan, device);
        return zone < 0 ? plan.practice().value("state.cold") : plan.zones().get(zone).ambientMinC();
    }

    /** Hottest ambient of a device's zone, as above; degrees Celsius. */
    static double hottestOfDevice(Plan plan, int device) {
        int zone = zoneOf(plan, device);
        return zone < 0 ? plan.practice().value("state.outside-hot") : plan.zones().get(zone).ambientMaxC();
    }

    private static int zoneOf(Plan plan, int device) {
        int at = device;
        for (int hops = 0; hops <= plan.devices().size(); hops++) {
            Plan.Device here = plan.devices().get(at);
            if (here.zone() >= 0 || here.mountedIn() < 0) {
                return here.zone();
            }
            at = here.mountedIn();
        }
        return -1;
    }
}
