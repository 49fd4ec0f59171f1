// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;

/**
 * Reference fields of a sheet after ISO 5457: letters from top to bottom without I and O, numbers from left to right, fields of
 * about 50 mm on paper.
 */
record SheetGrid(double widthPx, double heightPx, int columns, int rows) {
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final double PAIR_PX = 472;
    private static final double MARGIN_PX = 20;

    static SheetGrid of(SheetSize size) {
        return new SheetGrid(size.widthPx(), size.heightPx(), even(size.widthPx()), even(size.heightPx()));
    }

    private static int even(double lengthPx) {
        return 2 * (int) StrictMath.max(1, StrictMath.round((lengthPx - 2 * MARGIN_PX) / PAIR_PX));
    }

    /** The field of a point, for example {@code B3}. */
    String field(Point at) {
        return letter(index(at.y(), heightPx, rows)) + (index(at.x(), widthPx, columns) + 1);
    }

    private static int index(double at, double length, int count) {
        double share = (at - MARGIN_PX) / (length - 2 * MARGIN_PX);
        return (int) StrictMath.max(0, StrictMath.min(count - 1, StrictMath.floor(share * count)));
    }

    private static String letter(int row) {
        int base = LETTERS.length();
        return (row >= base ? String.valueOf(LETTERS.charAt(row / base - 1)) : "") + LETTERS.charAt(row % base);
    }

    /** Letters, numbers and ticks between the frame and the edges of the sheet. */
    void paint(SceneBuilder scene) {
        scene.group(Group.Kind.GROUND, null, "fields of the sheet");
        Stroke tick = Stroke.solid(Role.INK3, 1);
        for (int i = 0; i < columns; i++) {
            double pitch = (widthPx - 2 * MARGIN_PX) / columns;
            double x = MARGIN_PX + pitch * i;
            if (i > 0) {
                scene.line(tick, new Point(x, MARGIN_PX - 10), new Point(x, MARGIN_PX));
                scene.line(tick, new Point(x, heightPx - MARGIN_PX), new Point(x, heightPx - MARGIN_PX + 10));
            }
            scene.text(x + pitch / 2, MARGIN_PX - 5, String.valueOf(i + 1), LineText.PX, false, Mark.Anchor.MIDDLE, Role.INK2);
            scene.text(x + pitch / 2, heightPx - 6, String.valueOf(i + 1), LineText.PX, false, Mark.Anchor.MIDDLE, Role.INK2);
        }
        for (int i = 0; i < rows; i++) {
            double pitch = (heightPx - 2 * MARGIN_PX) / rows;
            double y = MARGIN_PX + pitch * i;
            if (i > 0) {
                scene.line(tick, new Point(MARGIN_PX - 10, y), new Point(MARGIN_PX, y));
                scene.line(tick, new Point(widthPx - MARGIN_PX, y), new Point(widthPx - MARGIN_PX + 10, y));
            }
            scene.text(MARGIN_PX / 2, y + pitch / 2 + 4, letter(i), LineText.PX, false, Mark.Anchor.MIDDLE, Role.INK2);
            scene.text(widthPx - MARGIN_PX / 2, y + pitch / 2 + 4, letter(i), LineText.PX, false, Mark.Anchor.MIDDLE, Role.INK2);
        }
    }
}
