// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.loomwright.diagram.chart.ComparisonScene;
import org.loomwright.diagram.paint.PngPainter;
import org.loomwright.diagram.paint.SvgPainter;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Console;
import org.loomwright.headless.EnumWord;
import org.loomwright.headless.ExitCode;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.OutputFile;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.check.Caution;
import org.loomwright.headless.input.FaultLine;
import org.loomwright.headless.size.ObjectiveWord;
import org.loomwright.model.files.ReadFault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loomwright compare}: sets the arrangements of a vehicle side by side. */
@Command(name = "compare", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Sets arrangements of a vehicle side by side: copper and where it is, ends, devices, price, mass, lowest "
                + "voltages, hottest conductor, findings.",
        footer = {"", "Without names all arrangements are compared; differences are to the first."})
public final class CompareCommand implements Callable<Integer> {
    private static final double PNG_SCALE = 2;

    /** Forms of the report. */
    enum Format { TEXT, JSON }

    private static final class FormatWord extends EnumWord<Format> {
        FormatWord() {
            super(Format.class);
        }
    }

    @Parameters(index = "0", paramLabel = "FILE", description = "Vehicle file.")
    private Path file;

    @Parameters(index = "1..*", paramLabel = "ARRANGEMENT", description = "Arrangements to compare.")
    private List<String> arrangements = new ArrayList<>();

    @Option(names = "--size", paramLabel = "WHAT", arity = "0..1", fallbackValue = "copper", converter = ObjectiveWord.class,
            description = "Size each arrangement first, everything but wiring of the base vehicle, for least copper, price, "
                    + "sections or stock. Without a word: copper.")
    private SizingObjective objective;

    @Option(names = {"-p", "--practice"}, paramLabel = "FILE", description = "Practice to follow instead of the vehicle's own.")
    private Path practiceFile;

    @Option(names = {"-f", "--format"}, paramLabel = "FORM", defaultValue = "text", converter = FormatWord.class,
            description = "text or json. Default: ${DEFAULT-VALUE}.")
    private Format format;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE", description = "File to write instead of standard output.")
    private Path output;

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
        for (Path target : new Path[] {output, chart}) {
            if (target != null) {
                new OutputFile(target).checkPlace();
            }
        }
        if (chart != null && !ends(chart, ".png") && !ends(chart, ".svg")) {
            throw new BadInputException("cannot write " + chart + ": its name must end with .svg or .png");
        }
        List<ReadFault> faults = new ArrayList<>();
        List<StudiedArrangement> studied = new VehicleComparison(console, interrupt,
                objective == null ? VehicleComparison.Preparation.NONE : new SizedFirst(objective)).study(file, arrangements, practiceFile, faults);
        faults.stream().map(FaultLine::of).forEach(console.err()::println);
        if (!faults.isEmpty()) {
            return ExitCode.BAD_INPUT.code();
        }
        if (chart != null && studied.size() > ComparisonScene.most()) {
            throw new BadInputException("a chart shows up to " + ComparisonScene.most() + " arrangements, not " + studied.size());
        }
        if (chart != null) {
            draw(studied);
        }
        if (output == null) {
            write(console.out(), new Style(console.outStyled()), studied);
        } else {
            new OutputFile(output).write(out -> {
                PrintWriter printer = new PrintWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
                write(printer, new Style(false), studied);
                printer.flush();
            });
        }
        return ExitCode.CLEAN.code();
    }

    private static boolean ends(Path target, String with) {
        return target.toString().toLowerCase(Locale.ROOT).endsWith(with);
    }

    private String state() {
        return objective == null ? "sections and ratings as planned" : "sized for least " + objective.word();
    }

    private void draw(List<StudiedArrangement> studied) {
        Type type = Type.load();
        Scene scene = ComparisonScene.of(new ArrangementComparison(studied.stream().map(StudiedArrangement::figures).toList()),
                studied.stream().map(StudiedArrangement::label).toList(), state(), type);
        new OutputFile(chart).write(out -> {
            if (ends(chart, ".png")) {
                PngPainter.write(scene, Theme.light(), type, PNG_SCALE, out);
            } else {
                out.write(SvgPainter.paint(scene, Theme.light(), type).getBytes(StandardCharsets.UTF_8));
            }
        });
    }

    private void write(PrintWriter out, Style style, List<StudiedArrangement> studied) {
        if (format == Format.JSON) {
            try {
                new CompareJson(out).write(studied, objective == null ? null : objective.word(), explain);
                out.println();
            } catch (IOException problem) {
                throw new UncheckedIOException(problem);
            }
        } else if (explain) {
            new CompareText(out, style).explain(studied);
        } else {
            new CompareText(out, style).write(studied, state());
            WrappedText.write(out, "", "", Caution.TEXT);
        }
    }
}
