// SPDX-License-Identifier: EPL-2.0
package org.loomwright.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Writes the vehicles that the workbench is measured with: one of 60 loads, one with more than 200 devices and 400 cables. */
public final class WorkbenchVehicles {
    private static final List<Integer> LOADS = List.of(60, 180);

    private WorkbenchVehicles() {
    }

    /** Argument: the folder to write to. Prints the files. Run in the folder of this module. */
    public static void main(String[] args) throws IOException {
        for (int loads : LOADS) {
            Path made = Path.of(BenchVehicle.open(loads).eResource().getURI().toFileString());
            Path folder = Path.of(args[0]).resolve("loads-" + loads);
            try (Stream<Path> files = Files.walk(made.getParent())) {
                for (Path file : files.toList()) {
                    Path to = folder.resolve(made.getParent().relativize(file).toString());
                    if (Files.isDirectory(file)) {
                        Files.createDirectories(to);
                    } else {
                        Files.write(to, Files.readAllBytes(file));
                    }
                }
            }
            System.out.println(folder.resolve(made.getFileName()));
        }
    }
}
