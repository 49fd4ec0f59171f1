// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.loomwright.diagram.scene.Point;
import org.loomwright.model.edits.CoreEnd;

/**
 * What the model says to a gesture before it is done: pure questions, quick enough for every movement of the pointer. Elements
 * are named by their ids; null as a target is the free ground of the sheet.
 */
public interface Advice {
    /**
     * A terminal, or whatever else one end of an edge can be fixed to.
     *
     * @param id    id, for example {@code central/X1.3}
     * @param label what is shown, for example {@code 3}
     */
    record Ending(String id, String label) {
    }

    /**
     * One end of an edge.
     *
     * @param core id of the core, or of the edge itself where it has no cores
     * @param end  which end
     * @param at   id of the element it is fixed to, as drawn
     */
    record EdgeEnd(String core, CoreEnd end, String at) {
    }

    /** A point of the sheet that lies on the grid. */
    default Point gridOrigin() {
        return new Point(0, 0);
    }

    /** Whether an element may be moved on this drawing. */
    boolean movable(String element);

    /** What an element is called on this drawing, for example {@code -X1}. */
    String label(String element);

    /** Whether a part, written {@code library/part}, may be placed on a target; at is a point of the sheet. */
    Verdict place(String part, String target, Point at);

    /**
     * What comes of dropping elements on another at a point of the sheet; null when that means nothing, so that they are moved
     * on the sheet instead.
     */
    Verdict drop(Set<String> elements, String target, Point at);

    /** What an edge can be fixed to at an element: its terminals, or itself; empty where no edge can end. */
    List<Ending> endings(String element);

    /** The ending at an element that suits the other end best; null when none does. */
    String natural(String element, String otherEnding);

    /** Whether an edge may be drawn between two endings. */
    Verdict connect(String from, String to);

    /** The ends of an edge that can be fixed elsewhere; empty for what has none on this drawing. */
    List<EdgeEnd> ends(String edge);

    /** The ending at which the other end of the edge stays when one end is fixed elsewhere; null when it is open. */
    String kept(EdgeEnd moved);

    /** Whether one end of an edge may be fixed to another ending. */
    Verdict reconnect(EdgeEnd end, String to);

    /**
     * The line of an edge with its ends, px of the sheet, for one whose corners can be shifted; null for what cannot be bent
     * here.
     */
    List<Point> line(String edge);

    /** True for a place, between which runs lead. */
    boolean isPlace(String element);

    /** Whether a place may be made at a point of the sheet. */
    Verdict makePlace(Point at);

    /** Whether a run may be made between two places. */
    Verdict makeRun(String from, String to);

    /** Advice of a drawing on which things can be moved and nothing else. */
    static Advice moving(Predicate<String> movable) {
        return new MovingOnly(movable);
    }
}
