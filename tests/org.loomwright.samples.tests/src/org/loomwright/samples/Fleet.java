// SPDX-License-Identifier: EPL-2.0
package org.loomwright.samples;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.loomwright.headless.Console;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.Progress;
import org.loomwright.headless.check.CheckedVehicle;
import org.loomwright.headless.check.VehicleCheck;
import org.loomwright.headless.input.VehicleReader;
import org.loomwright.model.vehicle.Arrangement;

/** The demo fleet as it lies in the project. */
final class Fleet {
    /** Its folder. */
    static final Path FOLDER = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");

    private Fleet() {
    }

    /** Files of some kinds, sorted by path. */
    static List<Path> files(String... extensions) {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files.filter(file -> Stream.of(extensions).anyMatch(end -> file.toString().endsWith("." + end))).sorted()
                    .toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Text of a file. */
    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Checks every arrangement of every vehicle. */
    static List<CheckedVehicle> checked() {
        Console silent = new Console(new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()), false, false);
        VehicleReader reader = new VehicleReader();
        List<CheckedVehicle> checked = new ArrayList<>();
        try (Progress progress = new Progress(silent, new Interrupt(), 0)) {
            VehicleCheck check = new VehicleCheck(null, List.of(), progress);
            for (Path file : files("vehicle")) {
                VehicleReader.Read read = reader.vehicle(file);
                if (!read.faults().isEmpty()) {
                    throw new IllegalStateException("faults in the fleet: " + read.faults());
                }
                for (Arrangement arrangement : read.vehicle().getArrangements()) {
                    checked.add(check.check(file.toString(), read.vehicle(), arrangement));
                }
            }
        }
        return checked;
    }
}
