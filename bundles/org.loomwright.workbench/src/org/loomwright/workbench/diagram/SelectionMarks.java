// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.diagram;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;
import org.loomwright.diagram.scene.Veil;

/** Marks laid over a drawing: what is selected, pointed at, found by a search, or being drawn around. */
final class SelectionMarks {
    private static final double CORE_PX = 2.25;
    private static final double HALO_PX = 10;
    private static final double APART_PX = 4;
    private static final double HOVER_PX = 1.25;

    private SelectionMarks() {
    }

    /** Selected elements: lines with a core in a halo, everything else framed. */
    static List<Group> selected(HitIndex hits, Collection<String> ids) {
        List<Mark> marks = new ArrayList<>();
        for (String id : ids) {
            for (Group group : hits.groups(id)) {
                if (isLine(group)) {
                    lines(group, Stroke.solid(Veil.selection(), HALO_PX), marks);
                    lines(group, Stroke.solid(Role.SELECT, CORE_PX), marks);
                }
            }
            frame(hits, id, Fill.solid(new Veil(Role.SELECT, 0.12)), Stroke.solid(Role.SELECT, CORE_PX), marks);
        }
        return groups(marks);
    }

    /** The element under the pointer. */
    static List<Group> hovered(HitIndex hits, String id) {
        List<Mark> marks = new ArrayList<>();
        if (id != null) {
            for (Group group : hits.groups(id)) {
                if (isLine(group)) {
                    lines(group, Stroke.solid(Veil.selection(), HALO_PX), marks);
                }
            }
            frame(hits, id, null, Stroke.solid(Role.SELECT, HOVER_PX), marks);
        }
        return groups(marks);
    }

    /** What a search found. */
    static List<Group> found(HitIndex hits, Collection<String> ids) {
        Tone tone = new Veil(Role.MARK, 0.55);
        List<Mark> marks = new ArrayList<>();
        for (String id : ids) {
            Bounds room = hits.bounds(id);
            if (room != null) {
                marks.add(new Mark.Area(corners(room.grown(APART_PX)), Fill.solid(tone), null));
            }
        }
        return groups(marks);
    }

    /** A rectangle being drawn. */
    static List<Group> marquee(Bounds room, double scale) {
        return room == null ? List.of() : groups(List.of(new Mark.Area(corners(room), Fill.solid(new Veil(Role.SELECT, 0.12)),
                Stroke.dashed(Role.SELECT, 1 / scale, 4 / scale, 3 / scale))));
    }

    private static void frame(HitIndex hits, String id, Fill fill, Stroke stroke, List<Mark> marks) {
        Bounds room = null;
        for (Group group : hits.groups(id)) {
            Bounds shape = isLine(group) || group.kind() == Group.Kind.BADGE || group.kind() == Group.Kind.LABEL ? null
                    : group.shape();
            room = shape == null ? room : shape.with(room);
        }
        if (room != null) {
            marks.add(new Mark.Area(corners(room.grown(APART_PX)), fill, stroke));
        }
    }

    /** Edges, and groups of lines only, are followed; areas are framed. */
    private static boolean isLine(Group group) {
        return group.kind() == Group.Kind.EDGE || group.kind() == Group.Kind.OVERLAY
                && group.marks().stream().allMatch(mark -> mark instanceof Mark.Line);
    }

    private static void lines(Group group, Stroke stroke, List<Mark> marks) {
        for (Mark mark : group.marks()) {
            if (mark instanceof Mark.Line line) {
                marks.add(new Mark.Line(line.points(), stroke));
            }
        }
    }

    private static List<Point> corners(Bounds room) {
        return List.of(new Point(room.left(), room.top()), new Point(room.right(), room.top()),
                new Point(room.right(), room.bottom()), new Point(room.left(), room.bottom()));
    }

    private static List<Group> groups(List<Mark> marks) {
        return marks.isEmpty() ? List.of() : List.of(new Group(null, null, Group.Kind.OVERLAY, marks));
    }
}
