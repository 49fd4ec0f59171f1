// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import java.util.List;
import org.loomwright.engine.assembly.AssemblyProblem;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.StockLengths;
import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.engine.sizing.SizingOptions;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.engine.sizing.SizingStudy;
import org.loomwright.headless.Progress;
import org.loomwright.model.vehicle.Vehicle;

/** Sizes everything but wiring of the base vehicle, so that arrangements are compared on equal terms. */
final class SizedFirst implements VehicleComparison.Preparation {
    private final SizingObjective objective;

    SizedFirst(SizingObjective objective) {
        this.objective = objective;
    }

    @Override
    public VehicleComparison.Prepared prepare(Vehicle vehicle, AssemblyResult assembled, Progress progress) {
        progress.doing(assembled.plan().arrangement(), assembled.plan().cases().size());
        SizingResult result = SizingStudy.run(assembled, new SizingOptions(objective, true, StockLengths.of(vehicle), false),
                progress.monitor());
        List<AssemblyProblem> left = assembled.problems().stream()
                .filter(problem -> result.cables().stream().noneMatch(cable -> cable.id().equals(problem.element()))).toList();
        return new VehicleComparison.Prepared(result.plan(), left);
    }
}
