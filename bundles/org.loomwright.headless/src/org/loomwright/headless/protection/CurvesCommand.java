// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.protection;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.loomwright.diagram.chart.ChartSubject;
import org.loomwright.diagram.chart.ProtectionChart;
import org.loomwright.diagram.chart.TimeCurrentScene;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Console;
import org.loomwright.headless.ExitCode;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.input.VehicleRun;
import org.loomwright.headless.report.PictureFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loomwright curves}: draws the time-current chart of a protective device, a conductor or a load's feed. */
@Command(name = "curves", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Draws time over current of a fuse or breaker, the device upstream, how long the conductor bears it, "
                + "inrush, fault currents and verdicts.",
        footer = {"", "Without --arrangement the adopted arrangement is drawn."})
public final class CurvesCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", description = "Vehicle file.")
    private Path file;

    @Parameters(index = "1", paramLabel = "ELEMENT",
            description = "Way or fuse, cable or core, or load, for example X1:3, F10, W12 or E4.")
    private String element;

    @Option(names = {"-a", "--arrangement"}, paramLabel = "NAME", description = "Arrangement to look at.")
    private String arrangement;

    @Option(names = {"-p", "--practice"}, paramLabel = "FILE", description = "Practice to follow instead of the vehicle's own.")
    private Path practiceFile;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE",
            description = "File to write, .svg or .png. Default: an SVG file here, named after the element.")
    private Path output;

    @Option(names = "--theme", paramLabel = "THEME", defaultValue = "light", converter = PictureFile.Ground.Word.class,
            description = "light or dark. Default: ${DEFAULT-VALUE}.")
    private PictureFile.Ground theme;

    @Option(names = "--scale", paramLabel = "NUMBER", defaultValue = "2",
            description = "Pixels of a PNG for each pixel of the drawing, up to 10. Default: ${DEFAULT-VALUE}.")
    private double scale;

    private final Console console;
    private final Interrupt interrupt;

    /** The command on a console. */
    public CurvesCommand(Console console, Interrupt interrupt) {
        this.console = console;
        this.interrupt = interrupt;
    }

    @Override
    public Integer call() {
        PictureFile.checkScale(scale);
        Path target = output == null ? Path.of(element.replaceAll("[^A-Za-z0-9._+-]", "-").replaceFirst("^-+", "") + ".svg")
                : output;
        PictureFile picture = new PictureFile(target);
        List<StudiedProtection> studied = new VehicleRun(console, interrupt).each(file,
                arrangement == null ? List.of() : List.of(arrangement), practiceFile,
                new VehicleProtection(file.toString())::study);
        if (studied.isEmpty()) {
            return ExitCode.BAD_INPUT.code();
        }
        if (studied.size() > 1) {
            throw new BadInputException("vehicle " + studied.get(0).vehicle().plan().vehicle()
                    + " has several arrangements; choose one with --arrangement");
        }
        draw(studied.get(0), picture);
        console.out().println(target);
        return ExitCode.CLEAN.code();
    }

    private void draw(StudiedProtection studied, PictureFile picture) {
        Type type = Type.load();
        Scene scene = TimeCurrentScene.of(ProtectionChart.of(studied.context(), subject(studied),
                studied.vehicle().result().findings()), type);
        picture.write(scene, type, theme, scale);
    }

    private ChartSubject subject(StudiedProtection studied) {
        String id = studied.vehicle().element(element);
        String vehicle = (studied.vehicle().plan().vehicle() + " " + studied.vehicle().plan().arrangement()).strip();
        if (id == null) {
            throw new BadInputException("no element " + element + " in " + vehicle);
        }
        List<ChartSubject> found = ChartSubject.of(studied.context(), id);
        if (found.isEmpty()) {
            throw new BadInputException(element + " of " + vehicle + " has no protective device and feeds nothing: "
                    + "expected a way, a fuse, a cable or a load");
        }
        if (found.size() > 1) {
            throw new BadInputException(element + " holds several devices; choose one of " + String.join(", ", found.stream()
                    .map(each -> studied.context().names().shown(studied.context().names().element(each.protector())))
                    .toList()));
        }
        return found.get(0);
    }
}
