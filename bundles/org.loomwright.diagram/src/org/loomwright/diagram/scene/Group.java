// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.List;

/**
 * Marks that belong together.
 *
 * @param element id of the element they stand for, as findings name it, or null; several groups may stand for one element: its
 *                symbol, its label, its badge
 * @param name    what it is, for those who do not see it; may be null
 * @param kind    what part they play
 * @param marks   marks in the order of painting
 */
public record Group(String element, String name, Kind kind, List<Mark> marks) {
    /** What part a group plays. */
    public enum Kind {
        /** What lies below everything and stands still: frame, grid, outline, zones, title block, legend. */
        GROUND,
        /** A device, body, place: something with an area, which edges go around. */
        NODE,
        /** A terminal, earth point or way at a node's rim. */
        PORT,
        /** A cable, strap or run: lines. */
        EDGE,
        /** Texts. */
        LABEL,
        /** What is laid over nodes and edges for one question: strips of colour, halos, arrows. */
        OVERLAY,
        /** Marks of findings. */
        BADGE
    }

    public Group {
        marks = List.copyOf(marks);
    }

    /** The same group elsewhere. */
    public Group moved(double dx, double dy) {
        return new Group(element, name, kind, marks.stream().map(mark -> mark.moved(dx, dy)).toList());
    }

    /** The room its lines, areas and circles take; null when it has none. */
    public Bounds shape() {
        Bounds all = null;
        for (Mark mark : marks) {
            if (!(mark instanceof Mark.Text)) {
                all = mark.outline().with(all);
            }
        }
        return all;
    }
}
