// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.values;

/** The text form of yes-or-no values in files: {@code true} or {@code false}, nothing else. */
public final class PlainFlag {
    private PlainFlag() {
    }

    /**
     * Reads a flag.
     *
     * @throws IllegalArgumentException when the text is anything else; the message says what was expected
     */
    public static Boolean parse(String text) {
        return switch (text) {
            case "true" -> Boolean.TRUE;
            case "false" -> Boolean.FALSE;
            default -> throw new IllegalArgumentException(
                    "'" + PlainDecimal.shortened(text) + "' is neither true nor false");
        };
    }

    /** Writes a flag. */
    public static String write(Boolean flag) {
        return flag.toString();
    }
}
