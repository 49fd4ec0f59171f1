// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;

/** Paints the marks of a scene; one implementation a medium. */
public interface Painter {
    /** Begins a group. */
    void begin(Group group);

    /** Paints a line. */
    void line(Mark.Line line);

    /** Paints an area. */
    void area(Mark.Area area);

    /** Paints a circle. */
    void disc(Mark.Disc disc);

    /** Paints a text. */
    void text(Mark.Text text);

    /** Ends the group begun last. */
    void end(Group group);

    /** Paints all marks of a group, in order. */
    default void paint(Group group) {
        begin(group);
        for (Mark mark : group.marks()) {
            if (mark instanceof Mark.Line line) {
                line(line);
            } else if (mark instanceof Mark.Area area) {
                area(area);
            } else if (mark instanceof Mark.Disc disc) {
                disc(disc);
            } else if (mark instanceof Mark.Text text) {
                text(text);
            }
        }
        end(group);
    }
}
