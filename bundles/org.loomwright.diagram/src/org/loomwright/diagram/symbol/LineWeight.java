// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.symbol;

import java.math.BigDecimal;
import java.util.List;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;

/** How heavy a conductor is drawn: five steps by its section. */
public enum LineWeight {
    /** Up to 1 mm2, and sections not chosen yet. */
    FINE("\u2264 1", 1.0, 0.9),
    /** 1.5 to 2.5 mm2. */
    LIGHT("1.5\u20132.5", 1.5, 1.25),
    /** 4 to 6 mm2. */
    MEDIUM("4\u20136", 2.25, 1.6),
    /** 10 to 16 mm2. */
    HEAVY("10\u201316", 3.25, 2.1),
    /** 25 mm2 and up. */
    THICK("\u2265 25", 4.5, 2.75);

    /** Weight of control circuits, px. */
    public static final double CONTROL_PX = 0.75;
    /** Weight of a busbar, px. */
    public static final double BAR_PX = 6;

    private final String range;
    private final double px;
    private final double planPx;

    LineWeight(String range, double px, double planPx) {
        this.range = range;
        this.px = px;
        this.planPx = planPx;
    }

    /** The sections it stands for, mm2, for the legend. */
    public String range() {
        return range;
    }

    /** Weight in line and earth diagrams, px. */
    public double px() {
        return px;
    }

    /** Weight in plans, px. */
    public double planPx() {
        return planPx;
    }

    /** Of a section, mm2; the finest when it is not known. */
    public static LineWeight of(BigDecimal sectionMm2) {
        return sectionMm2 == null ? FINE : of(sectionMm2.doubleValue());
    }

    /** Of a section, mm2. */
    public static LineWeight of(double sectionMm2) {
        if (sectionMm2 < 1.25) {
            return FINE;
        }
        if (sectionMm2 < 3.25) {
            return LIGHT;
        }
        if (sectionMm2 < 8) {
            return MEDIUM;
        }
        return sectionMm2 < 20 ? HEAVY : THICK;
    }

    /** A supply conductor in line and earth diagrams. */
    public Stroke supply(Tone tone) {
        return Stroke.solid(tone, px);
    }

    /** A return conductor in line and earth diagrams. */
    public Stroke back(Tone tone) {
        return new Stroke(tone, px, List.of(8.0, 4.0));
    }
}
