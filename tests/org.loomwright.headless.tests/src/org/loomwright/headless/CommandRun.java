// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * One run of the command line inside the test.
 *
 * @param code exit code
 * @param out  what went to standard output
 * @param err  what went to standard error
 */
public record CommandRun(int code, String out, String err) {

    /** Runs a command; arguments are turned into text. */
    public static CommandRun of(Object... args) {
        return with(new Interrupt(), args);
    }

    /** Runs a command that an interrupt may stop. */
    public static CommandRun with(Interrupt interrupt, Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Console console = new Console(new PrintWriter(out), new PrintWriter(err), false, false);
        int code = Loomwright.run(console, interrupt, Arrays.stream(args).map(Object::toString).toArray(String[]::new));
        return new CommandRun(code, out.toString(), err.toString());
    }

    /** Lines of standard error. */
    public List<String> messages() {
        return err.lines().toList();
    }

    /** Lines of standard error that begin with a file's path. */
    public List<String> messagesAbout(Path file) {
        return err.lines().filter(line -> line.startsWith(file + ":")).toList();
    }
}
