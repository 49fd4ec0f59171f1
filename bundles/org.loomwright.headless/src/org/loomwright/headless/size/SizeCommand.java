// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Console;
import org.loomwright.headless.ExitCode;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.check.Caution;
import org.loomwright.headless.report.ReportOptions;
import org.loomwright.model.edits.SizingEdits;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.files.VehicleResource;
import org.loomwright.model.vehicle.Vehicle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loomwright size}: chooses sections and ratings together, and writes them into the vehicle file when asked to. */
@Command(name = "size", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Chooses sections of cables and ratings of fuses and breakers together, at proven least cost.",
        footer = {"", "Open are sections and ratings that are unset or that sizing chose before. Without names the adopted "
                + "arrangement is sized, and every one where none is adopted."})
public final class SizeCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", description = "Vehicle file.")
    private Path file;

    @Parameters(index = "1..*", paramLabel = "ARRANGEMENT", description = "Arrangements to size; 'all' for every one.")
    private List<String> arrangements = new ArrayList<>();

    @Option(names = "--objective", paramLabel = "WHAT", defaultValue = "copper", converter = ObjectiveWord.class,
            description = "What is to be least: copper, price, sections (how many different ones) or stock (what has to be "
                    + "bought beside the store). Default: ${DEFAULT-VALUE}.")
    private SizingObjective objective;

    @Option(names = "--all", description = "Open what a person chose as well; wiring of the base vehicle stays.")
    private boolean all;

    @Option(names = "--apply", description = "Write what was chosen into the vehicle file.")
    private boolean apply;

    @Mixin
    private ReportOptions report;

    @Option(names = {"-e", "--explain"}, paramLabel = "ELEMENT", arity = "0..1", fallbackValue = "",
            description = "Show how all figures came about, or those of one cable, fuse or load.")
    private String explain;

    private final Console console;
    private final Interrupt interrupt;

    /** The command on a console. */
    public SizeCommand(Console console, Interrupt interrupt) {
        this.console = console;
        this.interrupt = interrupt;
    }

    @Override
    public Integer call() {
        report.checkPlace();
        if (apply && Files.exists(file) && !Files.isWritable(file)) {
            throw new BadInputException("cannot write " + file + ": it is not writable");
        }
        List<SizedVehicle> sized = new VehicleSizing(console, interrupt, objective, all).size(file, arrangements,
                report.practiceFile());
        if (sized.isEmpty()) {
            return ExitCode.BAD_INPUT.code();
        }
        String element = explained(sized);
        if (apply) {
            applyAll(sized);
        }
        report.write(console, (out, style) -> write(out, style, sized, element));
        boolean troubles = sized.stream().anyMatch(each -> !each.result().troubles().isEmpty());
        return (troubles ? ExitCode.FINDINGS : ExitCode.CLEAN).code();
    }

    /** Id of the cable or way to be explained; empty for all, null for none. */
    private String explained(List<SizedVehicle> sized) {
        if (explain == null || explain.isEmpty()) {
            return explain;
        }
        for (SizedVehicle each : sized) {
            String id = each.element(explain);
            if (id != null && new SizeFigures(each).of(id).findAny().isPresent()) {
                return id;
            }
        }
        throw new BadInputException("no cable, fuse or load " + explain + " was sized in " + sized.get(0).plan().vehicle());
    }

    private void applyAll(List<SizedVehicle> sized) {
        Vehicle vehicle = sized.get(0).vehicle();
        int changed = 0;
        try {
            for (SizedVehicle each : sized) {
                changed += SizingEdits.apply(vehicle, choices(each), all);
            }
            VehicleResource resource = (VehicleResource) vehicle.eResource();
            if (changed > 0) {
                VehicleFiles.save(resource);
            }
        } catch (IOException problem) {
            throw new BadInputException("cannot write " + file + ": " + problem.getMessage());
        } catch (IllegalArgumentException refused) {
            throw new BadInputException("nothing was written to " + file + ": " + refused.getMessage());
        }
        new SharedElements(vehicle, sized).told().ifPresent(console.err()::println);
        console.err().println(changed == 0 ? "loomwright: nothing to change in " + file
                : "loomwright: " + file + " written, " + changed + (changed == 1 ? " element changed" : " elements changed"));
    }

    private static List<SizingEdits.Choice> choices(SizedVehicle sized) {
        List<SizingEdits.Choice> choices = new ArrayList<>();
        sized.result().cables().forEach(cable -> choices.add(new SizingEdits.Section(cable.id(), cable.afterMm2())));
        sized.result().protectors().stream().filter(each -> each.afterPart() != null)
                .forEach(each -> choices.add(new SizingEdits.Fitted(each.way(), each.afterPart())));
        return choices;
    }

    private void write(PrintWriter out, Style style, List<SizedVehicle> sized, String element) throws IOException {
        if (report.json()) {
            new SizeJson(out).write(sized, apply, element);
            return;
        }
        SizeText text = new SizeText(out, style);
        if (element != null) {
            sized.forEach(each -> text.explain(each, element));
            return;
        }
        sized.forEach(text::write);
        WrappedText.write(out, "", "", Caution.TEXT);
    }
}
