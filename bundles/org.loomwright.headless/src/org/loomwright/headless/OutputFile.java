// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file whole or not at all: under a temporary name in the same folder, then moved. */
public final class OutputFile {
    private final Path target;

    /** A file to be written. */
    public OutputFile(Path target) {
        this.target = target;
    }

    /** What writes the content. */
    @FunctionalInterface
    public interface Content {
        /** Writes everything; the stream is closed by the caller. */
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Checks before the work begins that the file has a place.
     *
     * @throws BadInputException when the folder is missing or cannot be written, or the file is a folder
     */
    public void checkPlace() {
        Path folder = folder();
        if (folder == null || !Files.isDirectory(folder)) {
            throw refused("there is no folder " + (folder == null ? target : folder));
        }
        if (Files.isDirectory(target)) {
            throw refused("it is a folder");
        }
        if (!Files.isWritable(folder)) {
            throw refused("no permission to write in " + folder);
        }
    }

    /**
     * Writes the file.
     *
     * @throws BadInputException when the folder is missing or cannot be written
     */
    public void write(Content content) {
        checkPlace();
        // not createTempFile: that would leave the result readable by its owner only
        Path temporary = folder().resolve("." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            Files.deleteIfExists(temporary);
            try (OutputStream out = Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW,
                    StandardOpenOption.WRITE)) {
                content.writeTo(out);
            }
            move(temporary);
        } catch (AccessDeniedException problem) {
            throw refused("no permission");
        } catch (IOException problem) {
            throw refused(problem.getMessage());
        } finally {
            discard(temporary);
        }
    }

    private Path folder() {
        return target.toAbsolutePath().getParent();
    }

    private BadInputException refused(String why) {
        return new BadInputException("cannot write " + target + ": " + why);
    }

    private void move(Path temporary) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void discard(Path temporary) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException leftBehind) {
            temporary.toFile().deleteOnExit();
        }
    }
}
