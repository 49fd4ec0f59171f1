// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.DiagramKind;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.SheetItem;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

class DrawingEditsTest {
    private final Vehicle vehicle = VehicleFactory.eINSTANCE.createVehicle();
    private final Arrangement plain = arrangement("plain");
    private final Arrangement other = arrangement("other");
    private final Device box = device(plain, "X1");

    private Arrangement arrangement(String name) {
        Arrangement arrangement = VehicleFactory.eINSTANCE.createArrangement();
        arrangement.setName(name);
        vehicle.getArrangements().add(arrangement);
        return arrangement;
    }

    private static Device device(Arrangement arrangement, String name) {
        Device device = VehicleFactory.eINSTANCE.createDevice();
        device.setName(name);
        arrangement.getDevices().add(device);
        return device;
    }

    @Test
    void theFirstMoveMakesTheSheetTheSecondKeepsIt() {
        SheetItem item = DrawingEdits.moveTo(vehicle, DiagramKind.LINE, plain, box, 120, 40.26);
        assertEquals("plain/X1", item.getElement());
        assertEquals(new BigDecimal("120"), item.getX());
        assertEquals(new BigDecimal("40.3"), item.getY());
        assertSame(item, DrawingEdits.moveTo(vehicle, DiagramKind.LINE, plain, box, 10, 20));
        assertEquals(1, vehicle.getSheets().size());
        assertEquals("line-plain", vehicle.getSheets().get(0).getName());
        assertSame(plain, vehicle.getSheets().get(0).getArrangement());
        DrawingEdits.moveTo(vehicle, DiagramKind.EARTH, plain, box, 1, 2);
        assertEquals(2, vehicle.getSheets().size());
    }

    @Test
    void thePositionFollowsARename() {
        DrawingEdits.moveTo(vehicle, DiagramKind.LINE, plain, box, 120, 40);
        VehicleEdits.rename(box, "X9");
        assertEquals("plain/X9", DrawingEdits.sheet(vehicle, DiagramKind.LINE, plain).getItems().get(0).getElement());
    }

    @Test
    void releasingGivesThePositionBackToTheLayout() {
        DrawingEdits.moveTo(vehicle, DiagramKind.LINE, plain, box, 120, 40);
        assertTrue(DrawingEdits.release(vehicle, DiagramKind.LINE, plain, box));
        assertFalse(DrawingEdits.release(vehicle, DiagramKind.LINE, plain, box));
        assertFalse(DrawingEdits.release(vehicle, DiagramKind.EARTH, plain, box));
    }

    @Test
    void whatIsNotOnTheDrawingIsRefusedAndNothingChanges() {
        assertThrows(IllegalArgumentException.class, () -> DrawingEdits.moveTo(vehicle, DiagramKind.LINE, other, box, 1, 2));
        assertThrows(IllegalArgumentException.class, () -> DrawingEdits.moveTo(vehicle, DiagramKind.PLAN, plain, box, 1, 2));
        assertThrows(IllegalArgumentException.class, () -> DrawingEdits.bend(vehicle, DiagramKind.LINE, plain, box, "1,2 3"));
        assertTrue(vehicle.getSheets().isEmpty());
    }

    @Test
    void bendsAreKeptBesideThePosition() {
        assertEquals("1,2 30.5,-4", DrawingEdits.bend(vehicle, DiagramKind.LINE, plain, box, "1,2 30.5,-4").getBends());
        assertNull(DrawingEdits.bend(vehicle, DiagramKind.LINE, plain, box, null).getBends());
    }

    @Test
    void aPlaceMovesInMillimetresAndOneWithoutPositionIsRefused() {
        Place place = VehicleFactory.eINSTANCE.createPlace();
        place.setName("dash");
        vehicle.getPlaces().add(place);
        assertThrows(IllegalArgumentException.class,
                () -> DrawingEdits.movePlace(place, BigDecimal.ONE, BigDecimal.ZERO, BigDecimal.ZERO));
        place.setXMm(new BigDecimal("3000"));
        place.setYMm(new BigDecimal("-400.0"));
        place.setZMm(new BigDecimal("900"));
        DrawingEdits.movePlace(place, new BigDecimal("50"), BigDecimal.ZERO, new BigDecimal("-20"));
        assertEquals(new BigDecimal("3050"), place.getXMm());
        assertEquals(new BigDecimal("-400.0"), place.getYMm());
        assertEquals(new BigDecimal("880"), place.getZMm());
    }
}
