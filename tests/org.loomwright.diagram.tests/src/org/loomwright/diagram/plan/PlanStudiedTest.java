// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.BigVehicle;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneCheck;
import org.loomwright.diagram.services.DrawingPreferences;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.Studied;
import org.loomwright.model.files.Terminals;
import org.loomwright.model.vehicle.Domain;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** Plans with findings and with every overlay are legible: the fleet, and a vehicle with 200 devices and 400 cables. */
class PlanStudiedTest {
    private static final Type TYPE = Type.load();

    private static DrawingRequest with(DrawingRequest request, String state, OverlayKind overlay) {
        return new DrawingRequest(request.vehicle(), request.arrangement(), request.study(), state, overlay,
                DrawingPreferences.metric());
    }

    private static void legible(DrawingRequest request, PlanView view) {
        Scene scene = PlanScene.of(request, view, TYPE);
        assertEquals(List.of(), SceneCheck.of(scene, TYPE), request.vehicle().getName() + " " + request.arrangement().getName() + " "
                + view + " " + request.caseName() + " " + request.overlay());
        String wanted = request.overlay() == null ? null : request.overlay().words();
        assertTrue(wanted == null || scene.groups().stream().flatMap(group -> group.marks().stream())
                .anyMatch(mark -> mark instanceof Mark.Text text && text.text().equals(wanted)), "the legend of " + wanted);
    }

    @Test
    void theFleetIsLegibleWithFindingsAndWithEveryOverlay() {
        for (String name : List.of("heron", "otter", "beaver")) {
            for (DrawingRequest request : Studied.fleet(name)) {
                legible(request, PlanView.ABOVE);
                legible(request, PlanView.SIDE);
                String state = request.study().caseNames().get(request.study().caseNames().size() - 1);
                for (OverlayKind overlay : OverlayKind.values()) {
                    legible(with(request, null, overlay), PlanView.ABOVE);
                    legible(with(request, state, overlay), PlanView.SIDE);
                }
            }
        }
    }

    @Test
    void theKeyTellsOfColouredRunsOnlyWhereRunsAreColoured() {
        DrawingRequest request = Studied.fleet("heron").get(0);
        for (OverlayKind overlay : OverlayKind.values()) {
            boolean told = PlanScene.of(with(request, null, overlay), TYPE).groups().stream()
                    .anyMatch(group -> "key: run, coloured by value".equals(group.name()));
            assertEquals(overlay != OverlayKind.POTENTIAL && overlay != OverlayKind.FUSE_LOAD, told, overlay.name());
        }
    }

    @Test
    void aVehicleOf200DevicesIsLegibleWithFindingsAndWithEveryOverlay() {
        DrawingRequest request = Studied.all(placed()).get(0);
        assertTrue(request.study().findings().size() > 20, "findings: " + request.study().findings().size());
        Scene scene = PlanScene.of(request, TYPE);
        assertEquals(BigVehicle.DEVICES, scene.groups().stream().filter(group -> group.kind() == Group.Kind.NODE
                && group.element() != null).map(Group::element).distinct().count());
        assertTrue(scene.groups().stream().filter(group -> group.kind() == Group.Kind.BADGE).count() > 10);
        legible(request, PlanView.ABOVE);
        for (OverlayKind overlay : OverlayKind.values()) {
            legible(with(request, null, overlay), PlanView.ABOVE);
        }
    }

    /** The devices of one large vehicle at the places of another. */
    private static Vehicle placed() {
        Vehicle vehicle = BigVehicle.make();
        Vehicle ground = LargeVehicle.make();
        Domain domain = VehicleFactory.eINSTANCE.createDomain();
        domain.setName("house");
        domain.setNominalV(BigDecimal.valueOf(12));
        domain.setSource(Terminals.of(vehicle.getArrangements().get(0).getDevices().get(0), "30"));
        vehicle.getDomains().add(domain);
        vehicle.setOutline(ground.getOutline());
        List<Place> places = new ArrayList<>(ground.getPlaces());
        List<Run> runs = new ArrayList<>(ground.getRuns());
        vehicle.getPlaces().addAll(places);
        vehicle.getRuns().addAll(runs);
        for (int d = 0; d < BigVehicle.DEVICES; d++) {
            vehicle.getArrangements().get(0).getDevices().get(d).setPlace(places.get(d * 7 % places.size()));
        }
        return vehicle;
    }
}
