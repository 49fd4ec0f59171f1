// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.TextMeasure;

/**
 * A drawing without the frame and the title block that it has on a screen: paper has its own. A frame with fields that
 * references in the drawing name stays.
 */
final class BareScene {
    private static final String TITLE_BLOCK = "title block";
    private static final String FIELDS = "fields of the sheet";
    /** A frame lies no further from the edge of the sheet, px. */
    private static final double FRAME_PX = 40;

    private BareScene() {
    }

    static Scene of(Scene scene) {
        List<Group> groups = new ArrayList<>();
        boolean fields = scene.groups().stream().anyMatch(group -> FIELDS.equals(group.name()));
        for (Group group : scene.groups()) {
            if (group.kind() != Group.Kind.GROUND || group.element() != null) {
                groups.add(group);
            } else if (!TITLE_BLOCK.equals(group.name())) {
                List<Mark> kept = group.marks().stream().filter(mark -> fields || !frame(mark, scene)).toList();
                if (!kept.isEmpty()) {
                    groups.add(new Group(null, group.name(), group.kind(), kept));
                }
            }
        }
        return new Scene(scene.title(), scene.widthPx(), scene.heightPx(), groups);
    }

    private static boolean frame(Mark mark, Scene scene) {
        return mark instanceof Mark.Area area && area.fill() == null && area.outline()
                .holds(new Bounds(FRAME_PX, FRAME_PX, scene.widthPx() - FRAME_PX, scene.heightPx() - FRAME_PX));
    }

    /** The ground that its marks take; all of it for an empty one. */
    static Bounds ground(Scene scene, TextMeasure type) {
        Bounds all = null;
        for (Group group : scene.groups()) {
            Bounds room = type.bounds(group);
            all = room == null ? all : room.with(all);
        }
        return all == null ? new Bounds(0, 0, scene.widthPx(), scene.heightPx()) : all.grown(1);
    }
}
