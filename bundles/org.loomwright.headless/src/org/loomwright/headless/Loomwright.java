// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.io.PrintWriter;
import java.nio.file.NoSuchFileException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import org.loomwright.headless.check.CheckCommand;
import org.loomwright.headless.compare.CompareCommand;
import org.loomwright.headless.draw.DrawCommand;
import org.loomwright.headless.earth.EarthCommand;
import org.loomwright.headless.list.BomCommand;
import org.loomwright.headless.list.CablesCommand;
import org.loomwright.headless.loadlist.ImportCommand;
import org.loomwright.headless.protection.CurvesCommand;
import org.loomwright.headless.protection.ProtectionCommand;
import org.loomwright.headless.size.SizeCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line: plain {@code main}, also called by the Equinox application. */
@Command(name = "loomwright", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Plans and checks the auxiliary electrical system of vehicles, 12 and 24 V DC.",
        footer = {"", "Exit codes: 0 nothing at or above the threshold, 1 findings, 2 bad input or usage, "
                + "3 fault of the program, 130 interrupted."},
        synopsisSubcommandLabel = "COMMAND", usageHelpAutoWidth = true)
public final class Loomwright implements Runnable {
    @Spec
    private CommandSpec spec;

    private Loomwright() {
    }

    /** Runs the command line and ends the process with its exit code. */
    public static void main(String[] args) {
        EarlyLoading early = args.length > 1 ? EarlyLoading.begin() : null;
        Interrupt interrupt = Interrupt.ofProcess();
        int code = run(Console.ofProcess(), interrupt, early, args);
        interrupt.workDone();
        if (code != ExitCode.CLEAN.code()) {
            System.exit(code);
        }
    }

    /**
     * Runs one command.
     *
     * @param console   where to write
     * @param interrupt what a person's interrupt cancels
     * @param args      arguments
     * @return the exit code, see {@link ExitCode}
     */
    public static int run(Console console, Interrupt interrupt, String... args) {
        return run(console, interrupt, null, args);
    }

    private static int run(Console console, Interrupt interrupt, EarlyLoading early, String... args) {
        CommandLine line = new CommandLine(new Loomwright());
        Map<String, Supplier<Object>> commands = commands(console, interrupt);
        Supplier<Object> wanted = args.length == 0 ? null : commands.get(args[0]);
        // each command costs some milliseconds of reflection: the others are only needed for help and for mistakes
        (wanted == null ? commands.values() : List.of(wanted)).forEach(command -> line.addSubcommand(command.get()));
        line.setOut(console.out());
        line.setErr(console.err());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(
                console.outStyled() ? CommandLine.Help.Ansi.ON : CommandLine.Help.Ansi.OFF));
        line.setExecutionStrategy(parsed -> {
            if (early != null) {
                early.await();
            }
            return new CommandLine.RunLast().execute(parsed);
        });
        line.setParameterExceptionHandler((problem, rest) -> wrongUsage(problem, console.err()));
        line.setExecutionExceptionHandler((problem, command, parsed) -> failed(problem, console.err()));
        try {
            return line.execute(args);
        } catch (OutOfMemoryError tooLarge) {
            console.err().println("loomwright: not enough memory for these files; give Java more, for example with "
                    + "LOOMWRIGHT_JAVA_OPTS=-Xmx4g");
            return ExitCode.INTERNAL_FAULT.code();
        } catch (Error fault) {
            return fault(fault, console.err());
        } finally {
            console.flush();
        }
    }

    /** The commands in the order of the help. */
    private static Map<String, Supplier<Object>> commands(Console console, Interrupt interrupt) {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("check", () -> new CheckCommand(console, interrupt));
        commands.put("protection", () -> new ProtectionCommand(console, interrupt));
        commands.put("draw", () -> new DrawCommand(console, interrupt));
        commands.put("curves", () -> new CurvesCommand(console, interrupt));
        commands.put("earth", () -> new EarthCommand(console, interrupt));
        commands.put("size", () -> new SizeCommand(console, interrupt));
        commands.put("compare", () -> new CompareCommand(console, interrupt));
        commands.put("import", () -> new ImportCommand(console));
        commands.put("bom", () -> new BomCommand(console));
        commands.put("cables", () -> new CablesCommand(console));
        return commands;
    }

    /** Without a command the help is shown, and the call counts as wrong usage. */
    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getErr());
        spec.commandLine().getErr().println();
        throw new ParameterException(spec.commandLine(), "no command given");
    }

    private static int wrongUsage(ParameterException problem, PrintWriter err) {
        CommandLine command = problem.getCommandLine();
        err.println("loomwright: " + words(problem));
        err.println("Try 'loomwright" + (command.getParent() == null ? "" : " " + command.getCommandName()) + " --help'.");
        return ExitCode.BAD_INPUT.code();
    }

    private static String words(ParameterException problem) {
        if (problem instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()) {
            String first = unmatched.getUnmatched().get(0);
            CommandLine command = problem.getCommandLine();
            return command.getParent() == null ? "there is no command " + first + "; there are "
                    + String.join(", ", command.getSubcommands().keySet()) : "'" + first + "' is one argument too many";
        }
        String message = problem.getMessage();
        return message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
    }

    private static int failed(Exception problem, PrintWriter err) {
        if (isCancelled(problem)) {
            err.println("loomwright: interrupted; nothing was written");
            return Interrupt.EXIT_CODE;
        }
        if (problem instanceof BadInputException) {
            err.println("loomwright: " + problem.getMessage());
            return ExitCode.BAD_INPUT.code();
        }
        if (problem instanceof NoSuchFileException missing) {
            err.println("loomwright: no such file or folder: " + missing.getFile());
            return ExitCode.BAD_INPUT.code();
        }
        return fault(problem, err);
    }

    /** A study may wrap what stopped it. */
    private static boolean isCancelled(Throwable problem) {
        Throwable at = problem;
        while (at != null && !(at instanceof CancellationException)) {
            at = at.getCause();
        }
        return at != null;
    }

    private static int fault(Throwable problem, PrintWriter err) {
        err.println("loomwright: a fault of the program, not of your files. Please report it with the lines below.");
        problem.printStackTrace(err);
        return ExitCode.INTERNAL_FAULT.code();
    }
}
