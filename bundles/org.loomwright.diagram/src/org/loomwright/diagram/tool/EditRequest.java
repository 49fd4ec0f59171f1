// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.diagram.scene.Point;

/**
 * What a tool asks for when a gesture is done: mostly a change of the model; whoever owns the model makes it, as one step that
 * can
 * be undone. Elements are named by their ids; points and lengths are px of the sheet.
 */
public sealed interface EditRequest {
    /**
     * Moves elements.
     *
     * @param elements ids
     * @param dxPx     to the right, px of the sheet
     * @param dyPx     downwards, px of the sheet
     */
    record Move(Set<String> elements, double dxPx, double dyPx) implements EditRequest {
        public Move {
            elements = ordered(elements);
        }
    }

    /** Moves each element by its own way, as aligning does. */
    record MoveEach(Map<String, Point> byPx) implements EditRequest {
        public MoveEach {
            byPx = Collections.unmodifiableMap(new LinkedHashMap<>(byPx));
        }
    }

    /** Puts elements on another at a point of the sheet: devices into a place or onto a run. */
    record Drop(Set<String> elements, String target, Point at) implements EditRequest {
        public Drop {
            elements = ordered(elements);
        }
    }

    /**
     * Adds a device of a part.
     *
     * @param part   {@code library/part}
     * @param target place, run, device or way it is put on; null for free ground
     * @param at     where
     */
    record PlacePart(String part, String target, Point at) implements EditRequest {
    }

    /** Draws an edge between two endings: a cable, on the plan a run between places, on the earth diagram a strap or seam. */
    record Connect(String from, String to) implements EditRequest {
    }

    /** Fixes one end of an edge to another ending. */
    record Reconnect(Advice.EdgeEnd end, String to) implements EditRequest {
    }

    /** Gives an edge other bends; none lets the layout choose again. */
    record Bend(String edge, List<Point> bends) implements EditRequest {
        public Bend {
            bends = List.copyOf(bends);
        }
    }

    /** Makes a place; after names the place from which a run leads to it, or is null. */
    record MakePlace(Point at, String after) implements EditRequest {
    }

    /** Makes a run between two places. */
    record MakeRun(String from, String to) implements EditRequest {
    }

    /** Deletes elements with what makes no sense without them. */
    record Delete(Set<String> elements) implements EditRequest {
        public Delete {
            elements = ordered(elements);
        }
    }

    /** Puts copies beside the elements. */
    record Duplicate(Set<String> elements) implements EditRequest {
        public Duplicate {
            elements = ordered(elements);
        }
    }

    /** Takes elements into the clipboard. */
    record Copy(Set<String> elements) implements EditRequest {
        public Copy {
            elements = ordered(elements);
        }
    }

    /** Takes elements into the clipboard and deletes them. */
    record Cut(Set<String> elements) implements EditRequest {
        public Cut {
            elements = ordered(elements);
        }
    }

    /**
     * Adds what is in the clipboard.
     *
     * @param target what is selected: place to put devices in; may be null
     */
    record Paste(String target) implements EditRequest {
    }

    /** Wants the element's name to be written in place; the window opens a field and then asks for {@link Named}. */
    record Rename(String element) implements EditRequest {
    }

    /** Gives an element another name. */
    record Named(String element, String name) implements EditRequest {
    }

    private static Set<String> ordered(Set<String> elements) {
        return Collections.unmodifiableSet(new LinkedHashSet<>(elements));
    }
}
