// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneCheck;
import org.loomwright.diagram.services.DrawingPreferences;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.DiagramKind;
import org.loomwright.model.vehicle.Sheet;
import org.loomwright.model.vehicle.SheetItem;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** Trays, leaders and runs lie where a person put them. */
class PlanChoicesTest {
    private static final Path FLEET = Path.of("../../bundles/org.loomwright.samples/fleet");
    private static final Type TYPE = Type.load();
    private static final double NEAR_PX = 0.5;

    private final Vehicle vehicle = new VehicleFiles().openVehicle(FLEET.resolve("otter.vehicle")).root();
    private final Arrangement arrangement = vehicle.getArrangements().get(0);

    private Scene draw(PlanView view) {
        return PlanScene.of(new DrawingRequest(vehicle, arrangement, null, null, null, DrawingPreferences.metric()), view, TYPE);
    }

    private void choose(Arrangement owner, String element, String x, String y, String bends) {
        Sheet sheet = VehicleFactory.eINSTANCE.createSheet();
        sheet.setName("s" + vehicle.getSheets().size());
        sheet.setDiagram(DiagramKind.PLAN);
        sheet.setArrangement(owner);
        SheetItem item = VehicleFactory.eINSTANCE.createSheetItem();
        item.setElement(element);
        item.setX(x == null ? null : new BigDecimal(x));
        item.setY(y == null ? null : new BigDecimal(y));
        item.setBends(bends);
        sheet.getItems().add(item);
        vehicle.getSheets().add(sheet);
    }

    private static Group group(Scene scene, Group.Kind kind, String element, String name) {
        return scene.groups().stream().filter(group -> group.kind() == kind && element.equals(group.element())
                && (name == null || name.equals(group.name()))).findFirst().orElseThrow(() -> new AssertionError(element));
    }

    private static Point place(Scene scene, String name) {
        return scene.groups().stream().filter(group -> name.equals(group.element()) && group.shape() != null
                && group.marks().stream().anyMatch(Mark.Disc.class::isInstance)).findFirst().orElseThrow().shape().centre();
    }

    /** Px a mm, from the length of the otter as it is drawn. */
    private static double scale(Scene scene) {
        return (place(scene, "front").x() - place(scene, "bed-left").x()) / (x("front") - x("bed-left"));
    }

    private static double x(String place) {
        Vehicle read = new VehicleFiles().openVehicle(FLEET.resolve("otter.vehicle")).root();
        return read.getPlaces().stream().filter(each -> place.equals(each.getName())).findFirst().orElseThrow().getXMm()
                .doubleValue();
    }

    /** The plate of the tray on which a device lies. */
    private static Bounds tray(Scene scene, String device) {
        Bounds cell = group(scene, Group.Kind.NODE, device, null).shape();
        return scene.groups().stream().filter(group -> "devices at one place, enlarged".equals(group.name()))
                .map(Group::shape).filter(plate -> plate.holds(cell.centre())).findFirst().orElse(cell);
    }

    @Test
    void aTrayLiesAtItsOffsetFromThePlaceWithItsLeaderOnIt() {
        Bounds before = tray(draw(PlanView.ABOVE), "X40");
        choose(arrangement, "bed-right", "300", "-620", null);
        Scene scene = draw(PlanView.ABOVE);
        Bounds tray = tray(scene, "X40");
        Point spot = place(scene, "bed-right");
        assertEquals(spot.x() + 300 * scale(scene), tray.centre().x(), NEAR_PX);
        assertEquals(spot.y() + 620 * scale(scene), tray.centre().y(), NEAR_PX);
        assertTrue(before.centre().distance(tray.centre()) > 20);
        Mark.Line leader = leader(scene, tray);
        assertEquals(0, leader.points().get(0).distance(spot), NEAR_PX);
        assertEquals(List.of(), SceneCheck.of(scene, TYPE));
    }

    private static Mark.Line leader(Scene scene, Bounds tray) {
        return scene.groups().stream().filter(group -> "leader".equals(group.name())).map(group -> (Mark.Line) group.marks().get(0))
                .filter(line -> tray.grown(1).holds(line.points().get(line.points().size() - 1))).findFirst().orElseThrow();
    }

    @Test
    void aLeaderGoesOverItsBends() {
        choose(arrangement, "bed-right", "300", "-620", "500,-900 700,-900");
        Scene scene = draw(PlanView.ABOVE);
        List<Point> line = leader(scene, tray(scene, "X40")).points();
        assertEquals(4, line.size());
        double px = scale(scene);
        assertEquals(200 * px, line.get(2).x() - line.get(1).x(), NEAR_PX);
        assertEquals(line.get(1).y(), line.get(2).y(), NEAR_PX);
        assertEquals((500 - x("bed-right")) * px, line.get(1).x() - line.get(0).x(), NEAR_PX);
    }

    @Test
    void noOtherTrayLiesOnWhatAPersonChose() {
        choose(arrangement, "bed-right", "900", "-500", null);
        Scene scene = draw(PlanView.ABOVE);
        Bounds tray = tray(scene, "X40");
        for (Group group : scene.groups()) {
            if ("devices at one place, enlarged".equals(group.name()) && !group.shape().equals(tray)) {
                assertTrue(!group.shape().grown(-1).meets(tray), group.shape() + " meets " + tray);
            }
        }
    }

    @Test
    void aTrayThatWasPutBeyondTheSheetLiesAtItsEdge() {
        choose(arrangement, "bed-right", "90000", "0", null);
        Scene scene = draw(PlanView.ABOVE);
        Bounds tray = tray(scene, "X40");
        assertTrue(tray.right() < scene.widthPx() - 20 && tray.right() > scene.widthPx() - 60, tray.toString());
        assertEquals(draw(PlanView.ABOVE), scene);
    }

    @Test
    void aRunGoesOverItsBendsAndItsCablesWithIt() {
        Scene before = draw(PlanView.ABOVE);
        choose(arrangement, "R21", null, null, "1500,300 1500,-600");
        Scene scene = draw(PlanView.ABOVE);
        double px = scale(scene);
        double rear = place(scene, "front").x() - x("front") * px;
        Bounds duct = group(scene, Group.Kind.EDGE, "R21", null).shape();
        assertTrue(duct.right() >= rear + 1500 * px && duct.left() <= rear + 1500 * px, duct + " " + (rear + 1500 * px));
        assertNotEquals(group(before, Group.Kind.EDGE, "R21", null).shape(), duct);
        for (Group group : scene.groups()) {
            if (group.kind() == Group.Kind.EDGE) {
                for (Mark mark : group.marks()) {
                    List<Point> line = mark instanceof Mark.Line each && !"leader".equals(group.name()) ? each.points() : List.of();
                    for (int i = 1; i < line.size(); i++) {
                        assertTrue(StrictMath.abs(line.get(i).x() - line.get(i - 1).x()) < 0.01
                                || StrictMath.abs(line.get(i).y() - line.get(i - 1).y()) < 0.01, group.element() + " " + line);
                    }
                }
            }
        }
    }

    @Test
    void anArrangementsOwnChoiceGoesBeforeTheSharedOneAndThatOfAnotherDoesNotCount() {
        choose(arrangement, "bed-right", "300", "-620", null);
        Scene own = draw(PlanView.ABOVE);
        choose(null, "bed-right", "-300", "-700", null);
        assertEquals(own, draw(PlanView.ABOVE));
        vehicle.getSheets().remove(0);
        Scene shared = draw(PlanView.ABOVE);
        assertEquals(place(shared, "bed-right").x() - 300 * scale(shared), tray(shared, "X40").centre().x(), NEAR_PX);
        vehicle.getSheets().clear();
        Scene none = draw(PlanView.ABOVE);
        Arrangement other = VehicleFactory.eINSTANCE.createArrangement();
        other.setName("other");
        vehicle.getArrangements().add(other);
        choose(other, "bed-right", "300", "-620", null);
        assertEquals(none, draw(PlanView.ABOVE));
    }

    @Test
    void theSideIsDrawnAsItWas() {
        Scene before = draw(PlanView.SIDE);
        choose(arrangement, "bed-right", "300", "-620", null);
        choose(arrangement, "R21", null, null, "1500,300 1500,-600");
        assertEquals(before, draw(PlanView.SIDE));
    }

    @Test
    void bendsThatCannotBeReadAreLeftOut() {
        Scene before = draw(PlanView.ABOVE);
        choose(arrangement, "R21", null, null, "1500,300 here");
        assertEquals(before, draw(PlanView.ABOVE));
    }

    @Test
    void lengthAndHeightHaveOneScaleInTheSideView() {
        Scene scene = draw(PlanView.SIDE);
        Point front = place(scene, "front");
        Point bench = place(scene, "bed-right");
        double px = scale(scene);
        double[] z = new double[2];
        vehicle.getPlaces().forEach(place -> {
            if ("front".equals(place.getName())) {
                z[0] = place.getZMm().doubleValue();
            } else if ("bed-right".equals(place.getName())) {
                z[1] = place.getZMm().doubleValue();
            }
        });
        assertNotEquals(z[0], z[1]);
        assertEquals(-(z[0] - z[1]) * px, front.y() - bench.y(), NEAR_PX);
    }
}
