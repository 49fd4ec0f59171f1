// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Set;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.tool.Verdict;
import org.loomwright.workbench.editor.DrawingKind;

/** Gestures on the line diagram, each with the mouse and with the keyboard. */
class LineGestureTest {
    private Drawn drawn;
    private Robot robot;

    @BeforeEach
    void open() throws Exception {
        drawn = Drawn.open("finch", DrawingKind.LINE);
        robot = drawn.robot();
    }

    @AfterEach
    void close() throws Exception {
        drawn.close();
    }

    @Test
    void aDeviceDraggedStaysWhereItWasPut() throws Exception {
        drawn.proves("line-move-mouse", () -> robot.dragBy("E2", 40, 30));
    }

    @Test
    void arrowsMoveADevice() throws Exception {
        drawn.proves("line-move-keys", () -> {
            robot.walkTo("E2");
            robot.key(SWT.ARROW_DOWN, SWT.SHIFT);
        });
    }

    @Test
    void aDragConnects() throws Exception {
        Set<String> made = drawn.proves("line-connect-mouse", () -> {
            robot.choose("connect");
            robot.drag("main/X1", "E2");
        });
        assertEquals(1, made.size());
    }

    @Test
    void keysConnect() throws Exception {
        drawn.proves("line-connect-keys", () -> {
            robot.walkTo("main/X1");
            robot.key('c');
            robot.aimAt("E2");
            robot.key(SWT.CR);
        });
    }

    @Test
    void whatMayNotBeConnectedIsRefusedWithTheReason() throws Exception {
        robot.choose("connect");
        robot.moveTo("E1");
        robot.press();
        robot.moveTo("E1");
        robot.release();
        robot.moveTo("main/F1");
        robot.settled();
        Verdict verdict = robot.canvas().verdict();
        assertFalse(verdict == null || verdict.possible() && verdict.text().isEmpty(), () -> "said was " + verdict);
        robot.key(SWT.ESC);
        assertFalse(drawn.editor().isDirty());
    }

    @Test
    void aNameIsWrittenInPlace() throws Exception {
        drawn.proves("line-rename-mouse", () -> {
            robot.doubleClick("main/X1");
            robot.type("X7");
            robot.key(SWT.CR);
        });
    }

    @Test
    void undoInTheFieldIsTheFields() throws Exception {
        robot.walkTo("main/X1");
        robot.key(SWT.F2);
        robot.type("Q");
        robot.key('z', SWT.CTRL);
        assertEquals("X1", robot.field().getText());
        robot.key(SWT.ESC);
        robot.settled();
        assertFalse(drawn.editor().isDirty());
    }

    @Test
    void deletingADeviceTakesItsCablesAlong() throws Exception {
        drawn.proves("line-delete-keys", () -> {
            robot.walkTo("E1");
            robot.key(SWT.DEL);
        });
    }

    @Test
    void theMenuDeletes() throws Exception {
        drawn.proves("line-delete-mouse", () -> robot.menu("main/W12", "Delete"));
    }

    @Test
    void anEndIsFixedElsewhereByKeys() throws Exception {
        drawn.proves("line-reconnect-keys", () -> {
            robot.walkTo("main/W12");
            robot.key('c');
            robot.key(' ');
            robot.aimAt("E2");
            robot.key(SWT.CR);
        });
    }

    @Test
    void aPartIsPlacedAtAFreeWay() throws Exception {
        drawn.proves("line-part-mouse", () -> {
            robot.seek("interior light");
            robot.clickPart(0);
            robot.click("main/X1");
        });
    }

    @Test
    void keysCopyAndPaste() throws Exception {
        drawn.proves("line-paste-keys", () -> {
            robot.walkTo("E1");
            robot.key('c', SWT.CTRL);
            robot.key('v', SWT.CTRL);
        });
    }

    @Test
    void theMenuCopiesAndPastes() throws Exception {
        drawn.proves("line-paste-mouse", () -> {
            robot.menu("E1", "Copy");
            robot.menu("E1", "Paste");
        });
    }

    @Test
    void whatIsCopiedIsPastedIntoAnotherArrangement() throws Exception {
        drawn.proves("line-paste-other", () -> {
            robot.walkTo("main/X1");
            robot.key('c', SWT.CTRL);
            drawn.editor().document().showArrangement("other");
            robot.settled();
            robot.key('v', SWT.CTRL);
        });
    }

    @Test
    void keysDuplicate() throws Exception {
        drawn.proves("line-duplicate-keys", () -> {
            robot.walkTo("E2");
            robot.key('d', SWT.CTRL);
        });
    }

    @Test
    void keysCut() throws Exception {
        drawn.proves("line-cut-keys", () -> {
            robot.walkTo("E2");
            robot.key('x', SWT.CTRL);
        });
    }

    @Test
    void theMenuDuplicates() throws Exception {
        drawn.proves("line-duplicate-mouse", () -> robot.menu("E2", "Duplicate"));
    }

    @Test
    void theMenuCuts() throws Exception {
        drawn.proves("line-cut-mouse", () -> robot.menu("E2", "Cut"));
    }

    @Test
    void f2WritesANameInPlace() throws Exception {
        drawn.proves("line-rename-keys", () -> {
            robot.walkTo("main/W12");
            robot.key(SWT.F2);
            robot.type("W20");
            robot.key(SWT.CR);
        });
    }

    @Test
    void anEndDraggedFromItsHandleIsFixedElsewhere() throws Exception {
        drawn.proves("line-reconnect-mouse", () -> {
            robot.click("main/W12");
            robot.dragEnd("main/W12", "E1", "E2");
        });
    }

    @Test
    void aPartIsPlacedAtAFreeWayByKeys() throws Exception {
        drawn.proves("line-part-keys", () -> {
            robot.key('p');
            robot.type("interior light");
            robot.key(SWT.ARROW_DOWN);
            robot.key(SWT.CR);
            robot.aimAt("main/X1");
            robot.key(SWT.CR);
        });
    }

    @Test
    void theGridIsSwitchedOff() throws Exception {
        assertFalse(robot.canvas().context().gridPx() == 0);
        robot.key('g');
        assertEquals(0, robot.canvas().context().gridPx());
        robot.key('g');
        assertFalse(robot.canvas().context().gridPx() == 0);
    }
}
