// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.tool.Advice;
import org.loomwright.diagram.tool.ConnectTool;
import org.loomwright.diagram.tool.EditRequest;
import org.loomwright.diagram.tool.KeyEvent.Key;
import org.loomwright.diagram.tool.MarqueeTool;
import org.loomwright.diagram.tool.PointerEvent;
import org.loomwright.diagram.tool.SelectTool;
import org.loomwright.diagram.tool.Verdict;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;

/** Gestures on the line and earth diagrams of the demo fleet, by pointer and by keys. */
class GesturesOnLineTest {
    @TempDir
    Path folder;

    private Board board() {
        return new Board(folder, "otter", "mended", View.LINE);
    }

    private static Cable last(Board board) {
        List<Cable> cables = board.arrangement().getCables();
        return cables.get(cables.size() - 1);
    }

    /** A lamp that nothing feeds yet. */
    private static String lamp(Board board) {
        return board.run(new EditRequest.PlacePart("work-light-led-50", null, new Point(0, 0))).selection().iterator().next();
    }

    @Test
    void aCableIsDraggedFromABoxToALoad() {
        Board board = board();
        String lamp = lamp(board);
        board.take(ConnectTool.chosen()).drag(board.at("mended/X25"), board.at(lamp));
        Core core = last(board).getCores().get(0);
        assertEquals("6", core.getA().getName(), "the way that is free");
        assertSame(board.get(Device.class, lamp), core.getB().eContainer());
        assertEquals("L+", core.getB().getName());
        assertInstanceOf(SelectTool.class, board.tool());
    }

    @Test
    void aCableIsClickedFromTerminalToTerminal() {
        Board board = board();
        String lamp = lamp(board);
        board.take(ConnectTool.chosen()).click(board.at(lamp)).hover(board.at("mended/X25"));
        assertEquals("mended/X25", board.feedback().hover());
        assertFalse(board.feedback().overlay().isEmpty());
        assertEquals(1, board.steps());
        board.click(board.at("mended/X25"));
        assertEquals("6", last(board).getCores().get(0).getB().getName());
        // the return: the lamp's second terminal is chosen by itself, since the first is in use
        board.take(ConnectTool.chosen()).click(board.at(lamp)).click(board.at("mended/X25"));
        Core back = last(board).getCores().get(0);
        assertEquals("L-", back.getA().getName());
        assertTrue(back.getB().getName().startsWith("N"), back.getB().getName());
    }

    @Test
    void whatMayNotBeJoinedIsToldAndNotDone() {
        Board board = board();
        board.take(ConnectTool.chosen()).click(board.at("mended/X25")).hover(board.at("G20"));
        board.key(Key.ESCAPE);
        Verdict twice = board.drawn().connect("mended/X25.1", "E23.L+");
        assertEquals(Verdict.Kind.REFUSED, twice.kind());
        assertTrue(twice.text().contains("already"), twice.text());
        Verdict levels = board.drawn().connect("mended/X25.6", "G20.30");
        assertEquals(Verdict.Kind.ALLOWED, levels.kind(), "an empty way is on no supply");
        assertTrue(board.drawn().connect("G10.30", "G20.30").text().contains("24 V"));
        assertEquals(Verdict.Kind.REFUSED, board.drawn().connect("G10.30", "G20.30").kind());
        assertEquals(Verdict.Kind.REFUSED, board.drawn().connect("G10.30", "G10.31").kind());
        assertEquals(Verdict.Kind.WARNED, board.drawn().connect("G10.30", "G1.30").kind());
        assertEquals(Verdict.Kind.REFUSED, board.drawn().connect("G10.30", "XE8").kind());
        assertEquals(Verdict.Kind.REFUSED, board.drawn().connect("G10.30", "G10.30").kind());
        assertEquals(Verdict.Kind.REFUSED, board.drawn().connect("G10.30", "as-found/X22.30").kind());
        // the lamp is on the 24 V pack already
        assertEquals(Verdict.Kind.REFUSED, board.drawn().connect("G10.30", "E28.L+").kind());
        board.refuses("already", new EditRequest.Connect("mended/X25.1", "E23.L+"));
        assertEquals(0, board.steps());
        String lamp24 = board.run(new EditRequest.PlacePart("deck-light-24-60", null, new Point(0, 0))).selection().iterator()
                .next();
        Verdict other = board.drawn().connect("mended/X25.6", lamp24 + ".L+");
        assertEquals(Verdict.Kind.ALLOWED, other.kind(), "the way is empty yet");
        Verdict made = board.drawn().connect("G10.30", lamp24 + ".L+");
        assertEquals(Verdict.Kind.WARNED, made.kind());
        assertTrue(made.text().contains("made for 24 V"), made.text());
    }

    @Test
    void cablesAreDrawnByKeys() {
        Board board = board();
        String lamp = lamp(board);
        board.select(lamp).key(Key.CONNECT);
        assertInstanceOf(ConnectTool.class, board.tool());
        for (int i = 0; i < 200 && !"mended/X25".equals(board.feedback().hover()); i++) {
            board.key(Key.TAB);
        }
        assertEquals("mended/X25", board.feedback().hover());
        board.key(Key.ENTER);
        assertEquals("6", last(board).getCores().get(0).getB().getName());
        // the first terminal by space, the second too
        board.select(lamp).key(Key.CONNECT, Key.SPACE, Key.SPACE);
        for (int i = 0; i < 200 && !"mended/X25".equals(board.feedback().hover()); i++) {
            board.key(Key.TAB);
        }
        board.key(Key.ENTER);
        assertEquals(3, board.steps());
        board.key(Key.ESCAPE);
    }

    @Test
    void anEndOfACableIsFixedElsewhere() {
        Board board = board();
        String lamp = lamp(board);
        Cable cable = board.arrangement().getCables().stream().filter(each -> each.getCores().stream()
                .anyMatch(core -> core.getB() != null && core.getB().eContainer() == board.get(Device.class, "E24"))).findFirst()
                .orElseThrow();
        String id = "mended/" + cable.getName();
        List<Advice.EdgeEnd> ends = board.drawn().ends(id);
        Advice.EdgeEnd atLamp = ends.stream().filter(end -> end.at().equals("E24")).findFirst().orElseThrow();
        board.run(new EditRequest.Reconnect(atLamp, lamp + ".L+"));
        assertTrue(cable.getCores().stream().allMatch(core -> joins(core, board.get(Device.class, lamp))), "both cores follow");
        board.select(id).key(Key.CONNECT);
        assertEquals(2, board.steps());
        for (int i = 0; i < 4 && !ends.isEmpty() && !lamp.equals(board.feedback().hover()); i++) {
            board.key(Key.SPACE);
        }
        for (int i = 0; i < 200 && !"E24".equals(board.feedback().hover()); i++) {
            board.key(Key.TAB);
        }
        board.key(Key.ENTER);
        assertEquals(3, board.steps());
        assertTrue(cable.getCores().stream().allMatch(core -> joins(core, board.get(Device.class, "E24"))));
    }

    private static boolean joins(Core core, Device device) {
        return core.getA().eContainer() == device || core.getB().eContainer() == device;
    }

    @Test
    void aCableIsBentAndTheLayoutChoosesAgain() {
        Board board = board();
        String id = board.arrangement().getCables().stream().map(each -> "mended/" + each.getName())
                .filter(each -> board.drawn().line(each) != null && board.drawn().line(each).size() > 2).findFirst()
                .orElseThrow();
        List<Point> line = board.drawn().line(id);
        board.select(id);
        Point a = line.get(1);
        Point b = line.get(2);
        Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
        boolean level = Math.abs(a.y() - b.y()) < 1;
        board.run(new EditRequest.Bend(id, List.of(level ? a.moved(0, 15) : a.moved(15, 0), level ? b.moved(0, 15)
                : b.moved(15, 0))));
        board.select(id).key(Key.BEND);
        board.key(Key.DELETE);
        assertEquals(2, board.steps());
        assertTrue(middle.distance(a) > 0);
    }

    @Test
    void aDeviceIsDraggedOnTheSheet() {
        Board board = board();
        Point from = board.at("E24");
        board.drag(from, from.moved(43, 18));
        assertEquals(new EditRequest.Move(java.util.Set.of("E24"), 40, 20), board.asked());
    }

    @Test
    void marqueeSelectsSeveralAndTheyMoveTogether() {
        Board board = board();
        var room = board.hits().shape("E23").with(board.hits().shape("E24")).grown(3);
        board.take(MarqueeTool.chosen()).drag(board.viewport().toScreen(new Point(room.left(), room.top())),
                board.viewport().toScreen(new Point(room.right(), room.bottom())));
        board.take(new SelectTool());
        assertTrue(board.selection().containsAll(List.of("E23", "E24")), board.selection().toString());
        board.key(Key.DOWN);
        assertEquals(1, board.steps());
    }

    @Test
    void bodiesAreJoinedByADrag() {
        Board board = new Board(folder, "otter", "mended", View.EARTH).take(ConnectTool.chosen());
        int bonds = board.vehicle().getBonds().size();
        var rack = board.hits().shape("rack");
        var shell = board.hits().shape("shell");
        board.drag(new Point(rack.left() + 3, rack.top() + 3), new Point(shell.left() + 3, shell.top() + 3));
        Bond bond = board.vehicle().getBonds().get(bonds);
        assertEquals("rack", bond.getA().getBody().getName());
        assertEquals("shell", bond.getB().getBody().getName());
        board.to(PointerEvent.move(1, 1));
    }
}
