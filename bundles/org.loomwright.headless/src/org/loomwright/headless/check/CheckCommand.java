// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.loomwright.engine.result.Severity;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Console;
import org.loomwright.headless.EnumWord;
import org.loomwright.headless.ExitCode;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.OutputFile;
import org.loomwright.headless.Progress;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.input.Arrangements;
import org.loomwright.headless.input.FaultLine;
import org.loomwright.headless.input.VehiclePaths;
import org.loomwright.headless.input.VehicleReader;
import org.loomwright.model.files.ReadFault;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loomwright check}: analyses vehicles and reports what does not hold. */
@Command(name = "check", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Analyses vehicles in all their operating states and reports what does not hold.",
        footer = {"", "A folder stands for all *.vehicle files below it. Without --arrangement the adopted arrangement is "
                + "looked at, and every one where none is adopted."})
public final class CheckCommand implements Callable<Integer> {
    private static final int LISTED = 200;

    /** Forms of the report. */
    enum Format { TEXT, JSON }

    private static final class FormatWord extends EnumWord<Format> {
        FormatWord() {
            super(Format.class);
        }
    }

    private static final class SeverityWord extends EnumWord<Severity> {
        SeverityWord() {
            super(Severity.class);
        }
    }

    @Parameters(arity = "1..*", paramLabel = "FILE-or-FOLDER", description = "Vehicle files, or folders with vehicle files.")
    private List<Path> paths;

    @Option(names = {"-a", "--arrangement"}, paramLabel = "NAME",
            description = "Arrangement to look at; may be repeated; 'all' for every one.")
    private List<String> arrangements = new ArrayList<>();

    @Option(names = {"-c", "--case"}, paramLabel = "NAME", description = "Case to look at; may be repeated. Default: all.")
    private List<String> cases = new ArrayList<>();

    @Option(names = {"-p", "--practice"}, paramLabel = "FILE", description = "Practice to follow instead of the vehicles' own.")
    private Path practiceFile;

    @Option(names = {"-s", "--severity"}, paramLabel = "SEVERITY", defaultValue = "warning", converter = SeverityWord.class,
            description = "Least severity that is reported and counts for the exit code: error, warning or note. "
                    + "Default: ${DEFAULT-VALUE}.")
    private Severity threshold;

    @Option(names = {"-f", "--format"}, paramLabel = "FORM", defaultValue = "text", converter = FormatWord.class,
            description = "text or json. Default: ${DEFAULT-VALUE}.")
    private Format format;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE", description = "File to write instead of standard output.")
    private Path output;

    @Option(names = {"-e", "--explain"}, paramLabel = "ELEMENT",
            description = "Show how the figures of one element came about, for example W12 or central/X1/3.")
    private String explain;

    private final Console console;
    private final Interrupt interrupt;

    /** The command on a console. */
    public CheckCommand(Console console, Interrupt interrupt) {
        this.console = console;
        this.interrupt = interrupt;
    }

    @Override
    public Integer call() {
        if (output != null) {
            new OutputFile(output).checkPlace();
        }
        List<ReadFault> faults = new ArrayList<>();
        List<CheckedVehicle> checked = checkAll(faults);
        faults.stream().limit(LISTED).map(FaultLine::of).forEach(console.err()::println);
        if (faults.size() > LISTED) {
            console.err().println("loomwright: " + (faults.size() - LISTED) + " more faults are not listed");
        }
        if (!faults.isEmpty()) {
            console.err().println("loomwright: " + faults.size() + (faults.size() == 1 ? " fault" : " faults")
                    + " in the files; "
                    + (checked.isEmpty() ? "nothing was analysed" : "vehicles that use them were not analysed"));
        }
        checkExplained(checked);
        if (!checked.isEmpty() || format == Format.JSON) {
            report(checked, faults);
        }
        boolean findings = checked.stream().anyMatch(each -> !each.standing(threshold).isEmpty());
        ExitCode code = faults.isEmpty() ? ExitCode.CLEAN : ExitCode.BAD_INPUT;
        return code.worse(findings ? ExitCode.FINDINGS : ExitCode.CLEAN).code();
    }

    private List<CheckedVehicle> checkAll(List<ReadFault> faults) {
        List<Path> files = VehiclePaths.of(paths);
        VehicleReader reader = new VehicleReader();
        Practice practice = practiceFile == null ? null : reader.practice(practiceFile, faults);
        List<CheckedVehicle> checked = new ArrayList<>();
        if (!faults.isEmpty()) {
            return checked;
        }
        try (Progress progress = new Progress(console, interrupt, files.size())) {
            VehicleCheck check = new VehicleCheck(practice, cases, progress);
            for (Path file : files) {
                progress.at(file.toString());
                VehicleReader.Read read = reader.vehicle(file);
                faults.addAll(read.faults());
                if (read.vehicle() != null) {
                    for (Arrangement arrangement : Arrangements.of(read.vehicle(), arrangements)) {
                        checked.add(check.check(file.toString(), read.vehicle(), arrangement));
                    }
                }
            }
        }
        return checked;
    }

    private void checkExplained(List<CheckedVehicle> checked) {
        if (explain != null && !checked.isEmpty() && checked.stream().allMatch(each -> each.element(explain) == null)) {
            throw new BadInputException("no element " + explain + " in " + String.join(", ", checked.stream()
                    .map(each -> (each.plan().vehicle() + " " + each.plan().arrangement()).strip()).toList())
                    + ElementIds.hint(checked, explain));
        }
    }

    private void report(List<CheckedVehicle> checked, List<ReadFault> faults) {
        if (output == null) {
            write(console.out(), new Style(console.outStyled()), checked, faults);
        } else {
            new OutputFile(output).write(out -> {
                Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
                PrintWriter printer = new PrintWriter(writer);
                write(printer, new Style(false), checked, faults);
                printer.flush();
            });
        }
    }

    private void write(PrintWriter out, Style style, List<CheckedVehicle> checked, List<ReadFault> faults) {
        if (format == Format.JSON) {
            try {
                new CheckJson(out).write(checked, threshold, faults, explain);
                out.println();
            } catch (IOException problem) {
                throw new UncheckedIOException(problem);
            }
        } else if (explain != null) {
            ExplainText text = new ExplainText(out, style, !cases.isEmpty());
            checked.stream().filter(each -> each.element(explain) != null)
                    .forEach(each -> text.write(each, each.element(explain)));
        } else {
            CheckText text = new CheckText(out, style, threshold);
            checked.forEach(text::write);
            WrappedText.write(out, "", "", Caution.TEXT);
        }
    }
}
