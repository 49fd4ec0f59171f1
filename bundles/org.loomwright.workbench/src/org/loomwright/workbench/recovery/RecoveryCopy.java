// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Work on a vehicle that is not saved, as it is kept beside the workspace.
 *
 * @param file    the vehicle's file
 * @param changes how many changes it has over the file
 * @param label   what the last of them was called
 * @param last    when the last of them was made
 * @param base    the file as it was when the changes began, see {@link FileState}
 * @param content the vehicle as it would be saved under {@code file}, so that its relative references are right there
 */
record RecoveryCopy(Path file, int changes, String label, Instant last, FileState base, byte[] content) {
    private static final String FORM = "loomwright-recovery 1";

    RecoveryCopy {
        Objects.requireNonNull(file);
        content = content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }

    /** The copy as one file: lines that tell what it is, an empty line, the content. */
    byte[] encoded() {
        String head = FORM + "\nfile=" + file + "\nchanges=" + changes + "\nlabel=" + label.replaceAll("\\s+", " ") + "\nlast=" + last
                + "\nbase=" + base.digest() + "\n\n";
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(head.getBytes(StandardCharsets.UTF_8));
        out.writeBytes(content);
        return out.toByteArray();
    }

    /**
     * Reads what {@link #encoded} wrote.
     *
     * @throws IOException when it is something else
     */
    static RecoveryCopy decoded(byte[] bytes) throws IOException {
        int end = 0;
        while (end + 1 < bytes.length && !(bytes[end] == '\n' && bytes[end + 1] == '\n')) {
            end++;
        }
        String[] lines = new String(bytes, 0, end, StandardCharsets.UTF_8).split("\n");
        if (end + 2 > bytes.length || !lines[0].equals(FORM)) {
            throw new IOException("not a recovery copy; expected a file that begins with \"" + FORM + "\"");
        }
        Map<String, String> values = new TreeMap<>();
        for (String line : lines) {
            int cut = line.indexOf('=');
            if (cut > 0) {
                values.put(line.substring(0, cut), line.substring(cut + 1));
            }
        }
        byte[] content = new byte[bytes.length - end - 2];
        System.arraycopy(bytes, end + 2, content, 0, content.length);
        try {
            return new RecoveryCopy(Path.of(values.get("file")), Integer.parseInt(values.get("changes")),
                    values.getOrDefault("label", ""), Instant.parse(values.get("last")),
                    new FileState(values.getOrDefault("base", "")), content);
        } catch (IllegalArgumentException | DateTimeException | NullPointerException damaged) {
            throw new IOException("the recovery copy is damaged: " + damaged.getMessage(), damaged);
        }
    }
}
