// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.IOException;

/** A file that is not read or written; the message says why in words that fit after the file's name. */
public final class RefusedFileException extends IOException {
    private static final long serialVersionUID = 1L;
    private final String expected;

    /**
     * @param message  why, for example {@code does not exist}
     * @param expected what would be right; may be null
     */
    public RefusedFileException(String message, String expected) {
        super(message);
        this.expected = expected;
    }

    /** What would be right; may be null. */
    public String expected() {
        return expected;
    }

    /** The reason why a file could not be read, in our words. */
    static RefusedFileException because(IOException e) {
        if (e instanceof RefusedFileException refused) {
            return refused;
        }
        if (e instanceof java.nio.file.NoSuchFileException || e instanceof java.io.FileNotFoundException) {
            return new RefusedFileException("does not exist", "an existing file");
        }
        if (e instanceof java.nio.file.AccessDeniedException) {
            return new RefusedFileException("may not be read: no permission", "a file you may read");
        }
        return new RefusedFileException("cannot be read: " + e.getMessage(), null);
    }
}
