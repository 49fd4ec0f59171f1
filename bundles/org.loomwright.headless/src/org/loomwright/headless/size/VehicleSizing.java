// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.StockLengths;
import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.engine.sizing.SizingOptions;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.engine.sizing.SizingStudy;
import org.loomwright.headless.Console;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.Progress;
import org.loomwright.headless.input.Arrangements;
import org.loomwright.headless.input.VehicleReader;
import org.loomwright.model.files.ReadFault;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Reads a vehicle file and sizes its arrangements one after the other, on one catalogue. */
final class VehicleSizing {
    private final Console console;
    private final Interrupt interrupt;
    private final SizingObjective objective;
    private final boolean openPersonChoices;
    private Catalogue catalogue = Catalogue.EMPTY;

    VehicleSizing(Console console, Interrupt interrupt, SizingObjective objective, boolean openPersonChoices) {
        this.console = console;
        this.interrupt = interrupt;
        this.objective = objective;
        this.openPersonChoices = openPersonChoices;
    }

    /**
     * Sizes the arrangements wanted.
     *
     * @param names        arrangements; empty for the adopted one
     * @param practiceFile practice to follow instead of the vehicle's own, or null
     * @param faults       takes what is wrong with the files; nothing is sized then
     */
    List<SizedVehicle> size(Path file, List<String> names, Path practiceFile, List<ReadFault> faults) {
        VehicleReader reader = new VehicleReader();
        Practice practice = practiceFile == null ? null : reader.practice(practiceFile, faults);
        List<SizedVehicle> sized = new ArrayList<>();
        if (!faults.isEmpty()) {
            return sized;
        }
        VehicleReader.Read read = reader.vehicle(file);
        faults.addAll(read.faults());
        if (read.vehicle() == null) {
            return sized;
        }
        List<Arrangement> wanted = Arrangements.of(read.vehicle(), names);
        try (Progress progress = new Progress(console, interrupt, wanted.size())) {
            for (Arrangement arrangement : wanted) {
                progress.at(arrangement == null ? file.toString() : arrangement.getName());
                sized.add(size(file.toString(), read.vehicle(), arrangement, practice, progress));
            }
        }
        return sized;
    }

    private SizedVehicle size(String file, Vehicle vehicle, Arrangement arrangement, Practice practice, Progress progress) {
        AssemblyResult assembled = Assembly.assemble(vehicle, arrangement, practice, catalogue);
        catalogue = assembled.catalogue();
        progress.doing(file, assembled.plan().cases().size());
        SizingResult result = SizingStudy.run(assembled.plan(), assembled.problems(), new SizingOptions(objective,
                openPersonChoices, StockLengths.of(vehicle), true), progress.monitor());
        return new SizedVehicle(file, vehicle, arrangement != null && vehicle.getAdopted() == arrangement, assembled.plan(),
                result);
    }
}
