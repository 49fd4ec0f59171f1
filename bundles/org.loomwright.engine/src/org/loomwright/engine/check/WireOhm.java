// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import org.loomwright.engine.flow.Network;

/** Resistance of a wire at its temperature: R20 (1 + alpha (T - 20)), IEC 60028, and its end joints. */
final class WireOhm {
    private WireOhm() {
    }

    /** Resistance of the conductor at {@code temperatureC} and its end joints, ohm. */
    static double of(Network.Wire wire, double temperatureC) {
        return ofConductor(wire, temperatureC) + wire.jointsOhm();
    }

    /** Resistance of the conductor alone, ohm; at 20 degrees Celsius where it does not warm. */
    static double ofConductor(Network.Wire wire, double temperatureC) {
        return wire.heat() == null || Double.isNaN(temperatureC) ? wire.r20Ohm()
                : wire.r20Ohm() * (1 + wire.heat().alphaPerK() * (temperatureC - 20));
    }
}
