// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group.Kind;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Viewport;

class ToolsTest {
    private static final Type TYPE = Type.load();

    /** A window: holds what tools leave to it. */
    private static final class Window {
        private final HitIndex hits;
        private Viewport viewport = Viewport.of(2000, 2000);
        private Set<String> selection = Set.of();
        private Tool tool = new SelectTool();
        private Feedback feedback = Feedback.NONE;
        private EditRequest edit;
        private int edits;

        Window(int nodes) {
            SceneBuilder scene = new SceneBuilder("t", 2000, 2000);
            for (int i = 0; i < nodes; i++) {
                double x = 20 + 60 * (i % 30);
                double y = 20 + 60 * (i / 30);
                scene.group(Kind.NODE, "E" + i, null).rectangle(Fill.solid(Role.PLATE), null, x, y, 40, 20)
                        .text(x, y + 35, "E" + i, 12, false, Mark.Anchor.START, Role.INK);
            }
            hits = HitIndex.of(scene.build(), TYPE);
        }

        Window to(PointerEvent event) {
            return take(tool.pointer(event, context()));
        }

        Window key(KeyEvent.Key key) {
            return take(tool.key(KeyEvent.of(key), context()));
        }

        private ToolContext context() {
            return new ToolContext(hits, viewport, selection, id -> !id.equals("E9"), 10);
        }

        Window take(ToolResult result) {
            tool = result.next();
            feedback = result.feedback();
            selection = result.selection() == null ? selection : result.selection();
            viewport = result.viewport() == null ? viewport : result.viewport();
            edit = result.edit();
            edits += edit == null ? 0 : 1;
            return this;
        }
    }

    @Test
    void aClickSelectsAndShiftAddsAndTakesAway() {
        Window window = new Window(10).to(PointerEvent.press(25, 25)).to(PointerEvent.release(25, 25));
        assertEquals(Set.of("E0"), window.selection);
        window.to(PointerEvent.press(85, 25).withShift()).to(PointerEvent.release(85, 25).withShift());
        assertEquals(Set.of("E0", "E1"), window.selection);
        window.to(PointerEvent.press(25, 25).withCtrl()).to(PointerEvent.release(25, 25).withCtrl());
        assertEquals(Set.of("E1"), window.selection);
        window.to(PointerEvent.press(25, 400)).to(PointerEvent.release(25, 400));
        assertEquals(Set.of(), window.selection);
        assertEquals(0, window.edits);
    }

    @Test
    void hoveringTellsWhatIsUnderThePointerAndLeavingForgetsIt() {
        Window window = new Window(10).to(PointerEvent.move(25, 25));
        assertEquals("E0", window.feedback.hover());
        window.to(new PointerEvent(PointerEvent.What.LEAVE, new Point(0, 0), 0, false, false));
        assertNull(window.feedback.hover());
    }

    @Test
    void aDragMovesOnTheGridAndAsksForTheEditWhenLetGoOnly() {
        Window window = new Window(10).to(PointerEvent.press(25, 25)).to(PointerEvent.move(40, 33)).to(PointerEvent.move(58, 41));
        assertEquals(0, window.edits);
        assertEquals(30, window.feedback.dxPx());
        assertEquals(20, window.feedback.dyPx());
        window.to(PointerEvent.release(58, 41));
        assertEquals(new EditRequest.Move(Set.of("E0"), 30, 20), window.edit);
        assertInstanceOf(SelectTool.class, window.tool);
    }

    @Test
    void ctrlMovesFreelyAndShiftAlongOneDirectionAtAnyZoom() {
        Window window = new Window(10);
        window.viewport = new Viewport(2, 0, 0, 2000, 2000);
        window.to(PointerEvent.press(50, 50)).to(PointerEvent.move(60, 50)).to(PointerEvent.release(63, 51).withCtrl());
        assertEquals(new EditRequest.Move(Set.of("E0"), 6.5, 0.5), window.edit);
        window.to(PointerEvent.press(50, 50)).to(PointerEvent.move(60, 50)).to(PointerEvent.release(90, 70).withShift());
        assertEquals(new EditRequest.Move(Set.of("E0"), 20, 0), window.edit);
    }

    @Test
    void escapeAndLostCaptureGiveUpWithoutAnEdit() {
        Window window = new Window(10).to(PointerEvent.press(25, 25)).to(PointerEvent.move(80, 80)).key(KeyEvent.Key.ESCAPE);
        assertInstanceOf(SelectTool.class, window.tool);
        assertSame(Feedback.NONE, window.feedback);
        window.to(PointerEvent.release(80, 80));
        window.to(PointerEvent.press(25, 25)).to(PointerEvent.move(80, 80));
        window.take(window.tool.captureLost());
        assertInstanceOf(SelectTool.class, window.tool);
        assertEquals(0, window.edits);
    }

    @Test
    void whatMayNotBeMovedIsNotMoved() {
        Window window = new Window(10);
        window.selection = Set.of("E9");
        window.to(PointerEvent.press(565, 25)).to(PointerEvent.move(600, 80)).to(PointerEvent.release(600, 80));
        assertEquals(0, window.edits);
        window.selection = Set.of("E9", "E0");
        window.key(KeyEvent.Key.RIGHT);
        assertEquals(new EditRequest.Move(Set.of("E0"), 10, 0), window.edit);
    }

    @Test
    void aRectangleSelectsWhatLiesInItAndShiftKeepsTheRest() {
        Window window = new Window(10).to(PointerEvent.press(70, 5)).to(PointerEvent.move(190, 70));
        assertEquals(120, window.feedback.marquee().width());
        window.to(PointerEvent.release(190, 70));
        assertEquals(Set.of("E1", "E2"), window.selection);
        window.to(PointerEvent.press(250, 5).withShift()).to(PointerEvent.release(310, 70).withShift());
        assertEquals(Set.of("E1", "E2", "E4"), window.selection);
        window.to(PointerEvent.press(250, 5)).to(PointerEvent.move(310, 70)).key(KeyEvent.Key.ESCAPE);
        assertInstanceOf(SelectTool.class, window.tool);
    }

    @Test
    void theMiddleButtonPansAndGoesBack() {
        Window window = new Window(10).to(PointerEvent.press(25, 25).withButton(2)).to(PointerEvent.move(45, 15));
        assertEquals(new Point(20, -10), window.viewport.toScreen(new Point(0, 0)));
        window.to(PointerEvent.release(45, 15).withButton(2));
        assertInstanceOf(SelectTool.class, window.tool);
        assertEquals(Set.of(), window.selection);
    }

    @Test
    void theChosenPanToolStays() {
        Window window = new Window(10);
        window.tool = PanTool.chosen();
        window.to(PointerEvent.press(25, 25)).to(PointerEvent.release(35, 25));
        assertInstanceOf(PanTool.class, window.tool);
        window.key(KeyEvent.Key.ESCAPE);
        assertInstanceOf(SelectTool.class, window.tool);
    }

    @Test
    void aStepOfADragInALargeSceneTouchesTheSelectionOnly() {
        Window window = new Window(900).to(PointerEvent.press(25, 25)).to(PointerEvent.move(80, 80));
        Object ghosts = window.feedback.ghosts();
        int marks = window.feedback.ghosts().stream().mapToInt(group -> group.marks().size()).sum();
        assertEquals(2, marks);
        window.to(PointerEvent.move(90, 90));
        assertSame(ghosts, window.feedback.ghosts());
        assertEquals(60, window.feedback.dxPx());
    }
}
