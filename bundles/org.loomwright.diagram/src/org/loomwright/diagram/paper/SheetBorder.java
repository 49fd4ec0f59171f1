// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.FittedText;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.scene.WrappedText;

/**
 * Border of a sheet: frame, marks at the middle of its sides, title block in the lower right corner with the caution beside or
 * below it, marks of the overlap. Drawn in a scene of its own, smaller than the drawing by {@link #SCALE}, so that names of
 * fields take less room than what they name.
 */
final class SheetBorder {
    /** Px of paper for each px of the border's scene. */
    static final double SCALE = 0.75;
    /** Widest title block, mm (ISO 7200, recalled). */
    private static final double BLOCK_MM = 180;
    private static final double ROW_PX = 40;
    private static final double FILE_PX = 19;
    /** Part of the row that the file's name may take. */
    private static final double FILE_SHARE = 0.76;
    private static final double LINE_PX = 15;
    private static final int STACKED_LINES = 3;
    private static final int BESIDE_LINES = 6;
    private static final double PAD_PX = 7;
    private static final double NAME_PX = 12;
    private static final double VALUE_PX = 15;
    private static final double CENTRING_MM = 5;
    private static final Stroke FRAME = Stroke.solid(Role.INK, 1.8);
    private static final Stroke CELL = Stroke.solid(Role.INK, 0.9);
    private static final double PX_PER_MM = Paper.PX_PER_MM / SCALE;
    private final Paper paper;
    private final TextMeasure type;
    private final SceneBuilder scene;
    private final Bounds frame;

    /** A field; share is its part of the row's width. */
    private record Cell(String name, String value, double share) {
    }

    /**
     * What joins a sheet: numbers of the sheets around it, 0 for none.
     *
     * @param overlapPx how far they overlap, px of paper
     */
    record Joins(int left, int right, int above, int below, double overlapPx) {
    }

    SheetBorder(Paper paper, String title, TextMeasure type) {
        this.paper = paper;
        this.type = type;
        scene = new SceneBuilder(title, paper.widthPx() / SCALE, paper.heightPx() / SCALE);
        frame = scaled(paper.frame());
    }

    private static Bounds scaled(Bounds px) {
        return new Bounds(px.left() / SCALE, px.top() / SCALE, px.right() / SCALE, px.bottom() / SCALE);
    }

    /** The border as a layer over the whole sheet. */
    Layer layer(TitleData data, String scale, int sheet, int sheets, Joins joins) {
        scene.group(null, "frame");
        scene.rectangle(null, FRAME, frame.left(), frame.top(), frame.width(), frame.height());
        centring();
        block(data, scale, sheet, sheets);
        overlap(joins);
        Bounds all = new Bounds(0, 0, paper.widthPx() / SCALE, paper.heightPx() / SCALE);
        return new Layer(scene.build(), all, new Bounds(0, 0, paper.widthPx(), paper.heightPx()));
    }

    private void centring() {
        scene.group(null, "centring marks");
        double x = paper.widthPx() / SCALE / 2;
        double y = paper.heightPx() / SCALE / 2;
        double long5 = CENTRING_MM * PX_PER_MM;
        scene.line(FRAME, new Point(x, frame.top() - long5), new Point(x, frame.top()));
        scene.line(FRAME, new Point(x, frame.bottom()), new Point(x, frame.bottom() + long5));
        scene.line(FRAME, new Point(frame.left() - long5, y), new Point(frame.left(), y));
        scene.line(FRAME, new Point(frame.right(), y), new Point(frame.right() + long5, y));
    }

    private void block(TitleData data, String scale, int sheet, int sheets) {
        double width = blockPx(paper) / SCALE;
        double top = frame.bottom() - heightPx(paper) / SCALE;
        scene.group(null, "title block");
        row(top, width, List.of(new Cell("title", data.title(), 0.35), new Cell("document", data.document(), 0.26),
                new Cell("vehicle", data.vehicle(), 0.13), new Cell("arrangement", data.arrangement(), 0.26)));
        row(top + ROW_PX, width, List.of(new Cell("case", data.caseName(), 0.19), new Cell("date", data.date().toString(), 0.12),
                new Cell("scale", scale, 0.12), new Cell("paper", paper.size().name(), 0.08),
                new Cell("sheet", sheet + " / " + sheets, 0.10), new Cell("drawn by", data.drawnBy(), 0.195),
                new Cell("checked by", data.checkedBy(), 0.195)));
        double y = top + 2 * ROW_PX;
        scene.group(null, "file");
        scene.rectangle(Fill.solid(Role.PLATE), CELL, frame.right() - width, y, width, FILE_PX);
        scene.text(frame.right() - width + PAD_PX, y + 13, FittedText.of(type, data.file(), NAME_PX, false, FILE_SHARE * width),
                NAME_PX, false, Anchor.START, Role.INK2);
        scene.text(frame.right() - PAD_PX, y + 13, data.program(), NAME_PX, false, Anchor.END, Role.INK2);
        scene.group(null, "caution");
        if (stacked(paper)) {
            scene.line(CELL, new Point(frame.left(), top), new Point(frame.right(), top));
            caution(data.caution(), y + FILE_PX, frame.width(), STACKED_LINES);
        } else {
            scene.line(CELL, new Point(frame.left(), top), new Point(frame.right(), top));
            caution(data.caution(), top, frame.width() - width, BESIDE_LINES);
        }
    }

    private void row(double top, double width, List<Cell> cells) {
        double x = frame.right() - width;
        for (Cell cell : cells) {
            double wide = cell.share() * width;
            double room = wide - 2 * PAD_PX;
            scene.rectangle(Fill.solid(Role.PLATE), CELL, x, top, wide, ROW_PX);
            scene.text(x + PAD_PX, top + 14, cell.name(), NAME_PX, false, Anchor.START, Role.INK2);
            double size = type.widthPx(cell.value(), VALUE_PX, true) <= room ? VALUE_PX : NAME_PX;
            scene.text(x + PAD_PX, top + 33, FittedText.of(type, cell.value(), size, true, room), size, true, Anchor.START,
                    Role.INK);
            x += wide;
        }
    }

    private void caution(String words, double top, double width, int most) {
        List<String> lines = WrappedText.of(type, words, NAME_PX, false, width - 2 * PAD_PX);
        for (int i = 0; i < StrictMath.min(most, lines.size()); i++) {
            String line = i == most - 1 ? String.join(" ", lines.subList(i, lines.size())) : lines.get(i);
            scene.text(frame.left() + PAD_PX, top + 15 + i * LINE_PX,
                    FittedText.of(type, line, NAME_PX, false, width - 2 * PAD_PX), NAME_PX, false, Anchor.START, Role.INK);
        }
    }

    /** Width of the title block, px of paper. */
    private static double blockPx(Paper paper) {
        return StrictMath.min(paper.frame().width(), BLOCK_MM * Paper.PX_PER_MM);
    }

    /** The caution lies below the title block, for want of room beside it. */
    private static boolean stacked(Paper paper) {
        return paper.frame().width() < 1.4 * blockPx(paper);
    }

    /** Height that title block and caution take above the frame's lower side, px of paper. */
    static double heightPx(Paper paper) {
        return SCALE * (2 * ROW_PX + FILE_PX + (stacked(paper) ? STACKED_LINES * LINE_PX + 6 : 0));
    }

    private void overlap(Joins joins) {
        Bounds field = scaled(paper.field());
        double over = joins.overlapPx() / SCALE;
        List<Double> upright = new ArrayList<>();
        List<Double> level = new ArrayList<>();
        add(upright, joins.left(), field.left() + over);
        add(upright, joins.right(), field.right() - over);
        add(level, joins.above(), field.top() + over);
        add(level, joins.below(), field.bottom() - over);
        if (upright.isEmpty() && level.isEmpty()) {
            return;
        }
        scene.group(null, "overlap");
        double gap = field.left() - frame.left();
        for (double x : upright) {
            scene.line(CELL, new Point(x, field.top() - gap), new Point(x, field.top() - 2));
            scene.line(CELL, new Point(x, field.bottom() + 2), new Point(x, field.bottom() + gap));
        }
        for (double y : level) {
            scene.line(CELL, new Point(field.left() - gap, y), new Point(field.left() - 2, y));
            scene.line(CELL, new Point(field.right() + 2, y), new Point(field.right() + gap, y));
        }
        double head = field.top() - gap / 2 + 4;
        double foot = field.bottom() + gap / 2 + 4;
        words(joins.left(), "\u25C0 sheet ", field.left(), foot, Anchor.START);
        words(joins.right(), "sheet ", field.right(), foot, Anchor.END);
        words(joins.above(), "\u25B2 sheet ", field.centre().x(), head, Anchor.MIDDLE);
        words(joins.below(), "\u25BC sheet ", field.centre().x(), foot, Anchor.MIDDLE);
    }

    private static void add(List<Double> at, int sheet, double where) {
        if (sheet > 0) {
            at.add(where);
        }
    }

    private void words(int sheet, String words, double x, double y, Anchor anchor) {
        if (sheet > 0) {
            scene.text(x, y, words + sheet + (anchor == Anchor.END ? " \u25B6" : ""), NAME_PX, false, anchor, Role.INK2);
        }
    }
}
