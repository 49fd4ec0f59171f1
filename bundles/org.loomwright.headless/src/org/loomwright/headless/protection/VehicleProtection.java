// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.protection;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.ProtectionRules;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.headless.Progress;
import org.loomwright.headless.check.CheckedVehicle;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Studies the protection of arrangements one after the other, on one catalogue. */
final class VehicleProtection {
    private final String file;
    private Catalogue catalogue = Catalogue.EMPTY;

    VehicleProtection(String file) {
        this.file = file;
    }

    /** Studies one arrangement of a vehicle; null for a vehicle without any. */
    StudiedProtection study(Vehicle vehicle, Arrangement arrangement, Practice practice, Progress progress) {
        AssemblyResult assembled = Assembly.assemble(vehicle, arrangement, practice, catalogue);
        catalogue = assembled.catalogue();
        Plan plan = assembled.plan();
        progress.doing(file, plan.cases().size() + ProtectionRules.count());
        List<SolvedCase> solved = new ArrayList<>();
        for (Plan.Case state : plan.cases()) {
            solved.add(CaseSolver.solve(plan, state, progress.monitor()));
            progress.monitor().worked(1);
        }
        CheckContext context = new CheckContext(plan, solved, NetFinder.find(plan), assembled.problems(),
                new SharedStudies(progress.monitor()));
        StudyResult result = ProtectionRules.judge(context, progress.monitor());
        boolean adopted = arrangement != null && vehicle.getAdopted() == arrangement;
        return new StudiedProtection(new CheckedVehicle(file, vehicle.getLabel() == null ? "" : vehicle.getLabel(), adopted,
                plan, result), context);
    }
}
