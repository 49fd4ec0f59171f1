// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.io.IOException;
import java.io.OutputStream;
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
     * Writes the file.
     *
     * @throws BadInputException when the folder is missing or cannot be written
     */
    public void write(Content content) {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new BadInputException("cannot write " + target + ": no such folder");
        }
        if (Files.isDirectory(target)) {
            throw new BadInputException("cannot write " + target + ": it is a folder");
        }
        Path temporary = null;
        try {
            // not createTempFile: that would leave the result readable by its owner only
            temporary = folder.resolve("." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
            try (OutputStream out = Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW,
                    StandardOpenOption.WRITE)) {
                content.writeTo(out);
            }
            move(temporary);
        } catch (IOException problem) {
            throw new BadInputException("cannot write " + target + ": " + problem.getMessage());
        } finally {
            discard(temporary);
        }
    }

    private void move(Path temporary) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void discard(Path temporary) {
        if (temporary != null) {
            try {
                Files.deleteIfExists(temporary);
            } catch (IOException leftBehind) {
                temporary.toFile().deleteOnExit();
            }
        }
    }
}
