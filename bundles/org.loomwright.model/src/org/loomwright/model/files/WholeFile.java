// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.ByteBuffer;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;

/** Writes files as a whole or not at all. */
final class WholeFile {
    private static final int NAMES_TRIED = 1000;

    private WholeFile() {
    }

    /**
     * Writes under a temporary name in the same folder and then moves; a symbolic link stays one, its target is written.
     *
     * @return false when the file has this content already and was left alone
     */
    static boolean write(Path path, byte[] bytes) throws IOException {
        boolean exists = Files.exists(path);
        Path file = exists ? path.toRealPath() : path.toAbsolutePath();
        if (exists && Files.isDirectory(file)) {
            throw new RefusedFileException("is not saved: it is a folder", null);
        }
        if (exists && Files.size(file) == bytes.length && Arrays.equals(Files.readAllBytes(file), bytes)) {
            return false;
        }
        if (exists && !Files.isWritable(file)) {
            throw new RefusedFileException("is not saved: no permission to write it", null);
        }
        Path temporary = temporary(file);
        try {
            try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            if (exists) {
                keepPermissions(file, temporary);
            }
            move(temporary, file);
        } finally {
            Files.deleteIfExists(temporary);
        }
        return true;
    }

    private static Path temporary(Path file) throws IOException {
        for (int i = 0; i < NAMES_TRIED; i++) {
            try {
                return Files.createFile(file.resolveSibling("." + file.getFileName() + "." + i + ".tmp"));
            } catch (FileAlreadyExistsException e) {
                // left by a program that was stopped, or another one is saving: take the next name
            }
        }
        throw new RefusedFileException("is not saved: too many temporary files beside it", null);
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        PosixFileAttributeView now = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (old != null && now != null) {
            now.setPermissions(old.readAttributes().permissions());
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
