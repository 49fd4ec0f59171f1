// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.layout.LayoutEdge;
import org.loomwright.diagram.layout.Placed;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/** Places and routes on the sheet: those of the layout, and those that a person chose, which are kept. */
final class Routes {
    private final Map<String, Point> corners = new LinkedHashMap<>();
    private final Map<String, List<Point>> lines = new LinkedHashMap<>();
    private final Map<String, Point> labels = new LinkedHashMap<>();
    private final List<Placed.Dot> dots = new ArrayList<>();

    /**
     * @param dx left side of the layout on the sheet, px
     * @param dy upper side of the layout on the sheet, px
     */
    Routes(Placed placed, double dx, double dy) {
        placed.nodes().forEach((id, point) -> corners.put(id, point.moved(dx, dy)));
        placed.routes().forEach((id, points) -> lines.put(id, points.stream().map(point -> point.moved(dx, dy)).toList()));
        placed.labels().forEach((id, point) -> labels.put(id, point.moved(dx, dy)));
        placed.dots().forEach(dot -> dots.add(new Placed.Dot(dot.edge(), dot.at().moved(dx, dy))));
    }

    Point corner(String node) {
        return corners.get(node);
    }

    Map<String, List<Point>> lines() {
        return lines;
    }

    Point label(String edge) {
        return labels.get(edge);
    }

    List<Placed.Dot> dots() {
        return dots;
    }

    /** Puts nodes where a person wants them and draws their edges anew between the ports. */
    void keep(SheetChoices choices, Map<String, LineNode> nodes, List<LayoutEdge> edges) {
        Map<String, Point> shifts = new LinkedHashMap<>();
        nodes.values().forEach(node -> {
            Point wanted = node.element() == null ? null : choices.position(node.element());
            if (wanted != null) {
                Bounds shape = node.shape();
                Point corner = new Point(wanted.x() - shape.left(), wanted.y() - shape.top());
                Point before = corners.put(node.id(), corner);
                node.ports().forEach(port -> shifts.put(port.id(), new Point(corner.x() - before.x(), corner.y() - before.y())));
            }
        });
        for (LayoutEdge edge : edges) {
            List<Point> bends = choices.bends(edge.id());
            if (bends != null || shifts.containsKey(edge.from()) || shifts.containsKey(edge.to())) {
                reroute(edge, shifts, bends);
            }
        }
    }

    private void reroute(LayoutEdge edge, Map<String, Point> shifts, List<Point> bends) {
        List<Point> old = lines.get(edge.id());
        Point none = new Point(0, 0);
        Point from = old.get(0).moved(shifts.getOrDefault(edge.from(), none).x(), shifts.getOrDefault(edge.from(), none).y());
        Point end = old.get(old.size() - 1);
        Point to = end.moved(shifts.getOrDefault(edge.to(), none).x(), shifts.getOrDefault(edge.to(), none).y());
        List<Point> line = new ArrayList<>(List.of(from));
        if (bends != null) {
            line.addAll(bends);
        } else if (from.y() != to.y()) {
            double middle = (from.x() + to.x()) / 2;
            line.add(new Point(middle, from.y()));
            line.add(new Point(middle, to.y()));
        }
        line.add(to);
        lines.put(edge.id(), List.copyOf(line));
        dots.removeIf(dot -> dot.edge().equals(edge.id()));
        if (labels.containsKey(edge.id())) {
            labels.put(edge.id(), besideLongest(line, edge));
        }
    }

    /** On the longest level stretch, so that the line runs through the label's middle. */
    private static Point besideLongest(List<Point> line, LayoutEdge edge) {
        Bounds best = null;
        for (int i = 1; i < line.size(); i++) {
            Bounds stretch = Bounds.between(line.get(i - 1), line.get(i));
            if (stretch.height() == 0 && (best == null || stretch.width() > best.width())) {
                best = stretch;
            }
        }
        if (best == null) {
            best = Bounds.around(line.get(0), 0);
        }
        return new Point(best.centre().x() - edge.labelWidth() / 2, best.top() - edge.labelHeight() / 2);
    }
}
