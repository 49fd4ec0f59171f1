// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A copy of the small sound vehicle of {@code data/yard} with its library and practice, to be spoiled. */
public final class Yard {
    /** Marks the place of a fault in an edited text. */
    public static final char MARK = '\u00A7';
    private static final Path SOURCE = Path.of("data", "yard");
    private static final List<String> FILES = List.of("wren.vehicle", "parts/yard.parts", "yard.practice");
    private final Path folder;

    /** Copies the files into a folder below {@code above}. */
    public Yard(Path above) {
        folder = above.resolve("yard");
        FILES.forEach(file -> write(file, original(file)));
    }

    /** The vehicle. */
    public Path vehicle() {
        return folder.resolve("wren.vehicle");
    }

    /** The library. */
    public Path parts() {
        return folder.resolve("parts").resolve("yard.parts");
    }

    /** The practice. */
    public Path practice() {
        return folder.resolve("yard.practice");
    }

    /** The folder of the files. */
    public Path folder() {
        return folder;
    }

    /** A file of the yard as it is in the project. */
    public static String original(String file) {
        try {
            return Files.readString(SOURCE.resolve(file));
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Text as it stands in a file now. */
    public static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Writes a file of the yard. */
    public Path write(String file, String text) {
        return write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes a file of the yard. */
    public Path write(String file, byte[] bytes) {
        try {
            Path path = folder.resolve(file);
            Files.createDirectories(path.getParent());
            return Files.write(path, bytes);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /**
     * Replaces the first occurrence of a part of a file, which must be there.
     *
     * @return how messages about the place marked in the new text begin: file, line, column; the file alone without a mark
     */
    public String edit(Path file, String old, String with) {
        String before = text(file);
        int at = before.indexOf(old);
        if (at < 0) {
            throw new IllegalArgumentException("not in " + file.getFileName() + ": " + old);
        }
        return mark(file, before.substring(0, at) + with + before.substring(at + old.length()));
    }

    /** Writes a text with a place marked in it; see {@link #edit}. */
    public String mark(Path file, String marked) {
        int at = marked.indexOf(MARK);
        write(folder.relativize(file).toString(), at < 0 ? marked : marked.substring(0, at) + marked.substring(at + 1));
        if (at < 0) {
            return file + ":";
        }
        int line = (int) marked.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        int column = at - marked.lastIndexOf('\n', at);
        return file + ":" + line + ":" + column + ":";
    }
}
