// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

/** The cautions that go with every report. */
public final class Caution {
    /** The cautions in one paragraph. */
    public static final String TEXT = "Low-voltage wiring can start a fire and a charging battery gives off explosive gas. "
            + "Isolate the batteries before working, protect every supply conductor at its source, and have the work checked. "
            + "Local codes, the makers' instructions and licensed practice come first. "
            + "These figures are as good as what was entered.";

    private Caution() {
    }
}
