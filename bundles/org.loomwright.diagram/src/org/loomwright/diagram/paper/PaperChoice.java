// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Which paper is wanted.
 *
 * @param size      size; null for the smallest that takes the drawing on one sheet, A0 where none does
 * @param landscape the longer side level, or upright; null for what takes fewer sheets, level where both take as many
 */
public record PaperChoice(PaperSize size, Boolean landscape) {
    /** Whatever takes the drawing. */
    public static final PaperChoice ANY = new PaperChoice(null, null);

    /** All papers that are as wanted, the most wanted first. */
    List<Paper> papers() {
        List<Paper> papers = new ArrayList<>();
        for (PaperSize each : size == null ? PaperSize.values() : new PaperSize[] {size}) {
            for (boolean level : landscape == null ? new boolean[] {true, false} : new boolean[] {landscape}) {
                papers.add(new Paper(each, level));
            }
        }
        return papers;
    }
}
