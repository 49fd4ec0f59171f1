// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The folders that files may refer into. A vehicle file that came from somebody else must not make the program read
 * whatever it likes: a reference out of these folders is a fault. Symbolic links are followed before the check.
 *
 * <p>Unless folders are named, opening a file allows the folder above the file's own folder with all below it, so that
 * {@code fleet/heron.vehicle} may use {@code parts/base.parts}, {@code team.practice} and {@code ../shared/base.parts}.
 * Directly below the root of a file system only the file's own folder is allowed.
 */
public final class AllowedFolders {
    private final Set<Path> folders = new LinkedHashSet<>();
    private final Set<Path> files = new LinkedHashSet<>();
    private final boolean grows;

    private AllowedFolders(boolean grows) {
        this.grows = grows;
    }

    /** Exactly these folders with all below them. */
    public static AllowedFolders of(List<Path> folders) {
        AllowedFolders allowed = new AllowedFolders(false);
        folders.forEach(folder -> allowed.folders.add(real(folder)));
        return allowed;
    }

    /** The folders around each file that is opened. */
    public static AllowedFolders aroundOpenedFiles() {
        return new AllowedFolders(true);
    }

    /** Notes that a person asked for a file by its name: it may be read wherever it is. */
    public void opened(Path file) {
        files.add(real(file));
        Path folder = real(file.toAbsolutePath().normalize().getParent());
        if (grows && folder != null) {
            Path above = folder.getParent();
            folders.add(above == null || above.getParent() == null ? folder : above);
        }
    }

    /** True when a file may be read or written. */
    public boolean allows(Path file) {
        Path real = real(file);
        return files.contains(real) || folders.stream().anyMatch(real::startsWith);
    }

    /** The folders in words, for messages. */
    public String describe() {
        return folders.stream().map(Path::toString).collect(Collectors.joining(", "));
    }

    /** The path with all symbolic links of its existing part followed. */
    private static Path real(Path path) {
        Path rest = null;
        Path existing = path.toAbsolutePath().normalize();
        while (existing != null) {
            if (Files.exists(existing)) {
                try {
                    Path real = existing.toRealPath();
                    return rest == null ? real : real.resolve(rest).normalize();
                } catch (IOException e) {
                    // not readable: go on with the folder above it
                }
            }
            rest = rest == null ? existing.getFileName() : existing.getFileName() == null ? rest
                    : existing.getFileName().resolve(rest);
            existing = existing.getParent();
        }
        return path.toAbsolutePath().normalize();
    }
}
