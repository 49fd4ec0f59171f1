// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.symbol;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.CableTone;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;

/** The real colours of a cable's cores beside its designation; never the colour of its line. */
public final class Swatch {
    /** Width, px. */
    public static final double WIDTH_PX = 14;
    /** Height, px. */
    public static final double HEIGHT_PX = 9;

    private Swatch() {
    }

    /**
     * A swatch, in bands one above the other.
     *
     * @param letters one code of IEC 60757 for each core, or the two of a core of two colours; nothing is drawn for none
     * @param x       left side, px
     * @param y       middle, px
     */
    public static List<Mark> marks(List<String> letters, double x, double y) {
        List<Mark> marks = new ArrayList<>();
        if (letters.isEmpty()) {
            return marks;
        }
        double top = y - HEIGHT_PX / 2;
        double band = HEIGHT_PX / letters.size();
        for (int i = 0; i < letters.size(); i++) {
            marks.add(new Mark.Area(rectangle(x, top + i * band, band), Fill.solid(new CableTone(letters.get(i))), null));
        }
        marks.add(new Mark.Area(rectangle(x, top, HEIGHT_PX), null, Stroke.solid(Role.INK2, 1)));
        return marks;
    }

    private static List<Point> rectangle(double x, double y, double height) {
        return List.of(new Point(x, y), new Point(x + WIDTH_PX, y), new Point(x + WIDTH_PX, y + height),
                new Point(x, y + height));
    }
}
