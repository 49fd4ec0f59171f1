// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.tool.Verdict;

/** Tells those who do not see a drawing what is in it: each element as a child with its name. */
final class CanvasAccess {
    private final SceneCanvas canvas;

    CanvasAccess(SceneCanvas canvas) {
        this.canvas = canvas;
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = event.childID == ACC.CHILDID_SELF ? canvas.scene().title() : name(event.childID);
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = canvas.verdict() == null ? null : canvas.verdict().text();
            }
        });
        canvas.getAccessible().addAccessibleControlListener(new Children());
    }

    /** Something was selected. */
    void selected(Set<String> ids) {
        if (ids.size() == 1) {
            int child = elements().indexOf(ids.iterator().next());
            if (child >= 0) {
                canvas.getAccessible().setFocus(child);
            }
        }
    }

    /** The model says something else to a gesture. */
    void told(Verdict verdict) {
        if (verdict != null) {
            canvas.getAccessible().sendEvent(ACC.EVENT_DESCRIPTION_CHANGED, null);
        }
    }

    private List<String> elements() {
        return new ArrayList<>(canvas.hits().elements());
    }

    private String name(int child) {
        List<String> ids = elements();
        if (child < 0 || child >= ids.size()) {
            return null;
        }
        String id = ids.get(child);
        return canvas.hits().groups(id).stream().map(Group::name).filter(name -> name != null && !name.isBlank()).findFirst()
                .orElse(id);
    }

    private final class Children extends AccessibleControlAdapter {
        @Override
        public void getRole(AccessibleControlEvent event) {
            event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_CANVAS : ACC.ROLE_GRAPHIC;
        }

        @Override
        public void getChildCount(AccessibleControlEvent event) {
            event.detail = canvas.hits().elements().size();
        }

        @Override
        public void getChildAtPoint(AccessibleControlEvent event) {
            org.eclipse.swt.graphics.Point at = canvas.toControl(event.x, event.y);
            HitIndex.Hit hit = canvas.hits().at(canvas.viewport().toSheet(new Point(at.x, at.y)), 5, canvas.viewport());
            event.childID = hit == null ? ACC.CHILDID_SELF : elements().indexOf(hit.element());
        }

        @Override
        public void getLocation(AccessibleControlEvent event) {
            List<String> ids = elements();
            Bounds room = event.childID >= 0 && event.childID < ids.size() ? canvas.hits().bounds(ids.get(event.childID)) : null;
            if (room != null) {
                Bounds seen = canvas.viewport().toScreen(room);
                org.eclipse.swt.graphics.Point at = canvas.toDisplay((int) seen.left(), (int) seen.top());
                event.x = at.x;
                event.y = at.y;
                event.width = (int) seen.width();
                event.height = (int) seen.height();
            }
        }
    }
}
