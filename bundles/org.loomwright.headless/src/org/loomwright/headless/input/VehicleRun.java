// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.input;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.headless.Console;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.Progress;
import org.loomwright.model.files.ReadFault;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Reads one vehicle file and does a step with each arrangement wanted, one after the other; faults end it before the first. */
public final class VehicleRun {
    private final Console console;
    private final Interrupt interrupt;

    /** A run told on a console, which an interrupt stops. */
    public VehicleRun(Console console, Interrupt interrupt) {
        this.console = console;
        this.interrupt = interrupt;
    }

    /**
     * What is done with an arrangement.
     *
     * @param <T> what comes of it
     */
    @FunctionalInterface
    public interface Step<T> {
        /**
         * Does it.
         *
         * @param arrangement the arrangement; null for a vehicle without any
         * @param practice    practice to follow instead of the vehicle's own, or null
         */
        T of(Vehicle vehicle, Arrangement arrangement, Practice practice, Progress progress);
    }

    /** A vehicle with its arrangements wanted, and a practice to follow instead of its own, or null. */
    public record Opened(Vehicle vehicle, List<Arrangement> arrangements, Practice practice) {
    }

    /**
     * Reads the files.
     *
     * @param names        arrangements as in {@link Arrangements#of}
     * @param practiceFile practice to follow instead of the vehicle's own, or null
     * @return nothing when a file has faults, which are told on the error console
     */
    public Optional<Opened> open(Path file, List<String> names, Path practiceFile) {
        List<ReadFault> faults = new ArrayList<>();
        VehicleReader reader = new VehicleReader();
        Practice practice = practiceFile == null ? null : reader.practice(practiceFile, faults);
        Vehicle vehicle = null;
        if (faults.isEmpty()) {
            VehicleReader.Read read = reader.vehicle(file);
            faults.addAll(read.faults());
            vehicle = read.vehicle();
        }
        faults.stream().map(FaultLine::of).forEach(console.err()::println);
        return vehicle == null || !faults.isEmpty() ? Optional.empty()
                : Optional.of(new Opened(vehicle, Arrangements.of(vehicle, names), practice));
    }

    /** Does a step with each arrangement; empty when a file has faults, see {@link #open}. */
    public <T> List<T> each(Path file, List<String> names, Path practiceFile, Step<T> step) {
        List<T> done = new ArrayList<>();
        open(file, names, practiceFile).ifPresent(opened -> {
            try (Progress progress = new Progress(console, interrupt, opened.arrangements().size())) {
                for (Arrangement arrangement : opened.arrangements()) {
                    progress.at(arrangement == null ? file.toString() : arrangement.getName());
                    done.add(step.of(opened.vehicle(), arrangement, opened.practice(), progress));
                }
            }
        });
        return done;
    }
}
