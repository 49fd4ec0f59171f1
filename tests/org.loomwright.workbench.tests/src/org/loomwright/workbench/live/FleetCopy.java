// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.live;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A copy of the demo fleet that a test may write to. */
public final class FleetCopy {
    private static final Path FLEET = Path.of("../../bundles/org.loomwright.samples/fleet");

    private FleetCopy() {
    }

    /** Copies the fleet into a folder; gives the vehicle file of a name there. */
    public static Path vehicle(Path folder, String name) throws IOException {
        try (Stream<Path> files = Files.walk(FLEET)) {
            for (Path file : files.toList()) {
                Path to = folder.resolve(FLEET.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else if (!Files.exists(to)) {
                    Files.copy(file, to);
                }
            }
        }
        return folder.resolve(name + ".vehicle");
    }
}
