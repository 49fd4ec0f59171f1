// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import org.loomwright.diagram.scene.Bounds;

/**
 * A sheet of paper as it lies: its size and its border. All px are px of the paper at 96 dpi.
 *
 * @param size      size
 * @param landscape the longer side lies level
 */
public record Paper(PaperSize size, boolean landscape) {
    /** Px of paper a mm. */
    public static final double PX_PER_MM = 96 / 25.4;
    /** Border at the side where sheets are filed, mm (ISO 5457, recalled). */
    private static final double FILED_MM = 20;
    /** Border at the other sides, mm (ISO 5457, recalled). */
    private static final double BORDER_MM = 10;
    /** Free ground within the frame around the drawing, where overlaps of sheets are marked, mm; common practice. */
    private static final double INSIDE_MM = 5;

    /** Width, mm. */
    public int widthMm() {
        return landscape ? size.longMm() : size.shortMm();
    }

    /** Height, mm. */
    public int heightMm() {
        return landscape ? size.shortMm() : size.longMm();
    }

    /** Width, px. */
    public double widthPx() {
        return widthMm() * PX_PER_MM;
    }

    /** Height, px. */
    public double heightPx() {
        return heightMm() * PX_PER_MM;
    }

    /** The frame: border left, within it everything that is drawn. */
    Bounds frame() {
        return new Bounds(FILED_MM * PX_PER_MM, BORDER_MM * PX_PER_MM, widthPx() - BORDER_MM * PX_PER_MM,
                heightPx() - BORDER_MM * PX_PER_MM);
    }

    /** The ground for the drawing, above the title block. */
    Bounds field() {
        Bounds frame = frame();
        double inside = INSIDE_MM * PX_PER_MM;
        return new Bounds(frame.left() + inside, frame.top() + inside, frame.right() - inside,
                frame.bottom() - inside - SheetBorder.heightPx(this));
    }
}
