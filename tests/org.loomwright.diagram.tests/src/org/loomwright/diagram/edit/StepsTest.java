// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.tool.EditRequest;
import org.loomwright.diagram.tool.Verdict;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.SheetItem;

/** Steps on the drawings of the demo fleet; the board checks each for soundness, undo and redo. */
class StepsTest {
    @TempDir
    Path folder;

    @Test
    void aPlaceMovesInMillimetresFromAboveAndFromTheSide() {
        Board above = new Board(folder, "otter", "mended", View.PLAN);
        Place dash = above.get(Place.class, "dash");
        double mmPerPx = 10 / above.drawn().gridPx();
        above.run(new EditRequest.Move(Set.of("dash"), 50 / mmPerPx, -20 / mmPerPx));
        assertEquals(new BigDecimal("2750"), dash.getXMm());
        assertEquals(new BigDecimal("320"), dash.getYMm());
        assertEquals(new BigDecimal("1050"), dash.getZMm());
        Board side = new Board(folder, "otter", "mended", View.SIDE);
        mmPerPx = 10 / side.drawn().gridPx();
        side.run(new EditRequest.Move(Set.of("dash"), 0, -30 / mmPerPx));
        assertEquals(new BigDecimal("300"), side.get(Place.class, "dash").getYMm());
        assertEquals(new BigDecimal("1080"), side.get(Place.class, "dash").getZMm());
    }

    /** Where an element is drawn, in mm of the vehicle: the scale may change with what is drawn. */
    private static Point mm(Board board, Point sheet) {
        return new Drawn(board.vehicle(), board.arrangement(), View.PLAN, board.hits()).scale().toMm(sheet);
    }

    @Test
    void aPlateOnThePlanIsDrawnElsewhereButItsDevicesStayAtTheirPlace() {
        Board board = new Board(folder, "otter", "mended", View.PLAN);
        Point before = mm(board, board.hits().shape("E24").centre());
        double mmPerPx = 10 / board.drawn().gridPx();
        board.run(new EditRequest.Move(Set.of("E24"), 60, 40));
        assertEquals("rack-right", board.get(Device.class, "E24").getPlace().getName());
        Point now = mm(board, board.hits().shape("E24").centre());
        assertEquals(before.x() + 60 * mmPerPx, now.x(), 12);
        assertEquals(before.y() - 40 * mmPerPx, now.y(), 12);
        // the plate of several devices moves as one, whichever of them is drawn
        board.run(new EditRequest.Move(Set.of("E20", "E22"), 40, 0));
        assertTrue(item(board, "bed-left") != null);
        assertNull(item(board, "E20"));
        double x = item(board, "bed-left").getX().doubleValue();
        mmPerPx = 10 / board.drawn().gridPx();
        board.run(new EditRequest.Move(Set.of("E22"), 10, 0));
        assertEquals(x + 10 * mmPerPx, item(board, "bed-left").getX().doubleValue(), 40);
    }

    @Test
    void aDeviceOnARunIsDrawnElsewhereAndLiesWithTheOthersOfItsNextPlace() {
        Board board = new Board(folder, "otter", "mended", View.PLAN);
        RunLine line = RunLine.of(new Drawn(board.vehicle(), board.arrangement(), View.PLAN, board.hits()),
                board.get(Run.class, "R12"));
        board.run(new EditRequest.Drop(Set.of("E24"), "R12", line.at(1000)));
        board.run(new EditRequest.Move(Set.of("E24"), 20, 50));
        assertTrue(item(board, "E24") != null);
        board.run(new EditRequest.Drop(Set.of("E24"), "bed-left", new Point(0, 0)));
        assertNull(item(board, "E24"));
    }

    private static SheetItem item(Board board, String id) {
        return board.vehicle().getSheets().stream().flatMap(sheet -> sheet.getItems().stream())
                .filter(each -> id.equals(each.getElement())).findFirst().orElse(null);
    }

    @Test
    void devicesMoveOnLineSheetsAndBodiesOnEarthSheets() {
        Board line = new Board(folder, "otter", "mended", View.LINE);
        Point before = line.hits().shape("E24").centre();
        line.run(new EditRequest.Move(Set.of("E24"), 40, 20));
        assertEquals(before.x() + 40, line.hits().shape("E24").centre().x(), 1);
        Board earth = new Board(folder, "otter", "mended", View.EARTH);
        assertTrue(earth.drawn().movable("hardtop"));
        assertFalse(earth.drawn().movable("XE1"));
        earth.run(new EditRequest.Move(Set.of("hardtop"), 10, 60));
    }

    @Test
    void elementsMoveEachByTheirOwnWay() {
        Board board = new Board(folder, "otter", "mended", View.LINE);
        board.run(new EditRequest.MoveEach(Map.of("E24", new Point(0, 20), "E23", new Point(10, 0))));
        board.refuses("nothing of this can be moved", new EditRequest.Move(Set.of("XE1"), 10, 10));
    }

    @Test
    void aDeviceDroppedAtAnotherPlaceTakesItsCablesAlong() {
        Board board = new Board(folder, "otter", "mended", View.PLAN);
        Verdict verdict = board.drawn().drop(Set.of("E24"), "bed-left", board.hits().shape("bed-left").centre());
        assertEquals(Verdict.Kind.ALLOWED, verdict.kind(), verdict.text());
        assertTrue(verdict.text().contains("shortest way"), verdict.text());
        Outcome outcome = board.run(new EditRequest.Drop(Set.of("E24"), "bed-left", null));
        assertEquals("bed-left", board.get(Device.class, "E24").getPlace().getName());
        assertEquals(1, outcome.told().size(), outcome.told().toString());
    }

    @Test
    void aPathThatAPersonChoseStaysAndIsTold() {
        Board board = new Board(folder, "otter", "as-found", View.PLAN);
        Cable pinned = board.arrangement().getCables().stream().filter(cable -> !cable.getPath().isEmpty()).findFirst()
                .orElseThrow();
        Device end = (Device) pinned.getCores().get(0).getB().eContainer();
        List<Run> path = List.copyOf(pinned.getPath());
        Verdict verdict = board.drawn().drop(Set.of(id(end)), "bed-right", new Point(0, 0));
        assertEquals(Verdict.Kind.WARNED, verdict.kind());
        Outcome outcome = board.run(new EditRequest.Drop(Set.of(id(end)), "bed-right", new Point(0, 0)));
        assertEquals(path, pinned.getPath());
        assertTrue(outcome.told().stream().anyMatch(line -> line.contains("-" + pinned.getName())
                && line.contains("keeps the path")), outcome.told().toString());
    }

    @Test
    void aDeviceDroppedOnARunLiesAtThatDistance() {
        Board board = new Board(folder, "otter", "mended", View.PLAN);
        RunLine line = RunLine.of(new Drawn(board.vehicle(), board.arrangement(), View.PLAN, board.hits()),
                board.get(Run.class, "R12"));
        Point middle = line.at(1000);
        assertEquals(1000, line.mmAt(middle), 1);
        board.run(new EditRequest.Drop(Set.of("E24"), "R12", middle));
        Device lamp = board.get(Device.class, "E24");
        assertNull(lamp.getPlace());
        assertEquals("R12", lamp.getRun().getName());
        assertEquals(1000, lamp.getAtMm().doubleValue(), 1);
    }

    @Test
    void whatIsThereAlreadyIsNotDropped() {
        Board board = new Board(folder, "otter", "mended", View.PLAN);
        assertNull(board.drawn().drop(Set.of("E24"), "rack-right", new Point(0, 0)));
        assertNull(board.drawn().drop(Set.of("E24"), null, new Point(0, 0)));
        assertNull(board.drawn().drop(Set.of("E24", "dash"), "bed-left", new Point(0, 0)));
    }

    @Test
    void partsArePlacedAtPlacesOnRunsAndOnFreeGround() {
        Board board = new Board(folder, "otter", "mended", View.PLAN);
        Outcome lamp = board.run(new EditRequest.PlacePart("work-light-led-50", "bed-right", null));
        Device device = board.get(Device.class, lamp.selection().iterator().next());
        assertEquals("bed-right", device.getPlace().getName());
        assertTrue(device.getName().startsWith("E"), device.getName());
        assertSame(board.vehicle(), device.eContainer());
        Outcome box = board.run(new EditRequest.PlacePart("box-6", "dash", null));
        assertSame(board.arrangement(), board.get(Device.class, box.selection().iterator().next()).eContainer());
        Point at = board.hits().shape("dash").centre().moved(10, 20);
        int places = board.vehicle().getPlaces().size();
        Outcome free = board.run(new EditRequest.PlacePart("socket-12-10", null, at));
        assertEquals(places + 1, board.vehicle().getPlaces().size());
        Place made = board.vehicle().getPlaces().get(places);
        assertSame(made, board.get(Device.class, free.selection().iterator().next()).getPlace());
        assertEquals("in-cab", made.getZone().getName());
        assertEquals(new BigDecimal("1050"), made.getZMm());
        board.refuses("no device no-such-part", new EditRequest.PlacePart("no-such-part", "dash", null));
    }

    @Test
    void aPartDroppedOnABoxOfTheLineDiagramIsFedFromAFreeWay() {
        Board board = new Board(folder, "otter", "as-found", View.LINE);
        Device box = board.get(Device.class, "as-found/X22");
        Outcome outcome = board.run(new EditRequest.PlacePart("work-light-led-50", "as-found/X22", null));
        Device lamp = board.get(Device.class, outcome.selection().iterator().next());
        assertSame(box.getPlace(), lamp.getPlace());
        Cable cable = board.arrangement().getCables().get(board.arrangement().getCables().size() - 1);
        assertSame(box, cable.getCores().get(0).getA().eContainer());
        assertSame(lamp, cable.getCores().get(0).getB().eContainer());
        assertEquals("L+", cable.getCores().get(0).getB().getName());
        assertTrue(outcome.told().stream().anyMatch(line -> line.contains("until it is put elsewhere")));
    }

    @Test
    void aPartOnFreeGroundOfTheLineDiagramSitsBesideTheSource() {
        Board board = new Board(folder, "otter", "mended", View.LINE);
        Outcome outcome = board.run(new EditRequest.PlacePart("socket-12-10", null, new Point(100, 100)));
        assertEquals("start-battery", board.get(Device.class, outcome.selection().iterator().next()).getPlace().getName());
    }

    @Test
    void aBoltedStrapJoinsBodiesAndEarthPoints() {
        Board board = new Board(folder, "otter", "mended", View.EARTH);
        int bonds = board.vehicle().getBonds().size();
        Outcome outcome = board.run(new EditRequest.Connect("rack", "shell"));
        Bond bond = board.get(Bond.class, outcome.selection().iterator().next());
        assertEquals("rack", bond.getA().getBody().getName());
        assertEquals("shell", bond.getB().getBody().getName());
        assertEquals(bonds + 1, board.vehicle().getBonds().size());
        board.refuses("on one body", new EditRequest.Connect("XE1", "XE3"));
        board.refuses("joins XE2 and XE3 already", new EditRequest.Connect("XE2", "XE3"));
        board.run(new EditRequest.Connect("XE11", "XE10"));
        board.run(new EditRequest.Reconnect(board.drawn().ends("WE3").get(1), "XE6"));
        assertEquals("XE6", board.get(Bond.class, "WE3").getB().getName());
    }

    @Test
    void runsJoinPlacesOnce() {
        Board board = new Board(folder, "otter", "mended", View.PLAN);
        board.refuses("joins dash and Left sill, front already".replace("Left sill, front", "sill-front"),
                new EditRequest.MakeRun("dash", "sill-front"));
        Outcome outcome = board.run(new EditRequest.MakeRun("cooker", "pack"));
        Run run = board.get(Run.class, outcome.selection().iterator().next());
        assertEquals("cooker", run.getFrom().getName());
        assertNull(run.getLengthMm());
        board.run(new EditRequest.Reconnect(board.drawn().ends(run.getName()).get(0), "rear-frame"));
        assertEquals("rear-frame", run.getFrom().getName());
        Outcome place = board.run(new EditRequest.MakePlace(board.hits().shape("pack").centre().moved(30, 30), "pack"));
        assertEquals(2, place.told().size(), place.told().toString());
    }

    @Test
    void aRunFixedElsewhereTearsNoPath() {
        Board board = new Board(folder, "otter", "as-found", View.PLAN);
        Cable pinned = board.arrangement().getCables().stream().filter(cable -> cable.getPath().size() > 2).findFirst()
                .orElseThrow();
        Run middle = pinned.getPath().get(1);
        Outcome outcome = board.run(new EditRequest.Reconnect(board.drawn().ends(middle.getName()).get(0), "rack-front"));
        assertTrue(pinned.getPath().isEmpty());
        assertTrue(outcome.told().stream().anyMatch(line -> line.contains("-" + pinned.getName())), outcome.told().toString());
    }

    @Test
    void namesChangeInPlaceAndReferencesFollow() {
        Board board = new Board(folder, "otter", "mended", View.LINE);
        assertEquals("E24", board.drawn().name("E24"));
        assertNull(board.drawn().name("E24.L+"));
        Outcome outcome = board.run(new EditRequest.Named("E24", "E99"));
        assertEquals(Set.of("E99"), outcome.selection());
        board.refuses("already the name", new EditRequest.Named("E99", "E23"));
        board.refuses("is no name", new EditRequest.Named("E99", "work light"));
    }

    @Test
    void deletingTellsWhatGoesAlong() {
        Board board = new Board(folder, "otter", "mended", View.PLAN);
        List<String> also = board.drawn().alsoGoes(Set.of("E24"));
        assertTrue(also.stream().anyMatch(line -> line.contains("cable")), also.toString());
        Outcome outcome = board.run(new EditRequest.Delete(Set.of("E24", "E23")));
        assertFalse(board.has("E24"));
        assertEquals(Set.of(), outcome.selection());
        assertTrue(outcome.told().get(0).startsWith("went along"), outcome.told().toString());
        board.run(new EditRequest.Delete(Set.of("rack-right")));
        assertFalse(board.has("R26"));
    }

    private static String id(Device device) {
        return org.loomwright.model.files.Fragments.of(device);
    }

    @Test
    void bendsOfRunsAreKeptInMillimetresAndOfCablesInPixels() {
        Board plan = new Board(folder, "otter", "mended", View.PLAN);
        List<Point> line = plan.drawn().line("R12");
        assertTrue(line.size() >= 2);
        Point start = line.get(0);
        Point end = line.get(line.size() - 1);
        double x = (start.x() + end.x()) / 2;
        plan.run(new EditRequest.Bend("R12", List.of(new Point(x - 40, start.y()), new Point(x - 40, start.y() + 30),
                new Point(x + 40, start.y() + 30), new Point(x + 40, end.y()))));
        String bends = item(plan, "R12").getBends();
        assertTrue(bends.matches("(-?[0-9]+,-?[0-9]+ ?)+"), bends);
        for (String pair : bends.split(" ")) {
            double xMm = Double.parseDouble(pair.split(",")[0]);
            double yMm = Double.parseDouble(pair.split(",")[1]);
            assertTrue(plan.drawn().line("R12").stream().map(at -> mm(plan, at)).anyMatch(at -> Math.abs(at.x() - xMm) < 12
                    && Math.abs(at.y() - yMm) < 12), pair + " of " + plan.drawn().line("R12"));
        }
        plan.run(new EditRequest.Bend("R12", List.of()));
        assertEquals(line, plan.drawn().line("R12"));
        assertNull(plan.drawn().line("E24"));
        plan.refuses("cannot be bent here", new EditRequest.Bend("E24", List.of()));
    }
}
