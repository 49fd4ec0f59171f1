// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Scene;

/** Finds texts that meet each other or leave the sheet. */
public final class SceneCollisions {
    private record Box(String text, double left, double top, double right, double bottom) {
        boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    private SceneCollisions() {
    }

    /** What is wrong, in words; empty when nothing is. */
    public static List<String> of(Scene scene, Type type) {
        List<Box> boxes = new ArrayList<>();
        for (Group group : scene.groups()) {
            for (Mark mark : group.marks()) {
                if (mark instanceof Mark.Text text) {
                    boxes.add(box(text, type));
                }
            }
        }
        List<String> found = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            if (box.left() < 0 || box.top() < 0 || box.right() > scene.widthPx() || box.bottom() > scene.heightPx()) {
                found.add("'" + box.text() + "' leaves the sheet");
            }
            for (int k = 0; k < i; k++) {
                if (box.meets(boxes.get(k))) {
                    found.add("'" + box.text() + "' meets '" + boxes.get(k).text() + "'");
                }
            }
        }
        return found;
    }

    private static Box box(Mark.Text text, Type type) {
        double width = type.widthPx(text.text(), text.sizePx(), text.bold());
        double left = text.at().x() - switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        return new Box(text.text(), left, text.at().y() - 0.76 * text.sizePx(), left + width, text.at().y() + 0.22 * text.sizePx());
    }
}
