// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.StockLengths;
import org.loomwright.engine.sizing.ArrangementsSizing;
import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.engine.sizing.SizingOptions;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.headless.Console;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.Progress;
import org.loomwright.headless.input.VehicleRun;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Sizes arrangements of a vehicle file together, so that what they share suits all of them. */
final class VehicleSizing {
    private final Console console;
    private final Interrupt interrupt;
    private final SizingObjective objective;
    private final boolean openPersonChoices;

    VehicleSizing(Console console, Interrupt interrupt, SizingObjective objective, boolean openPersonChoices) {
        this.console = console;
        this.interrupt = interrupt;
        this.objective = objective;
        this.openPersonChoices = openPersonChoices;
    }

    /** Sizes the arrangements wanted; empty when a file has faults, which are told. */
    List<SizedVehicle> size(Path file, List<String> names, Path practiceFile) {
        List<SizedVehicle> sized = new ArrayList<>();
        new VehicleRun(console, interrupt).open(file, names, practiceFile).ifPresent(opened -> {
            try (Progress progress = new Progress(console, interrupt, 1)) {
                progress.at(file.toString());
                size(file.toString(), opened, progress, sized);
            }
        });
        return sized;
    }

    private void size(String file, VehicleRun.Opened opened, Progress progress, List<SizedVehicle> sized) {
        Vehicle vehicle = opened.vehicle();
        Catalogue catalogue = Catalogue.EMPTY;
        List<AssemblyResult> assembled = new ArrayList<>();
        for (Arrangement arrangement : opened.arrangements()) {
            assembled.add(Assembly.assemble(vehicle, arrangement, opened.practice(), catalogue));
            catalogue = assembled.get(0).catalogue();
        }
        progress.doing(file, assembled.stream().mapToInt(each -> each.plan().cases().size()).sum());
        List<SizingResult> results = ArrangementsSizing.run(assembled, new SizingOptions(objective, openPersonChoices,
                StockLengths.of(vehicle), true), progress.monitor());
        for (int i = 0; i < results.size(); i++) {
            Arrangement arrangement = opened.arrangements().get(i);
            sized.add(new SizedVehicle(file, vehicle, arrangement != null && vehicle.getAdopted() == arrangement,
                    assembled.get(i).plan(), results.get(i)));
        }
    }
}
