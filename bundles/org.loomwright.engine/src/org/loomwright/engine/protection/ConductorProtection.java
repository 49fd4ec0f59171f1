// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.List;

/**
 * How one conductor is protected. A supply conductor has feeds, a return has duties; one that no source reaches has neither.
 *
 * @param conductor        index in the plan
 * @param supply           on the supply side
 * @param feeds            ways in which it is fed; two for a conductor that can be fed from both ends
 * @param duties           what a return carries of the faults of each device, the device with the largest rating first
 * @param overloadPossible a load behind it can overload, or a source lies behind it
 * @param overload         figures of conditions (a) and (b); null for a conductor without feeds and duties
 * @param heat             worst transient; null for a conductor without feeds and duties
 * @param conditions       verdicts
 */
public record ConductorProtection(int conductor, boolean supply, List<Feed> feeds, List<ReturnDuty> duties,
        boolean overloadPossible, OverloadFigures overload, ShortTransient heat, Conditions conditions) {
    public ConductorProtection {
        feeds = List.copyOf(feeds);
        duties = List.copyOf(duties);
    }

    /** Fed from both ends: when a device at one end opens, it stays live. */
    public boolean bothEndsLive() {
        return feeds.size() > 1;
    }

    /** The fault with the smallest current through it at its far end, of all feeds; null when none flows. */
    public Fault smallestFar() {
        Fault least = null;
        for (Feed feed : feeds) {
            Fault fault = feed.smallestFar();
            least = fault != null && (least == null || fault.throughA() < least.throughA()) ? fault : least;
        }
        return least;
    }

    /** The fault with the largest current at its near end, of all feeds; null when none flows. */
    public Fault largestNear() {
        Fault most = null;
        for (Feed feed : feeds) {
            Fault fault = feed.largestNear();
            most = fault != null && (most == null || fault.throughA() > most.throughA()) ? fault : most;
        }
        return most;
    }
}
