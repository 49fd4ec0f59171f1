// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.util.function.Consumer;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Driver;
import org.loomwright.model.vehicle.BatteryState;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.DemandState;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.SwitchPosition;

/** What holds for a case: that what it switches, charges and turns on can be switched, charged and turned on. */
final class CaseRules {
    private CaseRules() {
    }

    static void check(Case state, Consumer<Violation> found) {
        for (DemandState demand : state.getDemands()) {
            demand(demand, found);
        }
        for (SwitchPosition position : state.getPositions()) {
            position(position, found);
        }
        for (BatteryState battery : state.getBatteries()) {
            DevicePart part = part(battery.getDevice());
            if (part != null && part.getCells().isEmpty()) {
                found.accept(Violation.blocking("case-battery", battery, "device",
                        battery.getDevice().getName() + " is no battery", "a device with cells"));
            }
        }
    }

    private static void demand(DemandState demand, Consumer<Violation> found) {
        DevicePart part = part(demand.getDevice());
        if (part != null) {
            boolean there = demand.getElement() == null ? !part.getDemands().isEmpty()
                    : part.getDemands().stream().anyMatch(each -> demand.getElement().equals(each.getName()));
            if (!there) {
                found.accept(Violation.blocking("case-demand", demand, demand.getElement() == null ? "device" : "element",
                        demand.getDevice().getName() + (demand.getElement() == null ? " is no load"
                                : " has no demand " + demand.getElement()), "a load, and one of its demands"));
            }
        }
        if ((demand.getOnS() == null) != (demand.getPeriodS() == null)) {
            found.accept(Violation.blocking("case-duty", demand, "periodS", "only one of onS and periodS is given",
                    "both, or neither for always on"));
        } else if (demand.getOnS() != null && demand.getOnS().compareTo(demand.getPeriodS()) > 0) {
            found.accept(Violation.blocking("case-duty", demand, "onS", "on for longer than its period",
                    "onS not above periodS"));
        }
    }

    private static void position(SwitchPosition position, Consumer<Violation> found) {
        DevicePart part = part(position.getDevice());
        if (part == null) {
            return;
        }
        boolean there = part.getContacts().stream().anyMatch(contact -> contact.isSetDriver()
                && contact.getDriver() == Driver.HAND
                && (position.getContact() == null || position.getContact().equals(contact.getName())));
        if (!there) {
            found.accept(Violation.blocking("case-switch", position, position.getContact() == null ? "device" : "contact",
                    position.getDevice().getName() + (position.getContact() == null ? " has no contact moved by hand"
                            : " has no contact " + position.getContact() + " moved by hand"), "a switch moved by hand"));
        }
    }

    private static DevicePart part(Device device) {
        return device == null || device.getPart() == null || device.getPart().eIsProxy() ? null : device.getPart();
    }
}
