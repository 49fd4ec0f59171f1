// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.earth.EarthStudy;
import org.loomwright.engine.earth.EarthTable;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Progress;
import org.loomwright.headless.check.CheckedVehicle;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Studies the earth return of arrangements one after the other, on one catalogue. */
final class VehicleEarth {
    private final String file;
    private final List<String> cases;
    private Catalogue catalogue = Catalogue.EMPTY;

    /** Arrangements of a file, in the cases named or in all. */
    VehicleEarth(String file, List<String> cases) {
        this.file = file;
        this.cases = List.copyOf(cases);
    }

    /** Studies one arrangement of a vehicle; null for a vehicle without any. */
    StudiedEarth study(Vehicle vehicle, Arrangement arrangement, Practice practice, Progress progress) {
        AssemblyResult assembled = Assembly.assemble(vehicle, arrangement, practice, catalogue);
        catalogue = assembled.catalogue();
        Plan plan = assembled.plan();
        List<Plan.Case> wanted = wanted(plan);
        progress.doing(file, wanted.size() + plan.bonds().size());
        List<SolvedCase> solved = new ArrayList<>();
        for (Plan.Case state : wanted) {
            solved.add(CaseSolver.solve(plan, state, progress.monitor()));
            progress.monitor().worked(1);
        }
        CheckContext context = new CheckContext(plan, solved, NetFinder.find(plan), assembled.problems());
        EarthTable table = EarthStudy.of(context, progress.monitor());
        boolean adopted = arrangement != null && vehicle.getAdopted() == arrangement;
        return new StudiedEarth(new CheckedVehicle(file, vehicle.getLabel() == null ? "" : vehicle.getLabel(), adopted, plan,
                table.result()), table);
    }

    private List<Plan.Case> wanted(Plan plan) {
        List<String> names = plan.cases().stream().map(Plan.Case::name).toList();
        for (String wanted : cases) {
            if (!names.contains(wanted)) {
                throw new BadInputException("vehicle " + plan.vehicle() + " has no case " + wanted + "; it has "
                        + String.join(", ", names));
            }
        }
        return plan.cases().stream().filter(state -> cases.isEmpty() || cases.contains(state.name())).toList();
    }
}
