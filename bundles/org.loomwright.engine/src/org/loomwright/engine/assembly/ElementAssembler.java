// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Setting;

/** Assembles what lies inside devices: the part's elements with the device's settings, then fitted protectors. */
final class ElementAssembler {
    private final TerminalTable terminals;
    private final AssemblyScope scope;
    private final List<Plan.Element> elements = new ArrayList<>();
    private final WayAssembler ways;

    ElementAssembler(TerminalTable terminals, AssemblyScope scope) {
        this.terminals = terminals;
        this.scope = scope;
        ways = new WayAssembler(terminals, scope, elements);
    }

    /** All elements so far. */
    List<Plan.Element> all() {
        return elements;
    }

    /** Ways in which nothing is fitted so far. */
    List<EmptyWay> emptyWays() {
        return ways.empty();
    }

    /** The elements of one device. */
    void add(int number, String id, Device device, DevicePart part) {
        DeviceSettings settings = new DeviceSettings(device.getSettings());
        ElementSite site = new ElementSite(number, id, settings, terminals, scope, elements);
        new SwitchgearElements(site).addAll(part);
        new SourceElements(site).addAll(part);
        new LoadElements(site, device).addAll(part);
        ways.addAll(number, id, device);
        for (Setting setting : settings.unused(device.getSettings())) {
            scope.problems().add(id, "the setting of " + setting.getElement() + "." + setting.getQuantity()
                    + " names no value of part " + part.getName() + " and has no effect");
        }
    }
}
