// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.diagram.BigVehicle;
import org.loomwright.diagram.overlay.OverlayFigures;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.overlay.OverlayValues;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.MapTone;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneCheck;
import org.loomwright.diagram.services.DrawingPreferences;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.Measures;
import org.loomwright.diagram.services.Studied;
import org.loomwright.model.edits.DrawingEdits;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.DiagramKind;
import org.loomwright.model.vehicle.Vehicle;

class LineSceneTest {
    private static final Type TYPE = Type.load();
    private static final Path FLEET = Path.of("../../bundles/org.loomwright.samples/fleet");

    private static Vehicle vehicle(String name) {
        return new VehicleFiles().openVehicle(FLEET.resolve(name + ".vehicle")).root();
    }

    private static Scene plain(Vehicle vehicle, Arrangement arrangement) {
        return LineScene.of(new DrawingRequest(vehicle, arrangement, null, null, null, DrawingPreferences.metric()), TYPE);
    }

    private static Set<String> ids(Scene scene, Group.Kind kind) {
        return scene.groups().stream().filter(group -> group.kind() == kind && group.element() != null).map(Group::element)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Scene drawn(DrawingRequest request, String state, OverlayKind overlay) {
        return LineScene.of(new DrawingRequest(request.vehicle(), request.arrangement(), request.study(), state, overlay,
                request.preferences()), TYPE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "beaver", "otter"})
    void isLegibleInEveryArrangementWithoutAndWithFiguresAndOverlays(String name) {
        for (DrawingRequest request : Studied.fleet(name)) {
            String arrangement = request.arrangement().getName();
            assertEquals(List.of(), SceneCheck.of(plain(request.vehicle(), request.arrangement()), TYPE), arrangement);
            assertEquals(List.of(), SceneCheck.of(drawn(request, null, null), TYPE), arrangement + " all findings");
            assertEquals(List.of(), SceneCheck.of(drawn(request, request.study().caseNames().get(0), null), TYPE), arrangement);
            // with all on the small 4x4 has no operating point, so no figures
            String busy = name.equals("otter") ? "full-board" : "engine:all-on";
            for (OverlayKind overlay : OverlayKind.values()) {
                assertEquals(List.of(), SceneCheck.of(drawn(request, busy, overlay), TYPE), arrangement + overlay);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void isLegibleInOtherUnits(boolean awg) {
        DrawingRequest request = Studied.fleet("otter").get(0);
        Scene scene = LineScene.of(new DrawingRequest(request.vehicle(), request.arrangement(), request.study(), "full-board",
                null, new DrawingPreferences(awg, true)), TYPE);
        assertEquals(List.of(), SceneCheck.of(scene, TYPE));
        assertEquals(awg, texts(scene).anyMatch(text -> text.contains("AWG")));
        assertTrue(texts(scene).anyMatch(text -> text.matches(".* [0-9]+ ft.*")));
        assertTrue(texts(scene).anyMatch(text -> text.endsWith("\u00b0F")));
    }

    @Test
    void nothingMovesFromCaseToCase() {
        DrawingRequest request = Studied.fleet("heron").get(1);
        Set<String> night = places(drawn(request, "night", null));
        for (String state : List.of("engine:all-on", "survey")) {
            Set<String> other = places(drawn(request, state, null));
            other.removeAll(night);
            assertEquals(Set.of(), other, state);
        }
    }

    /** The ways of all lines. */
    private static Set<String> places(Scene scene) {
        return scene.groups().stream().filter(group -> group.kind() == Group.Kind.EDGE).flatMap(group -> group.marks().stream()
                .filter(Mark.Line.class::isInstance).map(mark -> group.element() + " " + ((Mark.Line) mark).points()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<String> texts(Scene scene) {
        return scene.groups().stream().flatMap(group -> group.marks().stream()).filter(Mark.Text.class::isInstance)
                .map(mark -> ((Mark.Text) mark).text());
    }

    @Test
    void eachEndOfACutLineNamesTheFieldInWhichItGoesOn() {
        DrawingRequest request = Studied.fleet("heron").get(1);
        Scene scene = drawn(request, "survey", null);
        SheetGrid grid = SheetGrid.of(SheetSize.around(scene.widthPx(), scene.heightPx()));
        List<Group> ends = scene.groups().stream().filter(group -> group.kind() == Group.Kind.PORT && group.name() != null
                && group.name().contains(", field ")).toList();
        assertTrue(ends.size() >= 10, "ends: " + ends.size());
        for (Group end : ends.stream().filter(group -> group.element() != null).toList()) {
            String word = end.name().startsWith("goes") ? "comes" : "goes";
            List<String> fields = ends.stream()
                    .filter(group -> end.element().equals(group.element()) && group.name().startsWith(word))
                    .map(group -> grid.field(group.shape().centre())).toList();
            assertTrue(fields.contains(end.name().replaceFirst(".*, field ", "")), end.name() + " but it is in " + fields);
        }
    }

    @Test
    void aTruckWithFortyLoadsFitsASheetAndFillsIt() {
        for (DrawingRequest request : Studied.fleet("heron")) {
            Scene scene = drawn(request, "survey", null);
            assertTrue(texts(scene).anyMatch("A1"::equals), "sheet of " + scene.widthPx() + " px");
            assertFilled(scene, 0.85);
        }
    }

    private static void assertFilled(Scene scene, double share) {
        assertEquals(StrictMath.sqrt(2), scene.widthPx() / scene.heightPx(), 0.002);
        Bounds room = scene.groups().stream().filter(group -> group.kind() == Group.Kind.NODE).map(Group::shape)
                .reduce(Bounds::with).orElseThrow();
        assertTrue(room.width() > share * scene.widthPx(), room + " of " + scene.widthPx());
        assertTrue(room.height() > (share - 0.1) * scene.heightPx(), room + " of " + scene.heightPx());
    }

    @Test
    void linesTakeTheColourOfTheirCablesValueAndFusesAndBodiesAStrip() {
        DrawingRequest request = Studied.fleet("heron").get(1);
        OverlayValues drops = OverlayFigures.of(OverlayKind.VOLTAGE_DROP, request.study(), "survey");
        Set<Object> tones = drawn(request, "survey", OverlayKind.VOLTAGE_DROP).groups().stream()
                .filter(group -> group.kind() == Group.Kind.EDGE && "spread/W205".equals(group.element()))
                .flatMap(group -> group.marks().stream()).filter(Mark.Line.class::isInstance)
                .map(mark -> ((Mark.Line) mark).stroke().tone()).collect(Collectors.toSet());
        assertEquals(Set.of(drops.scale().tone(drops.values().get("spread/W205"))), tones);
        for (OverlayKind kind : List.of(OverlayKind.FUSE_LOAD, OverlayKind.POTENTIAL)) {
            OverlayValues values = OverlayFigures.of(kind, request.study(), "survey");
            Set<Object> strips = drawn(request, "survey", kind).groups().stream()
                    .filter(group -> group.kind() != Group.Kind.GROUND).flatMap(group -> group.marks().stream())
                    .filter(mark -> mark instanceof Mark.Area area && area.fill() != null)
                    .filter(mark -> ((Mark.Area) mark).fill().tone() instanceof MapTone)
                    .map(mark -> ((Mark.Area) mark).fill().tone()).collect(Collectors.toSet());
            Set<Object> wanted = values.values().values().stream().map(values.scale()::tone).collect(Collectors.toSet());
            assertTrue(strips.size() > 1 && wanted.containsAll(strips), kind + ": " + strips);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "beaver", "otter"})
    void aLineIsInServiceWhenItFeedsALoadThatIsOnAndNotForStandbyAlone(String name) {
        int on = 0;
        int off = 0;
        for (DrawingRequest request : Studied.fleet(name)) {
            LineFigures figures = new StudiedFigures(request.study(), request.study().caseView("road"));
            Drafting drafting = Drafting.of(LineContent.read(request.vehicle(), request.arrangement()), figures,
                    new Measures(DrawingPreferences.metric()), TYPE, LineColours.NONE);
            SupplyGraph supply = SupplyGraph.of(drafting);
            for (String load : supply.loads().keySet()) {
                Unit unit = drafting.content().units().get(load);
                for (String inlet : drafting.inlets(unit)) {
                    for (Wire wire : drafting.flow().into(LineContent.key(unit, inlet))) {
                        if (drafting.passesOn(LineContent.key(unit, inlet)) || unit.part().getDemands().size() != 1) {
                            continue;
                        }
                        boolean serves = figures.loadOn(load) && figures.cableA(wire.cableId()).orElse(0) > 1e-3;
                        assertEquals(serves ? Role.INK : Role.INK3, drafting.tone(wire), wire.key());
                        on += serves ? 1 : 0;
                        off += serves ? 0 : 1;
                    }
                }
            }
        }
        assertTrue(on > 5 && off > 5, on + " on, " + off + " off");
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "beaver", "otter"})
    void showsEveryDevice(String name) {
        Vehicle vehicle = vehicle(name);
        for (Arrangement arrangement : vehicle.getArrangements()) {
            Set<String> drawn = ids(plain(vehicle, arrangement), Group.Kind.NODE);
            List<Device> devices = new ArrayList<>(vehicle.getDevices());
            devices.addAll(arrangement.getDevices());
            assertEquals(List.of(), devices.stream().map(Fragments::of).filter(id -> !drawn.contains(id)).toList());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "beaver", "otter"})
    void showsEverySupplyCable(String name) {
        Vehicle vehicle = vehicle(name);
        for (Arrangement arrangement : vehicle.getArrangements()) {
            Set<String> drawn = ids(plain(vehicle, arrangement), Group.Kind.EDGE);
            LineContent content = LineContent.read(vehicle, arrangement);
            Polarity polarity = Polarity.of(content);
            assertEquals(List.of(), content.wires().stream().filter(wire -> !polarity.back(wire)).map(Wire::cableId)
                    .filter(id -> !drawn.contains(id)).toList(), arrangement.getName());
        }
    }

    @Test
    void drawsALargeVehicleLegibly() {
        Vehicle big = BigVehicle.make();
        Arrangement arrangement = big.getAdopted();
        assertEquals(BigVehicle.DEVICES, arrangement.getDevices().size());
        assertEquals(BigVehicle.CABLES, arrangement.getCables().size());
        Scene scene = plain(big, arrangement);
        assertEquals(List.of(), SceneCheck.of(scene, TYPE));
        assertEquals(BigVehicle.DEVICES, ids(scene, Group.Kind.NODE).size());
        assertFilled(scene, 0.85);
    }

    @Test
    void drawsALargeVehicleLegiblyWithFindingsAndFigures() {
        DrawingRequest request = Studied.all(BigVehicle.make()).get(0);
        for (OverlayKind overlay : List.of(OverlayKind.TEMPERATURE, OverlayKind.FUSE_LOAD)) {
            assertEquals(List.of(), SceneCheck.of(drawn(request, "engine:all-on", overlay), TYPE), overlay.name());
        }
    }

    @Test
    void givesTheSameSheetForTheSameVehicle() {
        Vehicle vehicle = vehicle("heron");
        assertEquals(plain(vehicle, vehicle.getAdopted()), plain(vehicle("heron"), vehicle.getAdopted()));
    }

    @Test
    void keepsThePositionThatAPersonChose() {
        Vehicle vehicle = vehicle("heron");
        Arrangement arrangement = vehicle.getAdopted();
        Device device = vehicle.getDevices().stream().filter(each -> each.getName().equals("T10")).findFirst().orElseThrow();
        DrawingEdits.moveTo(vehicle, DiagramKind.LINE, arrangement, device, 700, 2000);
        Scene moved = plain(vehicle, arrangement);
        Group node = moved.groups().stream().filter(group -> group.kind() == Group.Kind.NODE && "T10".equals(group.element()))
                .findFirst().orElseThrow();
        assertNotNull(node.shape());
        assertEquals(700, node.shape().left(), 1e-9);
        assertEquals(2000, node.shape().top(), 1e-9);
        boolean reached = moved.groups().stream().filter(group -> group.kind() == Group.Kind.EDGE)
                .flatMap(group -> group.marks().stream()).filter(Mark.Line.class::isInstance).map(Mark.Line.class::cast)
                .anyMatch(line -> node.shape().grown(2).holds(line.points().get(line.points().size() - 1)));
        assertTrue(reached, "its wires come along");
    }

    @Test
    void readsBendsAsPoints() {
        assertEquals(List.of(new Point(10, 20), new Point(30.5, 20)), SheetChoices.points("10,20 30.5,20"));
        assertEquals(null, SheetChoices.points("10;20"));
        assertEquals(null, SheetChoices.points(" "));
    }
}
