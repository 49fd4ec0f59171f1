// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.earth;

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
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.check.Caution;
import org.loomwright.headless.check.ExplainText;
import org.loomwright.headless.input.VehicleRun;
import org.loomwright.headless.report.ReportOptions;
import org.loomwright.headless.report.SeverityWord;
import org.loomwright.model.vehicle.Arrangement;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loomwright earth}: studies the return through the structure. */
@Command(name = "earth", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Studies the return through the structure: potentials of the bodies, load of the straps, what the loss "
                + "of each strap comes to, how each load returns.",
        footer = {"", "Without --arrangement the adopted arrangement is looked at, and every one where none is adopted."})
public final class EarthCommand implements Callable<Integer> {
    @Parameters(arity = "1", paramLabel = "FILE", description = "Vehicle file.")
    private Path file;

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
            description = "Show how the figures of one body, strap, earth point or load came about, for example WE1.")
    private String explain;

    private final Console console;
    private final Interrupt interrupt;

    /** The command on a console. */
    public EarthCommand(Console console, Interrupt interrupt) {
        this.console = console;
        this.interrupt = interrupt;
    }

    @Override
    public Integer call() {
        report.checkPlace();
        VehicleEarth earth = new VehicleEarth(file.toString(), cases);
        List<StudiedEarth> studied = new VehicleRun(console, interrupt).each(file, arrangements, report.practiceFile(),
                earth::study);
        if (studied.isEmpty()) {
            return ExitCode.BAD_INPUT.code();
        }
        if (explain != null && studied.stream().allMatch(each -> each.vehicle().element(explain) == null)) {
            throw new BadInputException("no element " + explain + " in " + studied.get(0).table().plan().vehicle());
        }
        report.write(console, (out, style) -> write(out, style, studied));
        boolean findings = studied.stream().anyMatch(each -> !each.vehicle().standing(threshold).isEmpty());
        return (findings ? ExitCode.FINDINGS : ExitCode.CLEAN).code();
    }

    private void write(PrintWriter out, Style style, List<StudiedEarth> studied) throws IOException {
        if (report.json()) {
            new EarthJson(out).write(studied, threshold, explain);
        } else if (explain != null) {
            ExplainText text = new ExplainText(out, style, !cases.isEmpty());
            studied.stream().map(StudiedEarth::vehicle).filter(each -> each.element(explain) != null)
                    .forEach(each -> text.write(each, each.element(explain)));
        } else {
            EarthText text = new EarthText(out, style, threshold);
            studied.forEach(text::write);
            WrappedText.write(out, "", "", Caution.TEXT);
        }
    }
}
