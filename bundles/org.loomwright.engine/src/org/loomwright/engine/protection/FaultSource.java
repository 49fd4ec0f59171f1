// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

/**
 * An EMF behind a resistance that drives current into node a, out of node b. A cell does so both ways. A regulated source, a
 * converter's output and a diode (an EMF of its forward voltage, against the current) only deliver, up to a limit.
 *
 * @param element index in the plan's elements
 * @param emfV    open-circuit, set or, negative, forward voltage, V
 * @param ohm     resistance behind it, above 0 ohm
 * @param oneWay  it never takes current
 * @param limitA  most it delivers, A; infinite without a limit
 */
record FaultSource(int element, int a, int b, double emfV, double ohm, boolean oneWay, double limitA) {
}
