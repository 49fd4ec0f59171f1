// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

/** Sizes of paper: the A series of ISO 216. */
public enum PaperSize {
    /** 210 x 297 mm. */
    A4(210, 297),
    /** 297 x 420 mm. */
    A3(297, 420),
    /** 420 x 594 mm. */
    A2(420, 594),
    /** 594 x 841 mm. */
    A1(594, 841),
    /** 841 x 1189 mm. */
    A0(841, 1189);

    private final int shortMm;
    private final int longMm;

    PaperSize(int shortMm, int longMm) {
        this.shortMm = shortMm;
        this.longMm = longMm;
    }

    /** The shorter side, mm. */
    public int shortMm() {
        return shortMm;
    }

    /** The longer side, mm. */
    public int longMm() {
        return longMm;
    }
}
