// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.paint.SceneCollisions;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.model.vehicle.Vehicle;

class PlanSceneTest {
    private static final Type TYPE = Type.load();

    private static Scene draw(Vehicle vehicle, PlanView view) {
        return PlanScene.of(DrawingRequest.of(vehicle), view, TYPE);
    }

    private static Set<String> ids(Scene scene, Group.Kind kind) {
        return scene.groups().stream().filter(group -> group.kind() == kind && group.element() != null).map(Group::element)
                .collect(Collectors.toSet());
    }

    @Test
    void drawsEveryDeviceAndCableOfALargeVehicle() {
        Scene scene = draw(LargeVehicle.make(), PlanView.ABOVE);
        assertEquals(LargeVehicle.DEVICES, ids(scene, Group.Kind.NODE).size());
        assertTrue(ids(scene, Group.Kind.EDGE).size() > 300);
        assertEquals(List.of(), SceneCollisions.of(scene, TYPE));
    }

    @Test
    void givesTheSameSheetForTheSameVehicle() {
        assertEquals(draw(LargeVehicle.make(), PlanView.ABOVE), draw(LargeVehicle.make(), PlanView.ABOVE));
    }
}
