// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a file held at some time, by its content: times of change say too little, as tools set them back.
 *
 * @param digest SHA-256 of the content in hexadecimal digits; empty when there was no file
 */
record FileState(String digest) {
    /** No file. */
    static final FileState NONE = new FileState("");

    /** The state of a file now. */
    static FileState of(Path file) throws IOException {
        try {
            return of(Files.readAllBytes(file));
        } catch (NoSuchFileException gone) {
            return NONE;
        }
    }

    /** The state of a file with this content. */
    static FileState of(byte[] content) {
        try {
            return new FileState(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content)));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }

    /** True when there was a file. */
    boolean exists() {
        return !digest.isEmpty();
    }
}
