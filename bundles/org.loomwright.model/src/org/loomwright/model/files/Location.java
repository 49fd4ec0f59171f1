// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

/**
 * Where an element was written.
 *
 * @param line   line of the element's start tag, counted from 1; 0 when it was not read from a file
 * @param column column of the start tag in characters, counted from 1; 0 when it was not read from a file
 */
public record Location(int line, int column) {
    /** Of elements that were not read from a file. */
    public static final Location UNKNOWN = new Location(0, 0);

    /** True when the element was read from a file. */
    public boolean isKnown() {
        return line > 0;
    }
}
