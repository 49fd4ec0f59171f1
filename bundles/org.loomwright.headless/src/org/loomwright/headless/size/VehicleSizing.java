// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.StockLengths;
import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.engine.sizing.SizingOptions;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.engine.sizing.SizingStudy;
import org.loomwright.headless.Progress;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Sizes arrangements one after the other, on one catalogue. */
final class VehicleSizing {
    private final String file;
    private final SizingObjective objective;
    private final boolean openPersonChoices;
    private Catalogue catalogue = Catalogue.EMPTY;

    VehicleSizing(String file, SizingObjective objective, boolean openPersonChoices) {
        this.file = file;
        this.objective = objective;
        this.openPersonChoices = openPersonChoices;
    }

    /** Sizes one arrangement of a vehicle; null for a vehicle without any. */
    SizedVehicle size(Vehicle vehicle, Arrangement arrangement, Practice practice, Progress progress) {
        AssemblyResult assembled = Assembly.assemble(vehicle, arrangement, practice, catalogue);
        catalogue = assembled.catalogue();
        progress.doing(file, assembled.plan().cases().size());
        SizingResult result = SizingStudy.run(assembled.plan(), assembled.problems(), new SizingOptions(objective,
                openPersonChoices, StockLengths.of(vehicle), true), progress.monitor());
        return new SizedVehicle(file, vehicle, arrangement != null && vehicle.getAdopted() == arrangement, assembled.plan(),
                result);
    }
}
