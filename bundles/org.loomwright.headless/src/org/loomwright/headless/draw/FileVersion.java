// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.draw;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.loomwright.headless.BadInputException;

/** What tells one version of a file from another. */
final class FileVersion {
    private static final int BYTES = 6;

    private FileVersion() {
    }

    /** The file's name and the beginning of its SHA-256 sum, for example {@code heron.vehicle, SHA-256 0f1e2d3c4b5a}. */
    static String of(Path file) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
            return file.getFileName() + ", SHA-256 " + HexFormat.of().formatHex(sum, 0, BYTES);
        } catch (IOException unreadable) {
            throw new BadInputException("cannot read " + file + ": " + unreadable.getMessage());
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }
}
