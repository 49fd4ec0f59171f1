// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.loomwright.engine.result.Severity;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Console;
import org.loomwright.headless.ExitCode;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.Progress;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.input.Arrangements;
import org.loomwright.headless.input.FaultLine;
import org.loomwright.headless.input.VehiclePaths;
import org.loomwright.headless.input.VehicleReader;
import org.loomwright.headless.report.ReportOptions;
import org.loomwright.headless.report.SeverityWord;
import org.loomwright.model.files.ReadFault;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loomwright check}: analyses vehicles and reports what does not hold. */
@Command(name = "check", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Analyses vehicles in all their operating states and reports what does not hold.",
        footer = {"", "A folder stands for all *.vehicle files below it. Without --arrangement the adopted arrangement is "
                + "looked at, and every one where none is adopted."})
public final class CheckCommand implements Callable<Integer> {
    private static final int LISTED = 200;

    @Parameters(arity = "1..*", paramLabel = "FILE-or-FOLDER", description = "Vehicle files, or folders with vehicle files.")
    private List<Path> paths;

    @Option(names = {"-a", "--arrangement"}, paramLabel = "NAME",
            description = "Arrangement to look at; may be repeated; 'all' for every one.")
    private List<String> arrangements = new ArrayList<>();

    @Option(names = {"-c", "--case"}, paramLabel = "NAME", description = "Case to look at; may be repeated. Default: all.")
    private List<String> cases = new ArrayList<>();

    @Mixin
    private ReportOptions report;

    @Option(names = {"-s", "--severity"}, paramLabel = "SEVERITY", defaultValue = "warning", converter = SeverityWord.class,
            description = "Least severity that is reported and counts for the exit code: error, warning or note. "
                    + "Default: ${DEFAULT-VALUE}.")
    private Severity threshold;

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
        report.checkPlace();
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
        if (!checked.isEmpty() || report.json()) {
            report.write(console, (out, style) -> write(out, style, checked, faults));
        }
        boolean findings = checked.stream().anyMatch(each -> !each.standing(threshold).isEmpty());
        ExitCode code = faults.isEmpty() ? ExitCode.CLEAN : ExitCode.BAD_INPUT;
        return code.worse(findings ? ExitCode.FINDINGS : ExitCode.CLEAN).code();
    }

    private List<CheckedVehicle> checkAll(List<ReadFault> faults) {
        List<Path> files = VehiclePaths.of(paths);
        VehicleReader reader = new VehicleReader();
        Practice practice = report.practiceFile() == null ? null : reader.practice(report.practiceFile(), faults);
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

    private void write(PrintWriter out, Style style, List<CheckedVehicle> checked, List<ReadFault> faults)
            throws IOException {
        if (report.json()) {
            new CheckJson(out).write(checked, threshold, faults, explain);
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
