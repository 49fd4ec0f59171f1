// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.input;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        Map<Path, Path> files = new LinkedHashMap<>();
        for (Path path : named) {
            if (Files.isDirectory(path)) {
                below(path).forEach(file -> add(file, files));
            } else if (Files.exists(path)) {
                add(path, files);
            } else {
                throw new BadInputException("no such file or folder: " + path);
            }
        }
        return new ArrayList<>(files.values());
    }

    /** One file may be named in several ways; it keeps the first one, without a leading dot. */
    private static void add(Path file, Map<Path, Path> files) {
        boolean dotted = file.getNameCount() > 1 && file.getName(0).toString().equals(".");
        files.putIfAbsent(file.toAbsolutePath().normalize(), dotted ? file.subpath(1, file.getNameCount()) : file);
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
