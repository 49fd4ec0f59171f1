// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Version of the file format. The first number is part of the namespace, so that a program never takes one format for
 * another; the whole version stands in the root's attribute {@code format}.
 *
 * @param major changes when old files need to be migrated
 * @param minor changes when something is added
 */
public record FormatVersion(int major, int minor) implements Comparable<FormatVersion> {
    /** The version this program reads and writes. */
    public static final FormatVersion CURRENT = new FormatVersion(1, 0);
    private static final Pattern FORM = Pattern.compile("(0|[1-9][0-9]{0,5})\\.(0|[1-9][0-9]{0,5})");

    /** Reads {@code 1.0}; empty for anything else. */
    public static Optional<FormatVersion> parse(String text) {
        Matcher matcher = FORM.matcher(text);
        return matcher.matches()
                ? Optional.of(new FormatVersion(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2))))
                : Optional.empty();
    }

    @Override
    public int compareTo(FormatVersion other) {
        return major != other.major ? Integer.compare(major, other.major) : Integer.compare(minor, other.minor);
    }

    /** The text form, for example {@code 1.0}. */
    @Override
    public String toString() {
        return major + "." + minor;
    }
}
