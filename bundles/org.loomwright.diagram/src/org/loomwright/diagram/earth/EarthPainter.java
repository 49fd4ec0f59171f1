// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.List;
import org.loomwright.diagram.overlay.OverlayScale;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group.Kind;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.scene.Veil;
import org.loomwright.diagram.services.CaseView;
import org.loomwright.diagram.services.FindingMark;
import org.loomwright.diagram.symbol.LineWeight;

/** Paints bodies, straps and returns where the layout has put them. */
final class EarthPainter {
    private static final double NOTHING_A = 5e-4;
    private final SceneBuilder scene;
    private final TextMeasure type;
    private final EarthLabels labels;
    private final EarthState state;
    private final CaseView figures;
    private final OverlayScale scale;

    EarthPainter(SceneBuilder scene, TextMeasure type, EarthLabels labels, EarthState state, OverlayScale scale) {
        this.scene = scene;
        this.type = type;
        this.labels = labels;
        this.state = state;
        figures = state.now();
        this.scale = scale;
    }

    void body(EarthCell cell) {
        EarthContent.Body body = cell.body;
        scene.group(Kind.NODE, body.id(), "body " + body.title());
        Stroke outline = body.forbidden() ? Stroke.dashed(Role.INK, 1.5, 12.0, 3.0, 2.0, 3.0) : Stroke.solid(Role.INK, 1.5);
        scene.rectangle(Fill.solid(Role.BODY), null, cell.left, cell.top, cell.width, cell.height);
        if (body.forbidden()) {
            scene.rectangle(Fill.hatched(Role.HAIR), null, cell.left, cell.top, cell.width, cell.height);
        }
        scene.rectangle(null, outline, cell.left, cell.top, cell.width, cell.height);
        Double volts = figures == null ? null : figures.bodies().get(body.id());
        if (volts != null && scale != null) {
            scene.group(Kind.OVERLAY, body.id(), "potential of " + body.title() + ": " + EarthText.volts(volts));
            scene.rectangle(Fill.solid(scale.tone(1000 * StrictMath.abs(volts))), Stroke.solid(Role.INK, 1), cell.left, cell.top,
                    EarthCell.STRIP_PX, cell.height);
        }
        scene.group(Kind.LABEL, body.id(), body.title());
        double y = cell.headY();
        scene.text(cell.headX(), y, body.title(), 13, false, Anchor.START, Role.INK);
        if (cell.potential != null) {
            scene.text(cell.headX(), y + 18, cell.potential, 13, true, Anchor.START, Role.INK);
        }
        if (cell.potentialBefore != null) {
            scene.text(cell.headX() + cell.beforePx(type), y + 18, cell.potentialBefore, 12, false, Anchor.START, Role.INK3);
        }
        if (body.policy() != null) {
            scene.text(cell.headX(), y + (cell.potential == null && cell.potentialBefore == null ? 17 : 35), body.policy(), 12, false, Anchor.START, Role.INK2);
        }
        badge(body.id(), cell.right() - 20, cell.headY() - 4);
    }

    private void badge(String id, double x, double y) {
        FindingMark mark = labels.mark(id);
        if (mark != null) {
            scene.group(Kind.BADGE, id, mark.findings().get(0).title());
            scene.marks(mark.badge().marks(x, y));
        }
    }

    /** The line of a strap with its arrow; of a lost one its stubs with a cross between them. */
    void line(EarthContent.Join join, List<Point> way) {
        if (state.lost(join)) {
            new LostMark(scene).paint(join, way);
            return;
        }
        if (state.detour(join)) {
            scene.group(Kind.OVERLAY, join.id(), join.shown() + " carries more than before");
            scene.line(Stroke.solid(Veil.whatIf(), LostMark.HALO_PX), way);
        }
        CaseView.Strap strap = state.now(join);
        boolean idle = strap != null && StrictMath.abs(strap.amps()) < NOTHING_A;
        LineWeight weight = Double.isNaN(join.sectionMm2()) ? LineWeight.of(35) : LineWeight.of(join.sectionMm2());
        scene.group(Kind.EDGE, join.id(), join.shown());
        scene.line(weight.back(idle ? Role.INK3 : Role.INK), way);
        if (strap != null && !idle) {
            scene.group(Kind.OVERLAY, join.id(), "current of " + join.shown());
            Point from = way.get(0);
            Point to = way.get(1);
            Point middle = new Point((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
            arrow(middle, to.x() > from.x() == strap.amps() > 0 ? 1 : -1, 0);
        }
    }

    /** A filled arrow with its middle at a point, along x or y. */
    private void arrow(Point at, int dx, int dy) {
        double along = 6;
        double across = 4.3;
        scene.area(Fill.solid(Role.INK), null, List.of(new Point(at.x() + along * dx, at.y() + along * dy),
                new Point(at.x() - along * dx + across * dy, at.y() - along * dy + across * dx),
                new Point(at.x() - along * dx - across * dy, at.y() - along * dy - across * dx)));
    }

    /** The earth points of a strap at the rims of its bodies. */
    void ends(EarthContent.Join join, EarthLayout layout) {
        if (join.studA() == null) {
            return;
        }
        List<Point> way = layout.ways.get(join);
        rim(join.studAId(), join.studA(), way.get(0), layout.cells.get(join.a()));
        rim(join.studBId(), join.studB(), way.get(way.size() - 1), layout.cells.get(join.b()));
    }

    private void rim(String id, String shown, Point at, EarthCell cell) {
        ring(id, shown, at);
        boolean right = at.x() > cell.rectangle().centre().x();
        scene.group(Kind.LABEL, id, shown);
        scene.text(right ? at.x() - 10 : at.x() + EarthCell.STRIP_PX + 6, at.y() + 4, shown, 12, false,
                right ? Anchor.END : Anchor.START, Role.INK2);
    }

    private void ring(String id, String shown, Point at) {
        scene.group(Kind.PORT, id, "earth point " + shown);
        scene.disc(Fill.solid(Role.PLATE), Stroke.solid(Role.INK, 1.5), at.x(), at.y(), 5);
        scene.disc(Fill.solid(Role.INK), null, at.x(), at.y(), 1.6);
    }

    /** The returns above and below a body. */
    void returns(EarthCell cell) {
        for (int i = 0; i < cell.below.size(); i++) {
            block(cell, cell.below.get(i), cell.blockX(cell.below, i), 1);
        }
        for (int i = 0; i < cell.above.size(); i++) {
            block(cell, cell.above.get(i), cell.blockX(cell.above, i), -1);
        }
    }

    private void block(EarthCell cell, EarthBlock block, double x, int down) {
        double rim = down > 0 ? cell.bottom() : cell.top;
        double at = x + 6;
        double tip = rim + down * EarthBlock.STUB_PX;
        boolean idle = figures != null && StrictMath.abs(block.amps()) < NOTHING_A;
        scene.group(Kind.EDGE, block.stud().id(), "returns at " + block.stud().shown());
        scene.line(Stroke.dashed(idle ? Role.INK3 : Role.INK, LineWeight.of(block.sectionMm2()).px(), 6.0, 3.0),
                new Point(at, rim), new Point(at, tip));
        if (figures != null && !idle) {
            scene.group(Kind.OVERLAY, block.stud().id(), "current of " + block.stud().shown());
            boolean into = block.amps() > 0;
            arrow(new Point(at, rim + down * 18), 0, into ? -down : down);
        }
        boolean shell = "case".equals(block.stud().shown());
        if (shell) {
            scene.group(Kind.PORT, block.stud().id(), "case");
            scene.rectangle(Fill.solid(Role.INK), null, at - 4, rim - 4, 8, 8);
        } else {
            ring(block.stud().id(), block.stud().shown(), new Point(at, rim));
        }
        scene.group(Kind.LABEL, block.stud().id(), block.stud().shown());
        scene.text(at + 9, rim + (down > 0 ? -7 : 16), block.stud().shown(), 12, false, Anchor.START, Role.INK2);
        scene.text(x + 20, rim + down * 20 + 4, block.head(), 12, true, Anchor.START, idle ? Role.INK3 : Role.INK);
        if (!block.before().isEmpty()) {
            scene.text(x + 28 + type.widthPx(block.head(), 12, true), rim + down * 20 + 4, block.before(), 12, false, Anchor.START,
                    Role.INK3);
        }
        double first = down > 0 ? tip + 13 : tip - 5 - EarthBlock.LINE_PX * (block.lines().size() - 1);
        for (int i = 0; i < block.lines().size(); i++) {
            entry(block, block.lines().get(i), x, first + EarthBlock.LINE_PX * i);
        }
        FindingMark mark = labels.mark(block.stud().id());
        if (mark != null && !shell) {
            badge(block.stud().id(), at + 24 + type.widthPx(block.stud().shown(), 12, false), rim + (down > 0 ? -12 : 12));
        }
    }

    private void entry(EarthBlock block, EarthBlock.Line line, double x, double y) {
        Role role = line.idle() ? Role.INK3 : Role.INK2;
        scene.group(Kind.LABEL, line.id(), line.words());
        scene.text(x, y, line.shown(), 12, false, Anchor.START, line.idle() ? Role.INK3 : Role.INK);
        if (line.label() != null && !line.label().isBlank()) {
            double wide = type.widthPx(line.shown() + "  ", 12, false);
            scene.text(x + wide, y, line.label(), 12, false, Anchor.START, role);
        }
        if (!line.figure().isEmpty()) {
            scene.text(x + block.widthPx(), y, line.figure(), 12, false, Anchor.END, Role.INK);
        }
    }

    /** What stands beside a strap. */
    void label(EarthContent.Join join, Point at, List<Point> way) {
        double shift = labels.badgePx(join);
        if (shift > 0) {
            badge(join.id(), at.x() + 10, at.y() - 18);
        }
        CaseView.Strap strap = state.now(join);
        boolean idle = strap != null && StrictMath.abs(strap.amps()) < NOTHING_A && !state.lost(join);
        scene.group(Kind.LABEL, join.id(), join.shown());
        boolean plated = way.size() > 4;
        double aside = state.lost(join) ? LostMark.ASIDE_PX : 0;
        line(labels.above(join), at.x() + shift, at.y() - 10 - aside, idle, plated);
        line(labels.below(join), at.x(), at.y() + 19 + aside, idle, plated);
    }

    private void line(List<EarthLabels.Piece> pieces, double from, double y, boolean idle, boolean plated) {
        double x = from;
        for (EarthLabels.Piece piece : pieces) {
            Role role = idle || piece.faint() ? Role.INK3 : piece.bold() ? Role.INK : Role.INK2;
            if (plated) {
                scene.platedText(x, y, piece.text(), 12, piece.bold(), Anchor.START, role);
            } else {
                scene.text(x, y, piece.text(), 12, piece.bold(), Anchor.START, role);
            }
            x += 8 + type.widthPx(piece.text(), 12, piece.bold());
        }
    }
}
