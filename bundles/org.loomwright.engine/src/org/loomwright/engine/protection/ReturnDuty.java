// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

/**
 * What a return carries of the far-end faults behind one device.
 *
 * @param protector  device (element) next before the conductors at fault; -1 where most of the current comes without one
 * @param largest    fault with the largest current in the return
 * @param largestA   that current, A
 * @param smallest   fault with the smallest current in the return, of those that go to a return at the far end
 * @param smallestA  that current, A
 * @param deviceA    current of the device at the smallest, A; 0 without a device
 */
public record ReturnDuty(int protector, Fault largest, double largestA, Fault smallest, double smallestA, double deviceA) {

    /** Share of the device's current that the return carries, 0 to 1 in a network without a second source. */
    public double share() {
        return deviceA > 0 ? smallestA / deviceA : 1;
    }
}
