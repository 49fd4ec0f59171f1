// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Vehicle;

class LineServicesTest {
    private final Vehicle vehicle = new VehicleFiles()
            .openVehicle(Path.of("../../bundles/org.loomwright.samples/fleet/heron.vehicle")).root();
    private final Arrangement central = vehicle.getArrangements().get(0);
    private final LineServices services = new LineServices();

    private Cable cable(String name) {
        return vehicle.getCables().stream().filter(each -> each.getName().equals(name)).findFirst().orElseThrow();
    }

    private Device device(String name) {
        return vehicle.getDevices().stream().filter(each -> each.getName().equals(name)).findFirst().orElseThrow();
    }

    private Attachment end(String cable) {
        return cable(cable).getCores().get(0).getB();
    }

    /** A terminal of a device that only this arrangement has. */
    private static Attachment ownTerminal(Arrangement arrangement) {
        return arrangement.getCables().stream().map(each -> each.getCores().get(0).getB())
                .filter(end -> end.eContainer().eContainer() == arrangement).findFirst().orElseThrow();
    }

    @Test
    void namesAndTells() {
        assertEquals("-X1", services.label(device("X1")));
        assertEquals("-X1:3", services.label(device("X1").getWays().get(2)));
        assertEquals("-W5, Feed of the fuse box, 35 mm\u00b2", services.tip(cable("W5")));
        assertEquals("", services.label(vehicle.getCases().get(0).getBatteries().get(0)));
    }

    @Test
    void tellsSupplyFromReturn() {
        assertEquals("supply", services.role(cable("W5")));
        assertEquals("return", services.role(cable("W13")));
        assertEquals("lamp", services.role(device("E1")));
        assertEquals("fuse", services.role(device("X1").getWays().get(0)));
        assertEquals(null, services.role(vehicle.getPlaces().get(0)));
    }

    @Test
    void followsACableToItsEnds() {
        assertSame(device("X1"), services.source(cable("W5")));
        assertSame(device("X2"), services.target(cable("W5")));
        assertSame(end("W13"), services.target(cable("W13")));
        assertEquals(null, services.source(device("X1")));
    }

    @Test
    void connectsTerminalsOfOneArrangement() {
        Attachment lamp = end("W12");
        Attachment earth = end("W13");
        Attachment box = central.getCables().get(0).getCores().get(0).getB();
        assertTrue(services.canConnect(lamp, earth));
        Cable made = (Cable) services.connect(box, lamp);
        assertSame(central, made.eContainer());
        assertSame(box, made.getCores().get(0).getA());
        assertSame(lamp, made.getCores().get(0).getB());
    }

    @Test
    void refusesWhatNoCableJoins() {
        Attachment earth = end("W13");
        Attachment other = end("W21");
        assertFalse(services.canConnect(earth, other));
        assertFalse(services.canConnect(earth, earth));
        assertFalse(services.canConnect(device("X1"), device("X2")));
        assertFalse(services.canConnect(ownTerminal(central), ownTerminal(vehicle.getArrangements().get(1))));
        assertThrows(IllegalArgumentException.class, () -> services.connect(earth, other));
    }

    @Test
    void knowsWhatItShows() {
        assertEquals(LineKind.CABLE, LineKind.of(cable("W5").eClass()));
        assertEquals(LineKind.DEVICE, LineKind.of(device("X1").eClass()));
        assertEquals(null, LineKind.of(vehicle.eClass()));
    }
}
