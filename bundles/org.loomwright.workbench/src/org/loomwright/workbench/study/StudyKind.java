// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

/** The studies that are asked for, not made on every change. */
public enum StudyKind {
    /** Fault currents, clearing, selectivity. */
    PROTECTION,
    /** The structure as a return, lost straps. */
    EARTH;

    /** Name as shown. */
    public String shown() {
        return this == PROTECTION ? Messages.Study_protection : Messages.Study_earth;
    }
}
