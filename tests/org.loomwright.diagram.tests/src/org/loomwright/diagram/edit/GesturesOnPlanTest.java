// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.tool.Alignment;
import org.loomwright.diagram.tool.BendTool;
import org.loomwright.diagram.tool.EditRequest;
import org.loomwright.diagram.tool.KeyEvent.Key;
import org.loomwright.diagram.tool.NewPlaceTool;
import org.loomwright.diagram.tool.PlaceTool;
import org.loomwright.diagram.tool.PointerEvent;
import org.loomwright.diagram.tool.RunTool;
import org.loomwright.diagram.tool.SelectTool;
import org.loomwright.diagram.tool.Verdict;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;

/** Gestures on the plan of the demo fleet, by pointer and by keys. */
class GesturesOnPlanTest {
    @TempDir
    Path folder;

    private Board board() {
        return new Board(folder, "otter", "mended", View.PLAN);
    }

    @Test
    void aDeviceIsDraggedToAnotherPlace() {
        Board board = board();
        Point from = board.at("E24");
        Point to = board.at("cooker");
        board.to(PointerEvent.press(from.x(), from.y())).to(PointerEvent.move(to.x() - 30, to.y()))
                .to(PointerEvent.move(to.x(), to.y()));
        assertEquals("cooker", board.feedback().hover());
        assertEquals(Verdict.Kind.ALLOWED, board.feedback().verdict().kind());
        assertFalse(board.feedback().overlay().isEmpty());
        assertEquals(0, board.steps(), "nothing is changed before the button is let go");
        board.to(PointerEvent.release(to.x(), to.y()));
        assertEquals("cooker", board.get(Device.class, "E24").getPlace().getName());
        assertEquals(1, board.steps());
    }

    @Test
    void escapeGivesUpADrag() {
        Board board = board();
        Point from = board.at("E24");
        Point to = board.at("cooker");
        board.to(PointerEvent.press(from.x(), from.y())).to(PointerEvent.move(to.x(), to.y())).key(Key.ESCAPE)
                .to(PointerEvent.release(to.x(), to.y()));
        assertEquals(0, board.steps());
        assertEquals("rack-right", board.get(Device.class, "E24").getPlace().getName());
    }

    @Test
    void aDeviceIsPutOnAnotherPlaceByKeys() {
        Board board = board().select("E24").key(Key.SPACE);
        for (int i = 0; i < 300 && !"cooker".equals(board.feedback().hover()); i++) {
            board.key(Key.TAB);
        }
        assertEquals("cooker", board.feedback().hover());
        board.key(Key.ENTER);
        assertEquals("cooker", board.get(Device.class, "E24").getPlace().getName());
        assertInstanceOf(SelectTool.class, board.tool());
    }

    @Test
    void aPlaceIsDraggedOnTheGridOfTenMillimetres() {
        Board board = board();
        Point from = board.at("cooker");
        board.drag(from, from.moved(33, -17));
        Place place = board.get(Place.class, "cooker");
        assertEquals(0, place.getXMm().remainder(BigDecimal.TEN).signum());
        assertEquals(0, place.getYMm().remainder(BigDecimal.TEN).signum());
        assertTrue(place.getXMm().compareTo(new BigDecimal("300")) > 0);
    }

    @Test
    void arrowsMoveAPlaceByTenMillimetresAndByAHundredWithShift() {
        Board board = board().select("cooker").key(Key.RIGHT);
        assertEquals(new BigDecimal("310"), board.get(Place.class, "cooker").getXMm());
        board.shift(Key.UP);
        assertEquals(new BigDecimal("-500"), board.get(Place.class, "cooker").getYMm());
    }

    @Test
    void severalPlacesMoveTogetherAndAreLinedUp() {
        Board board = board().select("cooker", "pack", "bed-right");
        board.key(Key.LEFT);
        assertEquals(new BigDecimal("340"), board.get(Place.class, "pack").getXMm());
        assertEquals(new BigDecimal("590"), board.get(Place.class, "bed-right").getXMm());
        board.run(Alignment.LEFT.request(board.context()));
        assertEquals(new BigDecimal("290"), board.get(Place.class, "pack").getXMm());
        assertEquals(new BigDecimal("290"), board.get(Place.class, "bed-right").getXMm());
        assertNull(Alignment.LEFT.request(board.context()));
        // a place with an earth point has a larger ring
        board.select("dash", "dash-right").run(Alignment.TOP.request(board.context()));
        assertEquals(board.get(Place.class, "dash").getYMm(), board.get(Place.class, "dash-right").getYMm());
    }

    @Test
    void aPartIsPlacedByAClickAndByKeys() {
        Board board = board().take(PlaceTool.of("base/work-light-led-50"));
        board.click(board.at("cooker"));
        Device lamp = board.get(Device.class, board.selection().iterator().next());
        assertEquals("cooker", lamp.getPlace().getName());
        assertInstanceOf(SelectTool.class, board.tool());
        board.take(PlaceTool.of("base/work-light-led-50"));
        board.key(Key.TAB);
        String target = board.feedback().hover();
        board.key(Key.ENTER);
        assertEquals(2, board.steps());
        assertTrue(board.get(Device.class, board.selection().iterator().next()).getPlace() != null, target);
    }

    @Test
    void aPartOnFreeGroundMakesAPlaceAndKeysFindFreeGroundToo() {
        Board board = board();
        int places = board.vehicle().getPlaces().size();
        board.take(PlaceTool.of("work-light-led-50")).click(board.free());
        assertEquals(places + 1, board.vehicle().getPlaces().size());
        board.select("cooker").take(PlaceTool.of("work-light-led-50")).key(Key.SPACE, Key.RIGHT).shift(Key.DOWN).key(Key.ENTER);
        assertEquals(places + 2, board.vehicle().getPlaces().size());
    }

    @Test
    void placesAreMadeByAClickAndByKeys() {
        Board board = board().take(NewPlaceTool.chosen());
        int places = board.vehicle().getPlaces().size();
        board.click(board.free());
        assertEquals(places + 1, board.vehicle().getPlaces().size());
        board.take(NewPlaceTool.chosen()).key(Key.LEFT, Key.LEFT, Key.ENTER);
        assertEquals(places + 2, board.vehicle().getPlaces().size());
        for (Place made : board.vehicle().getPlaces().subList(places, places + 2)) {
            assertEquals(0, made.getXMm().remainder(BigDecimal.TEN).signum(), made.getXMm().toPlainString());
            assertEquals(0, made.getYMm().remainder(BigDecimal.TEN).signum(), made.getYMm().toPlainString());
        }
        board.take(NewPlaceTool.chosen()).key(Key.ESCAPE);
        assertInstanceOf(SelectTool.class, board.tool());
    }

    @Test
    void runsAreDrawnInAChainOverPlacesAndFreeGround() {
        Board board = board().take(RunTool.chosen());
        int runs = board.vehicle().getRuns().size();
        board.click(board.at("cooker"));
        assertEquals(0, board.steps());
        board.click(board.at("pack"));
        Run first = board.vehicle().getRuns().get(runs);
        assertEquals("cooker", first.getFrom().getName());
        assertEquals("pack", first.getTo().getName());
        board.click(board.free());
        Run second = board.vehicle().getRuns().get(runs + 1);
        assertSame(first.getTo(), second.getFrom());
        board.click(board.at("rear-frame"));
        Run third = board.vehicle().getRuns().get(runs + 2);
        assertSame(second.getTo(), third.getFrom());
        assertEquals("rear-frame", third.getTo().getName());
        board.key(Key.ESCAPE, Key.ESCAPE);
        assertInstanceOf(SelectTool.class, board.tool());
    }

    @Test
    void aRunThatIsThereIsNotDrawnTwice() {
        Board board = board().take(RunTool.chosen());
        board.click(board.at("dash")).hover(board.at("sill-front"));
        assertEquals(Verdict.Kind.REFUSED, board.feedback().verdict().kind());
        assertTrue(board.feedback().verdict().text().contains("already"), board.feedback().verdict().text());
        board.click(board.at("sill-front"));
        assertEquals(0, board.steps());
    }

    @Test
    void runsAreDrawnByKeys() {
        Board board = board().take(RunTool.chosen());
        for (int i = 0; i < 300 && !"cooker".equals(board.feedback().hover()); i++) {
            board.key(Key.TAB);
        }
        board.key(Key.ENTER);
        for (int i = 0; i < 300 && !"pack".equals(board.feedback().hover()); i++) {
            board.key(Key.TAB);
        }
        int runs = board.vehicle().getRuns().size();
        board.key(Key.ENTER);
        assertEquals("pack", board.vehicle().getRuns().get(runs).getTo().getName());
        board.key(Key.SPACE).shift(Key.RIGHT).key(Key.ENTER);
        assertEquals(runs + 2, board.vehicle().getRuns().size());
        board.key(Key.ENTER);
        assertInstanceOf(SelectTool.class, board.tool());
    }

    @Test
    void anEndOfARunIsDrawnToAnotherPlace() {
        Board board = board().select("R22");
        assertFalse(new SelectTool().resting(board.context()).isEmpty());
        Point handle = nearest(board, "R22", board.at("cooker"));
        board.drag(handle, board.at("pack"));
        assertEquals("pack", board.get(Run.class, "R22").getTo().getName());
        assertNull(board.get(Run.class, "R22").getLengthMm());
        board.select("R22").key(Key.CONNECT, Key.SPACE);
        for (int i = 0; i < 300 && !"cooker".equals(board.feedback().hover()); i++) {
            board.key(Key.TAB);
        }
        board.key(Key.ENTER);
        assertEquals("cooker", board.get(Run.class, "R22").getTo().getName());
    }

    private static Point nearest(Board board, String edge, Point to) {
        return board.hits().lines(edge).stream().flatMap(line -> List.of(line.get(0), line.get(line.size() - 1)).stream())
                .map(board.viewport()::toScreen)
                .min(java.util.Comparator.comparingDouble(to::distance)).orElseThrow();
    }

    @Test
    void aRunIsBentByItsStretches() {
        Board board = board().select("R12");
        List<Point> line = board.drawn().line("R12");
        Point middle = new Point((line.get(0).x() + line.get(1).x()) / 2, (line.get(0).y() + line.get(1).y()) / 2);
        boolean level = Math.abs(line.get(0).y() - line.get(1).y()) < 1;
        board.drag(middle, level ? middle.moved(0, 40) : middle.moved(40, 0));
        String bends = bends(board, "R12");
        assertTrue(bends.split(" ").length >= 3, bends);
        assertInstanceOf(EditRequest.Bend.class, board.asked());
        board.select("R12").key(Key.BEND, Key.DELETE);
        assertTrue(board.vehicle().getSheets().stream().flatMap(sheet -> sheet.getItems().stream())
                .noneMatch(item -> "R12".equals(item.getElement())));
        board.select("R12").key(Key.BEND);
        BendTool bend = (BendTool) board.tool();
        Point a = bend.line().get(bend.stretch());
        Point b = bend.line().get(bend.stretch() + 1);
        Key aside = Math.abs(a.y() - b.y()) < Math.abs(a.x() - b.x()) ? Key.DOWN : Key.RIGHT;
        board.shift(aside).shift(aside).key(Key.ENTER);
        assertFalse(bends(board, "R12").isEmpty());
    }

    private static String bends(Board board, String id) {
        return board.vehicle().getSheets().stream().flatMap(sheet -> sheet.getItems().stream())
                .filter(item -> id.equals(item.getElement())).findFirst().orElseThrow().getBends();
    }

    @Test
    void keysSelectRenameDeleteAndCopy() {
        Board board = board().key(Key.TAB);
        String first = board.selection().iterator().next();
        board.key(Key.TAB).shift(Key.TAB);
        assertEquals(Set.of(first), board.selection());
        board.select("E24").key(Key.RENAME);
        assertEquals(new EditRequest.Rename("E24"), board.asked());
        board.key(Key.ENTER);
        assertEquals(new EditRequest.Rename("E24"), board.asked());
        board.key(Key.COPY);
        assertEquals(new EditRequest.Copy(Set.of("E24")), board.asked());
        assertEquals(0, board.steps());
        board.key(Key.DUPLICATE);
        assertEquals(1, board.steps());
        assertEquals(1, board.selection().size());
        board.key(Key.DELETE);
        assertEquals(Set.of(), board.selection());
        board.key(Key.DELETE);
        assertEquals(2, board.steps());
    }

    @Test
    void aDoubleClickRenames() {
        Board board = board();
        Point at = board.at("E24");
        board.click(at).to(PointerEvent.press(at.x(), at.y()))
                .to(new PointerEvent(PointerEvent.What.DOUBLE, at, 1, false, false));
        assertEquals(new EditRequest.Rename("E24"), board.asked());
        board.to(PointerEvent.release(at.x(), at.y()));
        assertEquals(0, board.steps());
    }
}
