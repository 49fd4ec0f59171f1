// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.io.PrintWriter;

/**
 * Where a command writes. Results go to {@code out}, everything else to {@code err}.
 *
 * @param out          results
 * @param err          messages and progress
 * @param outStyled    colours and weights may be used on {@code out}
 * @param showProgress {@code err} is watched by a person
 */
public record Console(PrintWriter out, PrintWriter err, boolean outStyled, boolean showProgress) {

    /** The console of this process; colours only on a terminal and not when NO_COLOR is set. */
    public static Console ofProcess() {
        boolean terminal = System.console() != null;
        boolean styled = terminal && System.getenv("NO_COLOR") == null && !"dumb".equals(System.getenv("TERM"));
        return new Console(utf8(System.out), utf8(System.err), styled, terminal);
    }

    private static PrintWriter utf8(java.io.PrintStream stream) {
        return new PrintWriter(new java.io.OutputStreamWriter(stream, java.nio.charset.StandardCharsets.UTF_8), false);
    }

    /** Writes everything out. */
    public void flush() {
        out.flush();
        err.flush();
    }
}
