// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

/** Exit codes of the command line. */
public enum ExitCode {
    /** Nothing at or above the severity threshold. */
    CLEAN(0),
    /** Findings at or above the threshold. */
    FINDINGS(1),
    /** Bad input or usage. */
    BAD_INPUT(2),
    /** A fault of the program. */
    INTERNAL_FAULT(3);

    private final int code;

    ExitCode(int code) {
        this.code = code;
    }

    /** The number given to the shell. */
    public int code() {
        return code;
    }

    /** The worse of the two. */
    public ExitCode worse(ExitCode other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
