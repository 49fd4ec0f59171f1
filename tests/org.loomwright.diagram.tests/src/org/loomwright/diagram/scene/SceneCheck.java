// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.paint.Plates;

/**
 * Judges whether a scene is legible: no text over a text or a badge, none over a line unless it has a plate, no edge through a
 * node at which it does not end, no badge on an edge, nothing outside the sheet, no text smaller than 12 px.
 */
public final class SceneCheck {
    /** Rounding of glyphs and of coordinates, px. */
    private static final double SLACK_PX = 0.5;
    private static final double END_PX = 4;
    private static final double INTO_PX = 2;

    private record Placed(Group group, int order, Mark mark, Bounds room) {
        String who() {
            String text = mark instanceof Mark.Text label ? "'" + label.text() + "' of " : "";
            return text + (group.element() != null ? group.element() : "[" + group.name() + "]");
        }
    }

    private final Scene scene;
    private final List<Placed> texts = new ArrayList<>();
    private final List<Placed> lines = new ArrayList<>();
    private final List<Placed> all = new ArrayList<>();
    private final List<Placed> badges = new ArrayList<>();
    private final List<Placed> nodes = new ArrayList<>();
    private final List<Placed> edges = new ArrayList<>();
    private final List<String> complaints = new ArrayList<>();

    private SceneCheck(Scene scene, TextMeasure type) {
        this.scene = scene;
        for (int order = 0; order < scene.groups().size(); order++) {
            sort(scene.groups().get(order), order, type);
        }
    }

    /** What is wrong, in words with the ids of the elements; empty when nothing is. */
    public static List<String> of(Scene scene, TextMeasure type) {
        SceneCheck check = new SceneCheck(scene, type);
        check.sheet();
        check.texts();
        check.edges();
        check.badges();
        return check.complaints;
    }

    private void sort(Group group, int order, TextMeasure type) {
        for (Mark mark : group.marks()) {
            Placed placed = new Placed(group, order, mark, type.bounds(mark));
            all.add(placed);
            if (mark instanceof Mark.Text) {
                texts.add(placed);
            } else if (group.kind() != Group.Kind.BADGE) {
                lines.add(placed);
            }
            if (mark instanceof Mark.Line && group.kind() == Group.Kind.EDGE) {
                edges.add(placed);
            }
        }
        Bounds shape = group.shape();
        if (shape != null && group.kind() == Group.Kind.BADGE) {
            badges.add(new Placed(group, order, null, shape));
        } else if (shape != null && group.kind() == Group.Kind.NODE) {
            nodes.add(new Placed(group, order, null, shape));
        }
    }

    private void sheet() {
        for (Placed placed : all) {
            Bounds room = placed.room();
            if (room.left() < 0 || room.top() < 0 || room.right() > scene.widthPx() || room.bottom() > scene.heightPx()) {
                complaints.add(placed.who() + " leaves the sheet");
            }
        }
    }

    private void texts() {
        for (int i = 0; i < texts.size(); i++) {
            Placed text = texts.get(i);
            Bounds tight = text.room().grown(-SLACK_PX);
            if (((Mark.Text) text.mark()).sizePx() < Mark.LEAST_TEXT_PX) {
                complaints.add(text.who() + " is smaller than 12 px");
            }
            for (int k = i + 1; k < texts.size(); k++) {
                if (tight.meets(texts.get(k).room().grown(-SLACK_PX))) {
                    complaints.add(text.who() + " meets " + texts.get(k).who());
                } else if (((Mark.Text) texts.get(k).mark()).plated()
                        && Plates.under(texts.get(k).room()).grown(-3 - SLACK_PX).meets(tight)) {
                    complaints.add(text.who() + " is covered by the plate of " + texts.get(k).who());
                }
            }
            for (Placed badge : badges) {
                if (badge.group() != text.group() && tight.meets(badge.room())) {
                    complaints.add(text.who() + " meets the badge of " + badge.who());
                }
            }
            lines(text, tight);
        }
    }

    private void lines(Placed text, Bounds tight) {
        boolean plated = ((Mark.Text) text.mark()).plated();
        for (Placed line : lines) {
            boolean above = plated && (line.order() < text.order() || line.group() == text.group()
                    && line.group().marks().indexOf(line.mark()) < text.group().marks().indexOf(text.mark()));
            if (above || !line.room().meets(tight) || !inked(line.mark(), tight)) {
                continue;
            }
            if (line.order() >= text.order() || line.mark() == text.mark() || !platedBetween(line, text)) {
                complaints.add(text.who() + " lies on a line of " + line.who());
            }
        }
    }

    /** True when an area filled without gaps, painted after the line and before the text, holds the text. */
    private boolean platedBetween(Placed line, Placed text) {
        for (Placed area : lines) {
            if (area.order() >= line.order() && area.order() <= text.order() && area != line
                    && (area.order() > line.order() || all.indexOf(area) > all.indexOf(line))
                    && area.mark() instanceof Mark.Area solid && solid.fill() != null
                    && solid.fill().pattern() == Fill.Pattern.SOLID && solid.fill().tone().opacity() == 1
                    && solid.points().size() >= 4 && Bounds.of(solid.points()).holds(text.room().grown(-SLACK_PX))) {
                return true;
            }
        }
        return false;
    }

    private static boolean inked(Mark mark, Bounds room) {
        if (mark instanceof Mark.Line line) {
            return crossed(line.points(), false, room.grown(line.stroke().widthPx() / 2));
        } else if (mark instanceof Mark.Area area) {
            return area.stroke() != null && crossed(area.points(), true, room.grown(area.stroke().widthPx() / 2));
        } else if (mark instanceof Mark.Disc disc && disc.stroke() != null) {
            Point near = new Point(StrictMath.min(room.right(), StrictMath.max(room.left(), disc.centre().x())),
                    StrictMath.min(room.bottom(), StrictMath.max(room.top(), disc.centre().y())));
            double far = List.of(new Point(room.left(), room.top()), new Point(room.right(), room.top()),
                    new Point(room.left(), room.bottom()), new Point(room.right(), room.bottom())).stream()
                    .mapToDouble(disc.centre()::distance).max().orElse(0);
            double half = disc.stroke().widthPx() / 2;
            return near.distance(disc.centre()) < disc.radiusPx() + half && far > disc.radiusPx() - half;
        }
        return false;
    }

    private static boolean crossed(List<Point> points, boolean closed, Bounds room) {
        for (int i = 1; i < points.size(); i++) {
            if (room.meets(points.get(i - 1), points.get(i))) {
                return true;
            }
        }
        return closed && room.meets(points.get(points.size() - 1), points.get(0));
    }

    private void edges() {
        for (Placed edge : edges) {
            List<Point> points = ((Mark.Line) edge.mark()).points();
            for (Placed node : nodes) {
                if (!edge.group().equals(node.group()) && !same(edge, node) && edge.room().meets(node.room())
                        && crossed(points, false, node.room().grown(-INTO_PX)) && !endsAt(edge.group(), node.room())) {
                    complaints.add("edge " + edge.who() + " goes through " + node.who());
                }
            }
        }
    }

    private static boolean same(Placed a, Placed b) {
        return a.group().element() != null && a.group().element().equals(b.group().element());
    }

    /** True when a line of the edge begins or ends at or in a node. */
    private static boolean endsAt(Group edge, Bounds node) {
        for (Mark mark : edge.marks()) {
            if (mark instanceof Mark.Line line && (node.grown(END_PX).holds(line.points().get(0))
                    || node.grown(END_PX).holds(line.points().get(line.points().size() - 1)))) {
                return true;
            }
        }
        return false;
    }

    private void badges() {
        for (int i = 0; i < badges.size(); i++) {
            Placed badge = badges.get(i);
            for (int k = i + 1; k < badges.size(); k++) {
                if (badge.room().grown(-INTO_PX).meets(badges.get(k).room().grown(-INTO_PX))) {
                    complaints.add("the badges of " + badge.who() + " and " + badges.get(k).who() + " meet");
                }
            }
            for (Placed edge : edges) {
                if (edge.room().meets(badge.room()) && crossed(((Mark.Line) edge.mark()).points(), false,
                        badge.room().grown(-INTO_PX))) {
                    complaints.add("the badge of " + badge.who() + " lies on " + edge.who());
                }
            }
        }
    }
}
