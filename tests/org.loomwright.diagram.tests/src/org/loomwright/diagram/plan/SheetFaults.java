// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.TextMeasure;

/** What makes a plan hard to read: texts that meet, texts over lines, lines through devices, anything outside the sheet. */
final class SheetFaults {
    private static final double TOUCH_PX = 0.2;
    private final Scene scene;
    private final TextMeasure type;
    private final List<String> faults = new ArrayList<>();

    private SheetFaults(Scene scene, TextMeasure type) {
        this.scene = scene;
        this.type = type;
    }

    static List<String> of(Scene scene, TextMeasure type) {
        SheetFaults faults = new SheetFaults(scene, type);
        faults.texts();
        faults.nodes();
        return faults.faults;
    }

    private record Placed(Group group, Mark.Text text, Bounds at, int order) {
    }

    private record Piece(Point a, Point b, double width, Group group, int order) {
        boolean meets(Bounds at) {
            double half = width / 2 - TOUCH_PX;
            if (a.y() == b.y() || a.x() == b.x()) {
                Bounds band = Bounds.between(a, b);
                return at.meets(a.y() == b.y() ? new Bounds(band.left(), a.y() - half, band.right(), a.y() + half)
                        : new Bounds(a.x() - half, band.top(), a.x() + half, band.bottom()));
            }
            return at.grown(half).meets(a, b);
        }
    }

    private record Cover(Bounds at, int order) {
    }

    private void texts() {
        List<Placed> texts = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        List<Cover> covers = new ArrayList<>();
        collect(texts, pieces, covers);
        Bounds sheet = new Bounds(0, 0, scene.widthPx(), scene.heightPx());
        for (int i = 0; i < texts.size(); i++) {
            Placed text = texts.get(i);
            if (!sheet.holds(text.at())) {
                faults.add(told(text) + " leaves the sheet");
            }
            for (int k = 0; k < i; k++) {
                if (text.at().meets(texts.get(k).at())) {
                    faults.add(told(text) + " meets " + told(texts.get(k)));
                }
            }
            if (!text.text().plated()) {
                for (Piece piece : pieces) {
                    if (piece.meets(text.at()) && covers.stream().noneMatch(cover -> cover.order() > piece.order()
                            && cover.order() < text.order() && cover.at().holds(text.at()))) {
                        faults.add(told(text) + " over a line of " + piece.group().name() );
                        break;
                    }
                }
            }
        }
    }

    private void collect(List<Placed> texts, List<Piece> pieces, List<Cover> covers) {
        int order = 0;
        for (Group group : scene.groups()) {
            for (Mark mark : group.marks()) {
                order++;
                if (mark instanceof Mark.Text text) {
                    texts.add(new Placed(group, text, type.bounds(text), order));
                } else if (mark instanceof Mark.Line line) {
                    add(line.points(), false, line.stroke().widthPx(), group, order, pieces);
                } else if (mark instanceof Mark.Area area) {
                    if (area.fill() != null) {
                        covers.add(new Cover(Bounds.of(area.points()), order));
                    }
                    if (area.stroke() != null) {
                        add(area.points(), true, area.stroke().widthPx(), group, order, pieces);
                    }
                }
            }
        }
    }

    private static void add(List<Point> points, boolean closed, double width, Group group, int order, List<Piece> pieces) {
        for (int i = closed ? 0 : 1; i < points.size(); i++) {
            pieces.add(new Piece(points.get((i + points.size() - 1) % points.size()), points.get(i), width, group, order));
        }
    }

    /** Lines of runs and cables through the plate of a device at which they do not end. */
    private void nodes() {
        for (Group node : scene.groups()) {
            if (node.kind() != Group.Kind.NODE) {
                continue;
            }
            Bounds at = node.shape().grown(-1);
            for (Group edge : scene.groups()) {
                if (edge.kind() != Group.Kind.EDGE || node.element().equals(edge.element())) {
                    continue;
                }
                for (Mark mark : edge.marks()) {
                    if (mark instanceof Mark.Line line && through(line, at)) {
                        faults.add(edge.name() + " runs through " + node.name());
                    }
                }
            }
        }
    }

    private static boolean through(Mark.Line line, Bounds at) {
        Point first = line.points().get(0);
        Point last = line.points().get(line.points().size() - 1);
        if (at.grown(line.stroke().widthPx()).holds(first) || at.grown(line.stroke().widthPx()).holds(last)) {
            return false;
        }
        for (int i = 1; i < line.points().size(); i++) {
            if (at.grown(line.stroke().widthPx() / 2).meets(line.points().get(i - 1), line.points().get(i))) {
                return true;
            }
        }
        return false;
    }

    private static String told(Placed text) {
        return "'" + text.text().text() + "' of " + text.group().element();
    }
}
