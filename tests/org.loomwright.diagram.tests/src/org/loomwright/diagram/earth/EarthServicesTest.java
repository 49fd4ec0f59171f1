// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.ReturnPolicy;
import org.loomwright.model.vehicle.Vehicle;

class EarthServicesTest {
    private final EarthServices services = new EarthServices();
    private final Vehicle vehicle = LargeStructure.vehicle(4, 0, 4);

    @Test
    void edgesKnowTheirEnds() {
        Bond bond = vehicle.getBonds().get(0);
        assertSame(bond.getA(), services.source(bond));
        assertSame(bond.getB(), services.target(bond));
        assertSame(vehicle.getDevices().get(0), services.source(vehicle.getCables().get(0)));
        assertSame(vehicle.getCables().get(0).getCores().get(0).getB(), services.target(vehicle.getCables().get(0)));
        assertNull(services.source(vehicle.getBodies().get(0)));
    }

    @Test
    void labelsAndRolesFollowTheKind() {
        assertEquals("-WE1", services.label(vehicle.getBonds().get(0)));
        assertEquals("Body number 0", services.label(vehicle.getBodies().get(0)));
        assertEquals("body", services.role(vehicle.getBodies().get(0)));
        assertEquals("bond", services.role(vehicle.getBonds().get(0)));
        assertEquals("return", services.role(vehicle.getCables().get(0)));
        assertNull(services.role(vehicle.getDevices().get(0)));
        vehicle.getBodies().get(0).setReturnPolicy(ReturnPolicy.FORBIDDEN);
        assertEquals("forbidden", services.role(vehicle.getBodies().get(0)));
        assertEquals("-WE1, bolted joint, 0.5 m\u03A9", services.tip(vehicle.getBonds().get(0)));
    }

    @Test
    void aStrapJoinsEarthPointsOfTwoBodiesOnly() {
        var first = vehicle.getEarthPoints().stream().filter(point -> point.getBody() == vehicle.getBodies().get(2)).findFirst()
                .orElseThrow();
        var second = vehicle.getEarthPoints().stream().filter(point -> point.getBody() == vehicle.getBodies().get(3)).findFirst()
                .orElseThrow();
        assertTrue(services.canConnect(first, second));
        assertFalse(services.canConnect(first, first));
        assertFalse(services.canConnect(first, vehicle.getBodies().get(1)));
        Bond made = (Bond) services.connect(first, second);
        assertEquals("WE4", made.getName());
        assertSame(vehicle, made.eContainer());
        assertThrows(IllegalArgumentException.class, () -> services.connect(first, vehicle.getBodies().get(1)));
    }
}
