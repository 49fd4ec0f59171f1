// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.TextMeasure;

/**
 * The part of a drawing that one sheet takes; the sheets of a drawing overlap, so that they can be glued.
 *
 * @param view   part of the scene, px of the scene
 * @param column its column, from 0
 * @param row    its row, from 0
 */
record Tile(Bounds view, int column, int row) {
    /** How far two sheets overlap, mm of paper; common practice: enough for glue, and for a word that is cut. */
    static final double OVERLAP_MM = 15;

    /**
     * The tiles of a part of a scene, row by row; tiles without a mark are left out.
     *
     * @param widthPx   width of a tile, px of the scene
     * @param heightPx  height of a tile, px of the scene
     * @param overlapPx how far two tiles overlap, px of the scene
     */
    static List<Tile> of(Scene scene, TextMeasure type, Bounds view, double widthPx, double heightPx, double overlapPx) {
        int columns = count(view.width(), widthPx, overlapPx);
        int rows = count(view.height(), heightPx, overlapPx);
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double left = view.left() + column * (widthPx - overlapPx);
                double top = view.top() + row * (heightPx - overlapPx);
                Bounds part = new Bounds(left, top, left + widthPx, top + heightPx);
                if (inked(scene, type, part)) {
                    tiles.add(new Tile(part, column, row));
                }
            }
        }
        return tiles;
    }

    /** How many sheets a length takes. */
    static int count(double lengthPx, double sheetPx, double overlapPx) {
        return lengthPx <= sheetPx + 0.01 ? 1
                : 1 + (int) StrictMath.ceil((lengthPx - sheetPx - 0.01) / (sheetPx - overlapPx));
    }

    private static boolean inked(Scene scene, TextMeasure type, Bounds part) {
        return scene.groups().stream().flatMap(group -> group.marks().stream()).anyMatch(mark -> type.bounds(mark).meets(part));
    }
}
