// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.util.List;

/**
 * A drawing on the sheets of paper it takes.
 *
 * @param title  what the title block tells
 * @param scale  scale as it is told, for example {@code 1:20}, or that there is none
 * @param sheets sheets, one at least
 */
public record SheetSet(TitleData title, String scale, List<Sheet> sheets) {
    public SheetSet {
        sheets = List.copyOf(sheets);
    }
}
