// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Point;

/** Walks from element to element of a drawing by keys. */
final class Walk {
    /** Elements within this height count as one row, px of the sheet. */
    private static final double ROW_PX = 24;
    private final HitIndex hits;
    private final List<String> elements = new ArrayList<>();

    private Walk(HitIndex hits) {
        this.hits = hits;
    }

    /** Over the elements wanted, row by row. */
    static Walk over(HitIndex hits, Predicate<String> wanted) {
        Walk walk = new Walk(hits);
        hits.elements().stream().filter(wanted).forEach(walk.elements::add);
        walk.elements.sort(Comparator.comparingDouble((String id) -> StrictMath.rint(walk.middle(id).y() / ROW_PX))
                .thenComparingDouble(id -> walk.middle(id).x()));
        return walk;
    }

    boolean empty() {
        return elements.isEmpty();
    }

    /** Where a key leads from an element, or from nowhere (null); null where there is nothing. */
    String to(KeyEvent event, String from) {
        if (elements.isEmpty()) {
            return null;
        }
        return event.key() == KeyEvent.Key.TAB || from == null || hits.bounds(from) == null
                ? next(from, event.key() == KeyEvent.Key.TAB && event.shift()) : towards(event.key(), from);
    }

    private String next(String from, boolean back) {
        int at = elements.indexOf(from);
        int size = elements.size();
        return elements.get(at < 0 ? back ? size - 1 : 0 : (at + (back ? size - 1 : 1)) % size);
    }

    /** The nearest in a direction; what lies aside counts twice as far. */
    private String towards(KeyEvent.Key direction, String from) {
        Point here = middle(from);
        String best = from;
        double least = Double.POSITIVE_INFINITY;
        for (String id : elements) {
            Point there = middle(id);
            double dx = there.x() - here.x();
            double dy = there.y() - here.y();
            double on = switch (direction) {
                case LEFT -> -dx;
                case RIGHT -> dx;
                case UP -> -dy;
                default -> dy;
            };
            double aside = direction == KeyEvent.Key.LEFT || direction == KeyEvent.Key.RIGHT ? dy : dx;
            double far = on + 2 * StrictMath.abs(aside);
            if (!id.equals(from) && on > 1 && far < least) {
                least = far;
                best = id;
            }
        }
        return best;
    }

    /** The middle of an element: of its shape, else on its line. */
    Point middle(String id) {
        return middle(id, hits);
    }

    /**
     * The middle of an element: of its shape, else of the longest piece of its line, else of its room; null when it is not
     * drawn.
     */
    static Point middle(String id, HitIndex hits) {
        Bounds shape = hits.shape(id);
        if (shape != null) {
            return shape.centre();
        }
        Point best = null;
        double longest = -1;
        for (List<Point> line : hits.lines(id)) {
            for (int i = 1; i < line.size(); i++) {
                double piece = line.get(i - 1).distance(line.get(i));
                if (piece > longest) {
                    longest = piece;
                    best = Bounds.between(line.get(i - 1), line.get(i)).centre();
                }
            }
        }
        Bounds room = hits.bounds(id);
        return best != null ? best : room == null ? null : room.centre();
    }

    /** True for the keys that walk. */
    static boolean walks(KeyEvent.Key key) {
        return switch (key) {
            case TAB, LEFT, RIGHT, UP, DOWN -> true;
            default -> false;
        };
    }
}
