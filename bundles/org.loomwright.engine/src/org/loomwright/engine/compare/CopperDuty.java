// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

/** What a conductor is there for. */
public enum CopperDuty {
    /** Supply that several loads share: feeds of distribution points. */
    FEEDER("feeders"),
    /** Return that several loads share. */
    FEEDER_RETURN("feeder returns"),
    /** Supply of one load. */
    BRANCH("branches"),
    /** Return of one load. */
    BRANCH_RETURN("branch returns"),
    /** Charging, converters' inputs, control, measuring, spare cores. */
    OTHER("other");

    private final String words;

    CopperDuty(String words) {
        this.words = words;
    }

    /** Words for people. */
    public String words() {
        return words;
    }
}
