// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.draw;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.paper.PaperChoice;
import org.loomwright.diagram.paper.SheetSet;
import org.loomwright.diagram.plan.PlanView;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Console;
import org.loomwright.headless.EnumWord;
import org.loomwright.headless.ExitCode;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.input.FaultLine;
import org.loomwright.headless.report.PictureFile;
import org.loomwright.model.files.ReadFault;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** {@code loomwright draw}: draws a diagram of a vehicle with its findings. */
@Command(name = "draw", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Draws a vehicle: the plan, to scale with its ducts, cables and devices, the single-line circuit, or "
                + "the earth return; with findings.",
        footer = {"", "Without --arrangement the adopted arrangement is drawn. Without --case findings of all cases are shown, "
                + "and an overlay shows the worst value of all. On paper a drawing has frame and title block; SVG and PNG of several "
                + "sheets are numbered files, a PDF has them as pages."})
public final class DrawCommand implements Callable<Integer> {
    private static final class DiagramWord extends EnumWord<Diagram> {
        DiagramWord() {
            super(Diagram.class);
        }
    }

    private static final class ViewWord extends EnumWord<PlanView> {
        ViewWord() {
            super(PlanView.class);
        }
    }

    /** Overlays by their names with hyphens. */
    private static final class OverlayWord implements ITypeConverter<OverlayKind> {
        @Override
        public OverlayKind convert(String text) {
            return Arrays.stream(OverlayKind.values()).filter(kind -> word(kind).equals(text.toLowerCase(Locale.ROOT)))
                    .findFirst().orElseThrow(() -> new TypeConversionException("'" + text + "' is none; expected one of "
                            + String.join(", ", Arrays.stream(OverlayKind.values()).map(OverlayWord::word).toList())));
        }

        private static String word(OverlayKind kind) {
            return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    @Parameters(index = "0", paramLabel = "FILE", description = "Vehicle file.")
    private Path file;

    @Option(names = {"-d", "--diagram"}, paramLabel = "DIAGRAM", defaultValue = "plan", converter = DiagramWord.class,
            description = "plan, line or earth. Default: ${DEFAULT-VALUE}.")
    private Diagram diagram;

    @Option(names = "--view", paramLabel = "VIEW", defaultValue = "above", converter = ViewWord.class,
            description = "Plan from above or from the side. Default: ${DEFAULT-VALUE}.")
    private PlanView view;

    @Option(names = {"-a", "--arrangement"}, paramLabel = "NAME", description = "Arrangement to draw.")
    private String arrangement;

    @Option(names = {"-c", "--case"}, paramLabel = "NAME", description = "Case whose findings and values are shown.")
    private String caseName;

    @Option(names = {"-p", "--practice"}, paramLabel = "FILE", description = "Practice to follow instead of the vehicle's own.")
    private Path practiceFile;

    @Option(names = "--overlay", paramLabel = "OVERLAY", converter = OverlayWord.class,
            description = "Colours by voltage-drop, temperature, fuse-load, fill or potential.")
    private OverlayKind overlay;

    @Option(names = "--lost", paramLabel = "STRAP",
            description = "Earth return with this strap lost, in the case of --case; figures with it in place in grey.")
    private String lost;

    @Mixin
    private PaperOptions paper = new PaperOptions();

    @Option(names = {"-o", "--output", "--out"}, paramLabel = "FILE",
            description = "File to write, .svg, .png or .pdf. Default: an SVG file here, named after vehicle and diagram.")
    private Path output;

    @Option(names = "--theme", paramLabel = "THEME", defaultValue = "light", converter = PictureFile.Ground.Word.class,
            description = "light or dark. Default: ${DEFAULT-VALUE}.")
    private PictureFile.Ground theme;

    @Option(names = "--scale", paramLabel = "NUMBER", defaultValue = "1",
            description = "Pixels of a PNG for each pixel of the drawing, up to 10. Default: ${DEFAULT-VALUE}.")
    private double scale;

    private final Console console;
    private final Interrupt interrupt;

    /** The command on a console. */
    public DrawCommand(Console console, Interrupt interrupt) {
        this.console = console;
        this.interrupt = interrupt;
    }

    @Override
    public Integer call() {
        PictureFile.checkScale(scale);
        Path target = output == null ? named() : output;
        boolean onPaper = DrawingFormat.of(target) == DrawingFormat.PDF || paper.given();
        int plot = paper.plot(diagram);
        if (lost != null && (diagram != Diagram.EARTH || caseName == null)) {
            throw new BadInputException("--lost is for the earth return in one case; add --diagram earth and --case");
        }
        PaperChoice choice = paper.paper();
        SheetFiles sheets = new SheetFiles(target);
        List<ReadFault> faults = new ArrayList<>();
        Type type = Type.load();
        VehicleDrawing drawing = new VehicleDrawing(console, interrupt,
                new VehicleDrawing.Wanted(diagram, view, arrangement, caseName, overlay, lost));
        DrawingRequest request = drawing.request(file, practiceFile, faults);
        faults.stream().map(FaultLine::of).forEach(console.err()::println);
        if (!faults.isEmpty()) {
            return ExitCode.BAD_INPUT.code();
        }
        if (onPaper) {
            SheetSet set = drawing.sheets(request, choice, plot, TitleReader.of(file, request, diagram, view, paper), type);
            Theme colours = theme == PictureFile.Ground.DARK ? Theme.dark() : Theme.print();
            sheets.write(set, colours, type, scale).forEach(console.out()::println);
        } else {
            new PictureFile(target).write(drawing.scene(request, type), type, theme, scale);
            console.out().println(target);
        }
        return ExitCode.CLEAN.code();
    }

    private Path named() {
        String name = file.getFileName() == null ? "vehicle" : file.getFileName().toString().replaceFirst("\\.vehicle$", "");
        return Path.of(name + "-" + diagram.name().toLowerCase(Locale.ROOT) + ".svg");
    }
}
