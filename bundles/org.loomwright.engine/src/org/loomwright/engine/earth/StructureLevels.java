// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;

/** Potentials and currents of the structure in a case, without the rest of the earth study. */
public final class StructureLevels {
    private StructureLevels() {
    }

    /** The structure in a solved case; potentials are given against the terminal of {@link #minus}. */
    public static CaseEarth of(Plan plan, SolvedCase solved) {
        return new BodyLevels(plan).of(solved, new EarthNetwork(plan, solved.running(), minus(plan, solved)));
    }

    /** Terminal of the plan against which potentials are given: the minus of the battery that leads into the structure. */
    public static int minus(Plan plan, SolvedCase any) {
        return BatteryMinus.terminal(plan, any.running());
    }
}
