// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

/** The studies that are asked for, not made on every change. */
public enum StudyKind {
    /** Fault currents, clearing, selectivity. */
    PROTECTION,
    /** The structure as a return, lost straps. */
    EARTH,
    /** Sections and ratings, chosen together. */
    SIZING,
    /** Arrangements side by side. */
    COMPARISON;

    /** Name as shown. */
    public String shown() {
        return switch (this) {
            case PROTECTION -> Messages.Study_protection;
            case EARTH -> Messages.Study_earth;
            case SIZING -> Messages.Study_sizing;
            case COMPARISON -> Messages.Study_comparison;
        };
    }
}
