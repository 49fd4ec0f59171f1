// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.input;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.headless.BadInputException;
import org.loomwright.model.files.VehicleFiles;

/** The vehicle files that a person names: files as they are, folders with all vehicle files below them. */
public final class VehiclePaths {
    private VehiclePaths() {
    }

    /**
     * Each file once, in the order named.
     *
     * @throws BadInputException when a path does not exist, cannot be read, or is a folder without vehicle files
     */
    public static List<Path> of(List<Path> named) {
        Set<Path> files = new LinkedHashSet<>();
        for (Path path : named) {
            if (Files.isDirectory(path)) {
                files.addAll(below(path));
            } else if (Files.exists(path)) {
                files.add(path);
            } else {
                throw new BadInputException("no such file or folder: " + path);
            }
        }
        return new ArrayList<>(files);
    }

    private static List<Path> below(Path folder) {
        try {
            List<Path> found = VehicleFiles.find(folder);
            if (found.isEmpty()) {
                throw new BadInputException("no vehicle file in " + folder + "; expected files named *.vehicle");
            }
            return found;
        } catch (IOException problem) {
            throw new BadInputException("cannot list " + folder + ": " + problem.getMessage());
        }
    }
}
