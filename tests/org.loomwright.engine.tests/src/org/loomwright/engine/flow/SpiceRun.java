// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/** Lets the tests of other packages run ngspice. */
public final class SpiceRun {
    private SpiceRun() {
    }

    /** What ngspice in batch mode says to a deck; without ngspice the test fails. */
    public static String of(String deck) {
        return Ngspice.run(deck);
    }
}
