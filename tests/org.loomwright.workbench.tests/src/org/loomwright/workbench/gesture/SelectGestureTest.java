// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;
import org.loomwright.workbench.editor.DrawingKind;

/** Selecting with mouse and keyboard. */
class SelectGestureTest {
    private Drawn drawn;

    private Robot open(DrawingKind kind) throws Exception {
        drawn = Drawn.open("finch", kind);
        return drawn.robot();
    }

    @AfterEach
    void close() throws Exception {
        drawn.close();
    }

    @Test
    void aClickSelectsAndShiftAdds() throws Exception {
        Robot robot = open(DrawingKind.PLAN);
        robot.click("E1");
        assertEquals(Set.of("E1"), drawn.selection());
        robot.shiftClick("E2");
        assertEquals(Set.of("E1", "E2"), drawn.selection());
        robot.shiftClick("E1");
        assertEquals(Set.of("E2"), drawn.selection());
        assertFalse(drawn.editor().isDirty());
    }

    @Test
    void aRectangleSelectsWhatLiesInIt() throws Exception {
        Robot robot = open(DrawingKind.PLAN);
        Bounds room = robot.canvas().viewport().toScreen(robot.canvas().hits().bounds("E2"));
        robot.drag(new Point(4, robot.canvas().getSize().y - 4), new Point(room.right() + 6, room.top() - 6));
        assertTrue(drawn.selection().contains("E2"), () -> "selected " + drawn.selection());
        assertFalse(drawn.selection().contains("G1"));
        robot.key(SWT.ESC);
        assertEquals(Set.of(), drawn.selection());
    }

    @Test
    void keysSelectEverything() throws Exception {
        Robot robot = open(DrawingKind.LINE);
        robot.key('a', SWT.CTRL);
        assertTrue(drawn.selection().containsAll(Set.of("E1", "main/X1", "main/W12")), () -> "selected " + drawn.selection());
        robot.key(SWT.ESC);
        assertEquals(Set.of(), drawn.selection());
    }
}
