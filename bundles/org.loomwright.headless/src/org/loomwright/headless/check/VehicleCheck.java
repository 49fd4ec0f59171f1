// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.Progress;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Checks vehicles one after the other; vehicles with the same libraries share one catalogue. */
public final class VehicleCheck {
    private final Practice practice;
    private final List<String> cases;
    private final Progress progress;
    private Catalogue catalogue = Catalogue.EMPTY;

    /**
     * A check.
     *
     * @param practice practice to follow instead of the vehicles' own, or null
     * @param cases    names of the cases to look at; empty for all
     * @param progress what is told of the work, and what stops it
     */
    public VehicleCheck(Practice practice, List<String> cases, Progress progress) {
        this.practice = practice;
        this.cases = List.copyOf(cases);
        this.progress = progress;
    }

    /** Checks one arrangement of a vehicle; null for a vehicle without any. */
    public CheckedVehicle check(String file, Vehicle vehicle, Arrangement arrangement) {
        AssemblyResult assembled = Assembly.assemble(vehicle, arrangement, practice, catalogue);
        catalogue = assembled.catalogue();
        Plan plan = assembled.plan();
        known(plan);
        CheckOptions options = new CheckOptions(Set.copyOf(cases));
        int solvedCases = (int) plan.cases().stream().filter(state -> options.wants(state.name())).count();
        progress.doing(file, solvedCases + RuleCatalogue.standard().rules().size());
        StudyResult result = Check.run(plan, assembled.problems(), options, progress.monitor());
        boolean adopted = arrangement != null && vehicle.getAdopted() == arrangement;
        return new CheckedVehicle(file, vehicle.getLabel() == null ? "" : vehicle.getLabel(), adopted, plan, result);
    }

    private void known(Plan plan) {
        List<String> names = new ArrayList<>(plan.cases().stream().map(Plan.Case::name).toList());
        for (String wanted : cases) {
            if (!names.contains(wanted)) {
                throw new BadInputException("vehicle " + plan.vehicle() + " has no case " + wanted + "; it has "
                        + String.join(", ", names));
            }
        }
    }
}
