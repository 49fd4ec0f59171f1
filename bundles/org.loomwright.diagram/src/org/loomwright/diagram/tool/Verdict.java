// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

/**
 * Whether something may be done, and what a person should know about it.
 *
 * @param kind allowed, allowed with a warning, or refused
 * @param text what would come of it, what to mind, or why not; may be empty when it is allowed
 */
public record Verdict(Kind kind, String text) {
    /** How it is judged. */
    public enum Kind {
        /** It may be done. */
        ALLOWED,
        /** It may be done, but there is something to mind. */
        WARNED,
        /** It may not be done. */
        REFUSED
    }

    /** It may be done. */
    public static Verdict allowed(String text) {
        return new Verdict(Kind.ALLOWED, text);
    }

    /** It may be done, but there is something to mind. */
    public static Verdict warned(String text) {
        return new Verdict(Kind.WARNED, text);
    }

    /** It may not be done, and why. */
    public static Verdict refused(String text) {
        return new Verdict(Kind.REFUSED, text);
    }

    /** True unless it is refused. */
    public boolean possible() {
        return kind != Kind.REFUSED;
    }
}
