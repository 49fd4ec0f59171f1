// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;

/** The sign of the frame at the end of a line that runs to the right, with the body's name. */
final class FrameStub {
    /** Room of sign and gap before the name, px. */
    static final double SIGN_PX = 14;

    private FrameStub() {
    }

    /** Sign at the end x, y of a line. */
    static List<Mark> marks(double x, double y, String name, Role tone) {
        Stroke stroke = Stroke.solid(tone, 1.5);
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Line(List.of(new Point(x, y - 9), new Point(x, y + 9)), stroke));
        for (int leg = -1; leg <= 1; leg++) {
            marks.add(new Mark.Line(List.of(new Point(x, y + 9.0 * leg), new Point(x + 7, y + 9.0 * leg + 4)), stroke));
        }
        marks.add(LineText.start(x + SIGN_PX, y + 4, name, false, tone == Role.INK3 ? Role.INK3 : Role.INK2));
        return marks;
    }
}
