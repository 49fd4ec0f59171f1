// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyProblem;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.compare.DeviceSheet;
import org.loomwright.engine.compare.FigureStudy;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.headless.Progress;
import org.loomwright.headless.check.CheckedVehicle;
import org.loomwright.headless.input.Arrangements;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Solves and checks arrangements one after the other, on one catalogue, and measures them. */
final class VehicleComparison {
    private final String file;
    private final Preparation preparation;
    private Catalogue catalogue = Catalogue.EMPTY;

    /** What is done to a plan before it is measured. */
    @FunctionalInterface
    interface Preparation {
        /** As it is. */
        Preparation NONE = (vehicle, assembled, progress) -> new Prepared(assembled.plan(), assembled.problems());

        Prepared prepare(Vehicle vehicle, AssemblyResult assembled, Progress progress);
    }

    /** A plan made ready, and what could not be assembled of it. */
    record Prepared(Plan plan, List<AssemblyProblem> problems) {
    }

    /** Arrangements of a file, made ready in a way. */
    VehicleComparison(String file, Preparation preparation) {
        this.file = file;
        this.preparation = preparation;
    }

    /** Measures one arrangement of a vehicle; null for a vehicle without any. */
    StudiedArrangement study(Vehicle vehicle, Arrangement arrangement, Practice practice, Progress progress) {
        AssemblyResult assembled = Assembly.assemble(vehicle, arrangement, practice, catalogue);
        catalogue = assembled.catalogue();
        Prepared prepared = preparation.prepare(vehicle, assembled, progress);
        Plan plan = prepared.plan();
        progress.doing(file, plan.cases().size() + RuleCatalogue.standard().rules().size());
        CheckContext context = new CheckContext(plan, CaseSolver.solveAll(plan, progress.monitor()), NetFinder.find(plan),
                prepared.problems(), new SharedStudies(progress.monitor()));
        StudyResult result = Check.over(context, new CheckOptions(Set.of()), progress.monitor());
        boolean adopted = arrangement != null && vehicle.getAdopted() == arrangement;
        CheckedVehicle checked = new CheckedVehicle(file, vehicle.getLabel() == null ? "" : vehicle.getLabel(), adopted, plan,
                result);
        return new StudiedArrangement(arrangement == null || arrangement.getLabel() == null ? "" : arrangement.getLabel(),
                checked, FigureStudy.of(context, DeviceSheet.of(vehicle, arrangement), result.findings()));
    }
}
