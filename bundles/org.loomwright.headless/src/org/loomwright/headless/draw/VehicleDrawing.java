// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.draw;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomwright.diagram.earth.EarthScene;
import org.loomwright.diagram.line.LineScene;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.paper.PaperChoice;
import org.loomwright.diagram.paper.PlanPlotter;
import org.loomwright.diagram.paper.SheetMaker;
import org.loomwright.diagram.paper.SheetSet;
import org.loomwright.diagram.paper.TitleData;
import org.loomwright.diagram.plan.PlanScene;
import org.loomwright.diagram.plan.PlanView;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.DrawingPreferences;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.StudyView;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Console;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.Progress;
import org.loomwright.headless.input.Arrangements;
import org.loomwright.headless.input.VehicleReader;
import org.loomwright.model.files.ReadFault;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Reads a vehicle, checks one arrangement and draws it. */
final class VehicleDrawing {
    private final Console console;
    private final Interrupt interrupt;
    private final Wanted wanted;

    VehicleDrawing(Console console, Interrupt interrupt, Wanted wanted) {
        this.console = console;
        this.interrupt = interrupt;
        this.wanted = wanted;
    }

    /**
     * What to draw.
     *
     * @param arrangement name, or null for the adopted one
     * @param caseName    name, or null for all cases
     * @param overlay     overlay, or null
     * @param lost        designation of a strap that is taken out, with or without its minus, or null
     */
    record Wanted(Diagram diagram, PlanView view, String arrangement, String caseName, OverlayKind overlay, String lost) {
    }

    /** The drawing as on a screen. */
    Scene scene(DrawingRequest request, TextMeasure type) {
        return switch (wanted.diagram()) {
            case PLAN -> PlanScene.of(request, wanted.view(), type);
            case LINE -> LineScene.of(request, type);
            case EARTH -> EarthScene.of(request, type);
        };
    }

    /**
     * The drawing on sheets of paper.
     *
     * @param scale n of the scale 1 : n of a plan; 0 to choose one
     * @throws BadInputException when it does not fit
     */
    SheetSet sheets(DrawingRequest request, PaperChoice paper, int scale, TitleData title, TextMeasure type) {
        try {
            return wanted.diagram() == Diagram.PLAN ? new PlanPlotter(request, wanted.view(), type).sheets(paper, scale, title)
                    : new SheetMaker(type).sheets(scene(request, type), paper, title);
        } catch (IllegalArgumentException tooLarge) {
            throw new BadInputException(tooLarge.getMessage());
        }
    }

    /**
     * What is to be drawn, checked.
     *
     * @param practiceFile practice to follow instead of the vehicle's own, or null
     * @param faults       takes what is wrong with the files; nothing can be drawn then, and null is given
     */
    DrawingRequest request(Path file, Path practiceFile, List<ReadFault> faults) {
        VehicleReader reader = new VehicleReader();
        Practice practice = practiceFile == null ? null : reader.practice(practiceFile, faults);
        if (!faults.isEmpty()) {
            return null;
        }
        VehicleReader.Read read = reader.vehicle(file);
        faults.addAll(read.faults());
        if (read.vehicle() == null || !faults.isEmpty()) {
            return null;
        }
        List<Arrangement> found = Arrangements.of(read.vehicle(),
                wanted.arrangement() == null ? List.of() : List.of(wanted.arrangement()));
        if (found.size() > 1) {
            throw new BadInputException("vehicle " + read.vehicle().getName()
                    + " has several arrangements; choose one with --arrangement");
        }
        try (Progress progress = new Progress(console, interrupt, 1)) {
            progress.at(file.toString());
            return request(file.toString(), read.vehicle(), found.get(0), practice, progress);
        }
    }

    private DrawingRequest request(String file, Vehicle vehicle, Arrangement arrangement, Practice practice, Progress progress) {
        AssemblyResult assembled = Assembly.assemble(vehicle, arrangement, practice);
        Plan plan = assembled.plan();
        List<Plan.Case> states = plan.cases().stream()
                .filter(state -> wanted.caseName() == null || state.name().equals(wanted.caseName())).toList();
        if (states.isEmpty() && wanted.caseName() != null) {
            throw new BadInputException("vehicle " + plan.vehicle() + " has no case " + wanted.caseName() + "; it has "
                    + String.join(", ", plan.cases().stream().map(Plan.Case::name).toList()));
        }
        progress.doing(file, states.size() + RuleCatalogue.standard().rules().size());
        List<SolvedCase> solved = new ArrayList<>(CaseSolver.solveAll(plan, states, progress.monitor()));
        CheckContext context = new CheckContext(plan, solved, NetFinder.find(plan), assembled.problems(),
                new SharedStudies(progress.monitor()));
        List<Finding> findings = Check.over(context,
                new CheckOptions(wanted.caseName() == null ? Set.of() : Set.of(wanted.caseName())), progress.monitor()).findings();
        return new DrawingRequest(vehicle, arrangement, StudyView.of(context, findings), wanted.caseName(), wanted.overlay(),
                DrawingPreferences.metric(), strap(plan));
    }

    private String strap(Plan plan) {
        if (wanted.lost() == null) {
            return null;
        }
        String id = wanted.lost().replaceFirst("^-", "");
        List<String> straps = plan.bonds().stream().map(Plan.Bond::id).toList();
        if (!straps.contains(id)) {
            throw new BadInputException("vehicle " + plan.vehicle() + " has no strap " + wanted.lost()
                    + (straps.isEmpty() ? "" : "; it has " + String.join(", ", straps)));
        }
        return id;
    }
}
