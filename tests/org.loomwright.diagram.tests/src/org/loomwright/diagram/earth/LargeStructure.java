// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.math.BigDecimal;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.files.Terminals;

/** Makes vehicles with many bodies. */
final class LargeStructure {
    private static final VehicleFactory NEW = VehicleFactory.eINSTANCE;

    private LargeStructure() {
    }

    /** Bodies in a tree of three a knot, further straps that close loops, and returns spread over all. */
    static Vehicle vehicle(int bodies, int loops, int returns) {
        Vehicle vehicle = NEW.createVehicle();
        vehicle.setName("kite");
        for (int b = 0; b < bodies; b++) {
            Body body = NEW.createBody();
            body.setName("U" + b);
            body.setLabel("Body number " + b);
            vehicle.getBodies().add(body);
        }
        for (int b = 1; b < bodies; b++) {
            bond(vehicle, b, (b - 1) / 3);
        }
        for (int k = 0; k < loops; k++) {
            bond(vehicle, 1 + k * 5 % (bodies - 1), bodies - 1 - k);
        }
        for (int k = 0; k < returns; k++) {
            Device device = NEW.createDevice();
            device.setName("E" + k);
            device.setLabel("Load number " + k);
            vehicle.getDevices().add(device);
            Cable cable = NEW.createCable();
            cable.setName("W" + k);
            Core core = NEW.createCore();
            cable.getCores().add(core);
            vehicle.getCables().add(cable);
            core.setA(Terminals.of(device, "L-"));
            int body = k * 3 % bodies;
            String name = "XR" + body + (k % 2 == 0 ? "a" : "b");
            core.setB(vehicle.getEarthPoints().stream().filter(point -> point.getName().equals(name)).findFirst()
                    .orElseGet(() -> point(vehicle, name, body)));
        }
        return vehicle;
    }

    private static EarthPoint point(Vehicle vehicle, String name, int body) {
        EarthPoint point = NEW.createEarthPoint();
        point.setName(name);
        point.setLabel("Stud " + name);
        point.setBody(vehicle.getBodies().get(body));
        vehicle.getEarthPoints().add(point);
        return point;
    }

    private static void bond(Vehicle vehicle, int a, int b) {
        Bond bond = NEW.createBond();
        int nth = vehicle.getBonds().size() + 1;
        bond.setName("WE" + nth);
        bond.setA(point(vehicle, "XE" + nth + "a", a));
        bond.setB(point(vehicle, "XE" + nth + "b", b));
        bond.setMilliohm(new BigDecimal("0.5"));
        vehicle.getBonds().add(bond);
    }
}
