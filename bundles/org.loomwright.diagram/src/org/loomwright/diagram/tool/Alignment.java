// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/** Ways to line up what is selected. */
public enum Alignment {
    /** Left sides with the leftmost. */
    LEFT(true, 0, false),
    /** Middles, one above the other, with the middle of all. */
    CENTRE(true, 0.5, false),
    /** Right sides with the rightmost. */
    RIGHT(true, 1, false),
    /** Upper sides with the uppermost. */
    TOP(false, 0, false),
    /** Middles, one beside the other, with the middle of all. */
    MIDDLE(false, 0.5, false),
    /** Lower sides with the lowest. */
    BOTTOM(false, 1, false),
    /** Equal gaps from left to right; the outermost stay. */
    ACROSS(true, 0, true),
    /** Equal gaps from top to bottom; the outermost stay. */
    DOWN(false, 0, true);

    private static final double NOTHING_PX = 0.01;
    private final boolean horizontal;
    private final double share;
    private final boolean spread;

    Alignment(boolean horizontal, double share, boolean spread) {
        this.horizontal = horizontal;
        this.share = share;
        this.spread = spread;
    }

    /** The request that lines up what can be moved of the selection; null when that changes nothing. */
    public EditRequest.MoveEach request(ToolContext context) {
        Map<String, Bounds> shapes = new LinkedHashMap<>();
        for (String id : context.selection()) {
            Bounds shape = context.advice().movable(id) ? context.hits().shape(id) : null;
            if (shape != null) {
                // rings of places differ in size, but places are points
                shapes.put(id, context.advice().isPlace(id) ? Bounds.around(shape.centre(), 0) : shape);
            }
        }
        Map<String, Point> byPx = new LinkedHashMap<>();
        shifts(shapes).forEach((id, by) -> {
            if (StrictMath.abs(by) > NOTHING_PX) {
                byPx.put(id, horizontal ? new Point(by, 0) : new Point(0, by));
            }
        });
        return byPx.isEmpty() ? null : new EditRequest.MoveEach(byPx);
    }

    private Map<String, Double> shifts(Map<String, Bounds> shapes) {
        Map<String, Double> shifts = new LinkedHashMap<>();
        if (shapes.size() < (spread ? 3 : 2)) {
            return shifts;
        }
        if (!spread) {
            Bounds all = shapes.values().stream().reduce(Bounds::with).orElseThrow();
            shapes.forEach((id, shape) -> shifts.put(id, line(all) - line(shape)));
            return shifts;
        }
        ToDoubleFunction<Bounds> low = shape -> horizontal ? shape.left() : shape.top();
        ToDoubleFunction<Bounds> size = shape -> horizontal ? shape.width() : shape.height();
        List<String> order = new ArrayList<>(shapes.keySet());
        order.sort(Comparator.comparingDouble(id -> low.applyAsDouble(shapes.get(id))));
        Bounds first = shapes.get(order.get(0));
        Bounds last = shapes.get(order.get(order.size() - 1));
        double between = low.applyAsDouble(last) - low.applyAsDouble(first) - size.applyAsDouble(first);
        double inner = order.subList(1, order.size() - 1).stream().mapToDouble(id -> size.applyAsDouble(shapes.get(id))).sum();
        double gap = (between - inner) / (order.size() - 1);
        double at = low.applyAsDouble(first) + size.applyAsDouble(first) + gap;
        for (String id : order.subList(1, order.size() - 1)) {
            shifts.put(id, at - low.applyAsDouble(shapes.get(id)));
            at += size.applyAsDouble(shapes.get(id)) + gap;
        }
        return shifts;
    }

    private double line(Bounds shape) {
        return horizontal ? shape.left() + share * shape.width() : shape.top() + share * shape.height();
    }
}
