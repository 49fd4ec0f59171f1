// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.TextMeasure;

/** Puts drawings on sheets of paper, with frame and title block; on several where one does not take them. */
public final class SheetMaker {
    /** What a drawing without a scale says. */
    static final String NOT_TO_SCALE = "none";
    /** A drawing is not made smaller than this, so that its text stays legible: 12 px become 7.2 pt. */
    static final double LEAST_SCALE = 0.8;
    private final TextMeasure type;

    /** With the metrics of a typeface. */
    public SheetMaker(TextMeasure type) {
        this.type = type;
    }

    /**
     * A drawing that is not to scale, as large as the paper takes it, at most as on a screen at 100 %.
     *
     * @param wanted paper; see {@link PaperChoice}
     */
    public SheetSet sheets(Scene drawing, PaperChoice wanted, TitleData title) {
        Scene bare = BareScene.of(drawing);
        Bounds ground = BareScene.ground(bare, type);
        Paper best = null;
        int fewest = Integer.MAX_VALUE;
        for (Paper paper : wanted.papers()) {
            int count = scale(paper, ground) >= LEAST_SCALE ? 1 : count(paper, ground);
            if (count < fewest) {
                best = paper;
                fewest = count;
            }
        }
        double scale = StrictMath.max(LEAST_SCALE, scale(best, ground));
        return sheets(bare, ground, best, scale, title, NOT_TO_SCALE);
    }

    /** Px of paper for each px of a drawing that fills the paper. */
    private static double scale(Paper paper, Bounds ground) {
        Bounds field = paper.field();
        return StrictMath.min(1, StrictMath.min(field.width() / ground.width(), field.height() / ground.height()));
    }

    private static int count(Paper paper, Bounds ground) {
        Bounds field = paper.field();
        double overlap = Tile.OVERLAP_MM * Paper.PX_PER_MM;
        return Tile.count(LEAST_SCALE * ground.width(), field.width(), overlap)
                * Tile.count(LEAST_SCALE * ground.height(), field.height(), overlap);
    }

    /** A part of a drawing at a scale, on as many sheets as it takes. */
    SheetSet sheets(Scene bare, Bounds view, Paper paper, double scale, TitleData title, String plot) {
        Bounds field = paper.field();
        double overlap = Tile.OVERLAP_MM * Paper.PX_PER_MM;
        List<Tile> tiles = Tile.of(bare, type, view, field.width() / scale, field.height() / scale, overlap / scale);
        if (tiles.size() <= 1) {
            double width = scale * view.width();
            double height = scale * view.height();
            double left = field.left() + StrictMath.max(0, (field.width() - width) / 2);
            double top = field.top() + StrictMath.max(0, (field.height() - height) / 2);
            Layer drawing = new Layer(bare, view, new Bounds(left, top, left + width, top + height));
            return new SheetSet(title, plot,
                    List.of(sheet(paper, drawing, title, plot, 1, 1, new SheetBorder.Joins(0, 0, 0, 0, 0))));
        }
        List<Sheet> sheets = new ArrayList<>();
        for (int t = 0; t < tiles.size(); t++) {
            Tile tile = tiles.get(t);
            SheetBorder.Joins joins = new SheetBorder.Joins(number(tiles, tile.column() - 1, tile.row()),
                    number(tiles, tile.column() + 1, tile.row()), number(tiles, tile.column(), tile.row() - 1),
                    number(tiles, tile.column(), tile.row() + 1), overlap);
            sheets.add(sheet(paper, new Layer(bare, tile.view(), field), title, plot, t + 1, tiles.size(), joins));
        }
        return new SheetSet(title, plot, sheets);
    }

    private Sheet sheet(Paper paper, Layer drawing, TitleData title, String plot, int number, int of, SheetBorder.Joins joins) {
        String name = of == 1 ? title.title() + ", " + title.document()
                : title.title() + ", " + title.document() + ", sheet " + number + " of " + of;
        return new Sheet(paper, name, List.of(drawing, new SheetBorder(paper, name, type).layer(title, plot, number, of, joins)));
    }

    /** Number of the sheet of a column and row, from 1; 0 for none. */
    private static int number(List<Tile> tiles, int column, int row) {
        for (int t = 0; t < tiles.size(); t++) {
            if (tiles.get(t).column() == column && tiles.get(t).row() == row) {
                return t + 1;
            }
        }
        return 0;
    }
}
