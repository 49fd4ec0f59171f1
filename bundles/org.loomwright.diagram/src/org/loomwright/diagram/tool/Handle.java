// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/**
 * A handle of the one selected edge.
 *
 * @param edge    the edge
 * @param end     end that it fixes elsewhere; null for a stretch
 * @param stretch index of the stretch that it shifts; -1 for an end
 * @param at      where it is, px of the window
 */
record Handle(String edge, Advice.EdgeEnd end, int stretch, Point at) {
    /** Shorter stretches have no handle of their own, px of the window. */
    private static final double SHORTEST_PX = 20;

    /** Handles of what is selected: none unless it is one edge. */
    static List<Handle> of(ToolContext context) {
        List<Handle> handles = new ArrayList<>();
        if (context.selection().size() != 1) {
            return handles;
        }
        String edge = context.selection().iterator().next();
        List<Point> line = context.advice().line(edge);
        for (int i = 1; line != null && i < line.size(); i++) {
            Point a = context.viewport().toScreen(line.get(i - 1));
            Point b = context.viewport().toScreen(line.get(i));
            if (a.distance(b) >= SHORTEST_PX) {
                handles.add(new Handle(edge, null, i - 1, Bounds.between(a, b).centre()));
            }
        }
        for (Advice.EdgeEnd end : context.advice().ends(edge)) {
            Point at = tip(edge, end, context);
            if (at != null) {
                handles.add(new Handle(edge, end, -1, context.viewport().toScreen(at)));
            }
        }
        return handles;
    }

    /** The tip of the edge's lines that is nearest to the element the end is fixed to. */
    private static Point tip(String edge, Advice.EdgeEnd end, ToolContext context) {
        Bounds shape = context.hits().shape(end.at());
        Point best = null;
        for (List<Point> line : shape == null ? List.<List<Point>>of() : context.hits().lines(edge)) {
            for (Point tip : List.of(line.get(0), line.get(line.size() - 1))) {
                if (best == null || shape.distance(tip) < shape.distance(best)) {
                    best = tip;
                }
            }
        }
        return best;
    }

    /** The handle under a point of the window; ends come first. */
    static Handle under(Point screen, ToolContext context) {
        Handle found = null;
        for (Handle handle : of(context)) {
            if (handle.at().distance(screen) <= Overlay.HANDLE_PX + 3) {
                found = found == null || handle.end() != null ? handle : found;
            }
        }
        return found;
    }
}
