// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

/**
 * The four conditions of "protected".
 *
 * @param rating    (a) In up to r Iz
 * @param overload  (b) I2 up to 1.45 Iz, where an overload is possible
 * @param shortTime (c) below the short-time limit for every current from the smallest far-end to the largest near-end fault
 * @param clears    (d) the smallest far-end fault, to the return and to the nearest body, clears within the practice's time
 */
public record Conditions(Verdict rating, Verdict overload, Verdict shortTime, Verdict clears) {

    /** True when no condition fails or lacks a device; what is not known does not count. */
    public boolean met() {
        Verdict worst = rating.worse(overload).worse(shortTime).worse(clears);
        return worst != Verdict.FAILS && worst != Verdict.NO_DEVICE;
    }
}
