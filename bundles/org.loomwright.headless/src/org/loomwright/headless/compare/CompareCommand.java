// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.loomwright.diagram.chart.ComparisonScene;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Console;
import org.loomwright.headless.ExitCode;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.check.Caution;
import org.loomwright.headless.input.Arrangements;
import org.loomwright.headless.input.VehicleRun;
import org.loomwright.headless.report.PictureFile;
import org.loomwright.headless.report.ReportOptions;
import org.loomwright.headless.size.ObjectiveWord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loomwright compare}: sets the arrangements of a vehicle side by side. */
@Command(name = "compare", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Sets arrangements of a vehicle side by side: copper and where it is, ends, devices, price, mass, lowest "
                + "voltages, hottest conductor, findings.",
        footer = {"", "Without names all arrangements are compared; differences are to the first."})
public final class CompareCommand implements Callable<Integer> {
    private static final double PNG_SCALE = 2;

    @Parameters(index = "0", paramLabel = "FILE", description = "Vehicle file.")
    private Path file;

    @Parameters(index = "1..*", paramLabel = "ARRANGEMENT", description = "Arrangements to compare.")
    private List<String> arrangements = new ArrayList<>();

    @Option(names = "--size", paramLabel = "WHAT", arity = "0..1", fallbackValue = "copper", converter = ObjectiveWord.class,
            description = "Size each arrangement first, everything but wiring of the base vehicle, for least copper, price, "
                    + "sections or stock. Without a word: copper.")
    private SizingObjective objective;

    @Mixin
    private ReportOptions report;

    @Option(names = "--chart", paramLabel = "FILE", description = "Draw the comparison as well: file to write, .svg or .png.")
    private Path chart;

    @Option(names = {"-e", "--explain"}, description = "Show how the sums came about.")
    private boolean explain;

    private final Console console;
    private final Interrupt interrupt;

    /** The command on a console. */
    public CompareCommand(Console console, Interrupt interrupt) {
        this.console = console;
        this.interrupt = interrupt;
    }

    @Override
    public Integer call() {
        report.checkPlace();
        PictureFile picture = chart == null ? null : new PictureFile(chart);
        List<StudiedArrangement> studied = new VehicleRun(console, interrupt).each(file,
                arrangements.isEmpty() ? List.of(Arrangements.ALL) : arrangements, report.practiceFile(),
                new VehicleComparison(file.toString(), objective == null ? VehicleComparison.Preparation.NONE
                        : new SizedFirst(objective))::study);
        if (studied.isEmpty()) {
            return ExitCode.BAD_INPUT.code();
        }
        if (chart != null && studied.size() > ComparisonScene.most()) {
            throw new BadInputException("a chart shows up to " + ComparisonScene.most() + " arrangements, not " + studied.size());
        }
        if (picture != null) {
            draw(studied, picture);
        }
        report.write(console, (out, style) -> write(out, style, studied));
        return ExitCode.CLEAN.code();
    }

    private String state() {
        return objective == null ? "sections and ratings as planned" : "sized for least " + objective.word();
    }

    private void draw(List<StudiedArrangement> studied, PictureFile picture) {
        Type type = Type.load();
        Scene scene = ComparisonScene.of(new ArrangementComparison(studied.stream().map(StudiedArrangement::figures).toList()),
                studied.stream().map(StudiedArrangement::label).toList(), state(), type);
        picture.write(scene, type, PictureFile.Ground.LIGHT, PNG_SCALE);
    }

    private void write(PrintWriter out, Style style, List<StudiedArrangement> studied) throws IOException {
        if (report.json()) {
            new CompareJson(out).write(studied, objective == null ? null : objective.word(), explain);
        } else if (explain) {
            new CompareText(out, style).explain(studied);
        } else {
            new CompareText(out, style).write(studied, state());
            WrappedText.write(out, "", "", Caution.TEXT);
        }
    }
}
