// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

/** How much a finding matters, the worst first. */
public enum Severity {
    /** A limit is broken. */
    ERROR,
    /** A wish is missed. */
    WARNING,
    /** Worth knowing. */
    NOTE;

    /** Lower-case name as written in files and on the command line. */
    public String slug() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /** True when this severity is as bad as {@code threshold} or worse. */
    public boolean atLeast(Severity threshold) {
        return compareTo(threshold) <= 0;
    }
}
