// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneCheck;
import org.loomwright.diagram.services.DrawingPreferences;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

class PlanSceneTest {
    private static final Path FLEET = Path.of("../../bundles/org.loomwright.samples/fleet");
    private static final Type TYPE = Type.load();

    private static Vehicle fleet(String name) {
        return new VehicleFiles().openVehicle(FLEET.resolve(name + ".vehicle")).root();
    }

    private static Scene draw(Vehicle vehicle, PlanView view) {
        return PlanScene.of(DrawingRequest.of(vehicle), view, TYPE);
    }

    private static Set<String> ids(Scene scene, Group.Kind kind) {
        return scene.groups().stream().filter(group -> group.kind() == kind && group.element() != null).map(Group::element)
                .collect(Collectors.toSet());
    }

    private static List<String> texts(Scene scene) {
        return scene.groups().stream().flatMap(group -> group.marks().stream()).filter(Mark.Text.class::isInstance)
                .map(mark -> ((Mark.Text) mark).text()).toList();
    }

    @Test
    void everyArrangementOfTheFleetIsLegibleFromAboveAndFromTheSide() {
        for (String name : List.of("heron", "otter", "beaver")) {
            Vehicle vehicle = fleet(name);
            for (Arrangement arrangement : vehicle.getArrangements()) {
                for (PlanView view : PlanView.values()) {
                    Scene scene = PlanScene.of(new DrawingRequest(vehicle, arrangement, null, null, null,
                            DrawingPreferences.metric()), view, TYPE);
                    assertEquals(List.of(), SceneCheck.of(scene, TYPE), name + " " + arrangement.getName() + " " + view);
                    Set<String> wanted = new LinkedHashSet<>();
                    vehicle.getDevices().forEach(device -> wanted.add(device.getName()));
                    arrangement.getDevices().forEach(device -> wanted.add(arrangement.getName() + "/" + device.getName()));
                    assertEquals(wanted, ids(scene, Group.Kind.NODE), name + " " + arrangement.getName());
                }
            }
        }
    }

    @Test
    void aLargeVehicleIsLegibleWithEveryDeviceOnTheSheet() {
        Scene scene = draw(LargeVehicle.make(), PlanView.ABOVE);
        assertEquals(List.of(), SceneCheck.of(scene, TYPE));
        assertEquals(LargeVehicle.DEVICES, ids(scene, Group.Kind.NODE).size());
        assertTrue(ids(scene, Group.Kind.EDGE).size() > LargeVehicle.CABLES / 2);
    }

    @Test
    void theSameVehicleGivesTheSameSheet() {
        assertEquals(draw(fleet("otter"), PlanView.ABOVE), draw(fleet("otter"), PlanView.ABOVE));
    }

    @Test
    void fillIsToldWhereADuctIsStatedAndRunsWithoutOneAreOpen() {
        Vehicle heron = fleet("heron");
        Arrangement central = heron.getArrangements().stream().filter(a -> a.getName().equals("central")).findFirst().orElseThrow();
        Scene scene = PlanScene.of(new DrawingRequest(heron, central, null, null, OverlayKind.FILL, DrawingPreferences.metric()),
                TYPE);
        assertTrue(texts(scene).stream().anyMatch(text -> text.matches("R25 \\d+ %")), texts(scene).toString());
        assertTrue(scene.groups().stream().anyMatch(group -> "R1".equals(group.element()) && group.name().endsWith("open")));
        assertTrue(texts(scene).contains("duct filled"));
    }

    @Test
    void aVehicleWithoutOutlineSaysSoAndOneWithNothingIsDrawnToo() {
        Vehicle bare = VehicleFactory.eINSTANCE.createVehicle();
        bare.setName("bare");
        assertEquals(List.of(), SceneCheck.of(draw(bare, PlanView.ABOVE), TYPE));
        Place place = VehicleFactory.eINSTANCE.createPlace();
        place.setName("here");
        bare.getPlaces().add(place);
        Scene scene = draw(bare, PlanView.ABOVE);
        assertTrue(texts(scene).stream().anyMatch(text -> text.contains("outline is not stated")), texts(scene).toString());
    }
}
