// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Set;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.scene.Point;
import org.loomwright.workbench.editor.DrawingKind;

/** Gestures on the plan, each with the mouse and with the keyboard: the file is as expected, undo and redo are whole. */
class PlanGestureTest {
    private Drawn drawn;
    private Robot robot;

    @BeforeEach
    void open() throws Exception {
        drawn = Drawn.open("finch", DrawingKind.PLAN);
        robot = drawn.robot();
    }

    @AfterEach
    void close() throws Exception {
        drawn.close();
    }

    @Test
    void arrowsMoveAPlaceByStepsOfTheGrid() throws Exception {
        drawn.proves("plan-move-keys", () -> {
            robot.walkTo("bench");
            robot.key(SWT.ARROW_RIGHT, SWT.SHIFT);
        });
    }

    @Test
    void escapeGivesUpADrag() throws Exception {
        robot.moveTo("bench");
        robot.press();
        Point from = robot.spot("bench");
        robot.moveTo(new Point(from.x() + 40, from.y()));
        robot.key(SWT.ESC);
        robot.release();
        robot.settled();
        assertFalse(drawn.editor().isDirty());
    }

    @Test
    void aDeviceDroppedOnAPlaceGoesThereWithItsCables() throws Exception {
        drawn.proves("plan-drop-mouse", () -> robot.drag("E1", "bench"));
    }

    @Test
    void aDeviceTakenUpByKeysGoesToAnotherPlace() throws Exception {
        drawn.proves("plan-drop-keys", () -> {
            robot.walkTo("E1");
            robot.key(' ');
            robot.aimAt("bench");
            robot.key(SWT.CR);
        });
    }

    @Test
    void aDoubleClickWritesANameInPlace() throws Exception {
        drawn.proves("plan-rename-mouse", () -> {
            robot.doubleClick("side");
            robot.type("door");
            robot.key(SWT.CR);
        });
    }

    @Test
    void f2WritesANameInPlace() throws Exception {
        drawn.proves("plan-rename-keys", () -> {
            robot.walkTo("side");
            robot.key(SWT.F2);
            robot.type("door");
            robot.key(SWT.CR);
        });
    }

    @Test
    void deletingAPlaceTakesItsRunsAlong() throws Exception {
        drawn.proves("plan-delete-keys", () -> {
            robot.walkTo("bench");
            robot.key(SWT.DEL);
        });
        assertEquals(Set.of(), drawn.selection());
    }

    @Test
    void theMenuDeletes() throws Exception {
        drawn.proves("plan-delete-mouse", () -> robot.menu("bench", "Delete"));
    }

    @Test
    void clicksDrawRunsAndPlaces() throws Exception {
        drawn.proves("plan-run-mouse", () -> {
            robot.choose("runs");
            robot.click("bench");
            robot.settled();
            robot.click("side");
            robot.settled();
            robot.key(SWT.ESC);
        });
    }

    @Test
    void keysDrawARun() throws Exception {
        drawn.proves("plan-run-keys", () -> {
            robot.key('r');
            robot.aimAt("bench");
            robot.key(SWT.CR);
            robot.aimAt("side");
            robot.key(SWT.CR);
            robot.settled();
            robot.key(SWT.ESC);
        });
    }

    @Test
    void keysMakeAPlace() throws Exception {
        drawn.proves("plan-place-keys", () -> {
            robot.key('l');
            robot.key(SWT.ARROW_RIGHT);
            robot.key(SWT.ARROW_RIGHT, SWT.SHIFT);
            robot.key(SWT.CR);
        });
    }

    @Test
    void aPartDraggedFromThePaletteIsPlaced() throws Exception {
        drawn.proves("plan-part-mouse", () -> {
            robot.seek("interior light");
            robot.dragPart(0, "bench");
        });
        assertEquals(Set.of("E3"), drawn.selection());
    }

    @Test
    void aPartClickedIsPlacedWhereThePlanIsClicked() throws Exception {
        drawn.proves("plan-part-click", () -> {
            robot.seek("interior light");
            robot.clickPart(0);
            robot.click("bench");
        });
    }

    @Test
    void aPartIsSoughtAndPlacedByKeys() throws Exception {
        drawn.proves("plan-part-keys", () -> {
            robot.key('p');
            robot.type("interior light");
            robot.key(SWT.ARROW_DOWN);
            robot.key(SWT.CR);
            robot.aimAt("bench");
            robot.key(SWT.CR);
        });
    }

    @Test
    void placesLineUp() throws Exception {
        drawn.proves("plan-align-keys", () -> {
            robot.walkTo("rear");
            robot.shiftClick("side");
            robot.key(SWT.ARROW_UP, SWT.CTRL, SWT.SHIFT);
        });
    }
}
