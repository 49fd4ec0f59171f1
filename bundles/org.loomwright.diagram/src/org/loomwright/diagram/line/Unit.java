// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.model.parts.Contact;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Element;
import org.loomwright.model.parts.ProtectorPart;
import org.loomwright.model.parts.RestState;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.parts.WaySpec;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Way;

/**
 * A device as the line diagram sees it.
 *
 * @param id     id of the device
 * @param device the device
 * @param part   its part, null when not chosen yet
 * @param links  conductive ways between its terminals
 */
record Unit(String id, Device device, DevicePart part, List<Link> links) {

    static Unit of(String id, Device device) {
        DevicePart part = device.getPart();
        List<Link> links = new ArrayList<>();
        if (part != null) {
            bars(part, links);
            ways(device, part, links);
            elements(part, links);
        }
        return new Unit(id, device, part, List.copyOf(links));
    }

    DeviceKind kind() {
        return part == null || part.getKind() == null ? DeviceKind.LOAD : part.getKind();
    }

    /** Designation with the minus sign of IEC 81346. */
    String designation() {
        return "-" + device.getName();
    }

    String label() {
        return device.getLabel() == null ? "" : device.getLabel();
    }

    /** True for a device that is a place of distribution: bars, with or without ways. */
    boolean distributes() {
        DeviceKind kind = kind();
        if (kind == DeviceKind.BUSBAR || kind == DeviceKind.SPLICE) {
            return true;
        }
        return kind == DeviceKind.BOX && part != null && part.getWays().size() > 1;
    }

    /** True for a source of its own: battery, alternator, panel, charger from the mains. */
    boolean source() {
        return part != null && (!part.getCells().isEmpty() || !part.getRegulators().isEmpty());
    }

    TerminalSpec terminal(String name) {
        if (part == null) {
            return null;
        }
        return part.getTerminals().stream().filter(spec -> name.equals(spec.getName())).findFirst().orElse(null);
    }

    /** The way of a name that the device lists; null when it does not. */
    Way way(String name) {
        return device.getWays().stream().filter(way -> name.equals(way.getName())).findFirst().orElse(null);
    }

    private static void bars(DevicePart part, List<Link> links) {
        Map<String, String> first = new LinkedHashMap<>();
        for (TerminalSpec spec : part.getTerminals()) {
            if (spec.getBar() != null && spec.getName() != null) {
                String other = first.putIfAbsent(spec.getBar(), spec.getName());
                if (other != null) {
                    links.add(new Link(Link.Kind.BAR, spec.getBar(), other, spec.getName(), "", true, null));
                }
            }
        }
    }

    private static void ways(Device device, DevicePart part, List<Link> links) {
        for (WaySpec spec : part.getWays()) {
            for (Way way : device.getWays()) {
                if (way.getProtector() != null && spec.getName() != null && spec.getName().equals(way.getName())
                        && spec.getFrom() != null && spec.getOut() != null) {
                    links.add(new Link(Link.Kind.WAY, spec.getName(), spec.getFrom().getName(), spec.getOut().getName(),
                            rating(way.getProtector()), true, null));
                }
            }
        }
    }

    private static void elements(DevicePart part, List<Link> links) {
        part.getJoints().forEach(joint -> add(links, Link.Kind.JOINT, joint, ""));
        part.getProtectors().forEach(fuse -> add(links, Link.Kind.PROTECTOR, fuse, amps(fuse.getRatingA())));
        part.getDiodes().forEach(diode -> add(links, Link.Kind.DIODE, diode, ""));
        part.getShunts().forEach(shunt -> add(links, Link.Kind.SHUNT, shunt, ""));
        part.getCoils().forEach(coil -> add(links, Link.Kind.COIL, coil, ""));
        for (Contact contact : part.getContacts()) {
            if (known(contact)) {
                String drive = contact.getCoil() != null ? contact.getCoil().getName()
                        : contact.getThreshold() != null ? contact.getThreshold().getName() : null;
                links.add(new Link(Link.Kind.CONTACT, contact.getName(), contact.getA().getName(), contact.getB().getName(), "",
                        contact.getRest() == RestState.CLOSED, drive));
            }
        }
        part.getConverters().forEach(converter -> {
            if (converter.getInPlus() != null && converter.getOutPlus() != null) {
                links.add(new Link(Link.Kind.CONVERTER, converter.getName(), converter.getInPlus().getName(),
                        converter.getOutPlus().getName(), "", true, null));
            }
        });
    }

    private static void add(List<Link> links, Link.Kind kind, Element element, String rating) {
        if (known(element)) {
            links.add(new Link(kind, element.getName(), element.getA().getName(), element.getB().getName(), rating, true, null));
        }
    }

    private static boolean known(Element element) {
        return element.getA() != null && element.getB() != null && element.getA().getName() != null
                && element.getB().getName() != null;
    }

    static String rating(ProtectorPart protector) {
        return amps(protector.getRatingA());
    }

    private static String amps(BigDecimal value) {
        return value == null ? "" : value.stripTrailingZeros().toPlainString() + " A";
    }
}
