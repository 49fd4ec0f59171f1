// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.Objects;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.files.Terminals;
import org.loomwright.model.parts.TerminalRole;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;

/** What a core can end at, looked at without making anything: a device's terminal or an earth point. */
public sealed interface WireEnd {
    /** A terminal of a device, by name. */
    record Pin(Device device, String terminal) implements WireEnd {
        @Override
        public Attachment attachment() {
            return Terminals.of(device, terminal);
        }

        @Override
        public String id() {
            return Fragments.of(device) + "." + terminal;
        }

        @Override
        public String shown() {
            return "-" + device.getName() + ":" + terminal;
        }

        /** The part's description; null when the part has no such terminal or is not chosen. */
        TerminalSpec spec() {
            return device.getPart() == null || device.getPart().eIsProxy() ? null : device.getPart().getTerminals().stream()
                    .filter(each -> Objects.equals(each.getName(), terminal)).findFirst().orElse(null);
        }

        TerminalRole role() {
            TerminalSpec spec = spec();
            return spec == null || !spec.isSetRole() ? null : spec.getRole();
        }
    }

    /** An earth point. */
    record Earth(EarthPoint point) implements WireEnd {
        @Override
        public Attachment attachment() {
            return point;
        }

        @Override
        public String id() {
            return Fragments.of(point);
        }

        @Override
        public String shown() {
            return point.getName();
        }
    }

    /** The model's object; a terminal is made when nothing referred to it before. */
    Attachment attachment();

    /** Its fragment. */
    String id();

    /** As shown to people, for example {@code -X1:3}. */
    String shown();

    /** The end that an attachment is; null for null. */
    static WireEnd of(Attachment attachment) {
        if (attachment instanceof Terminal terminal && Terminals.deviceOf(terminal) != null) {
            return new Pin(Terminals.deviceOf(terminal), terminal.getName());
        }
        return attachment instanceof EarthPoint point ? new Earth(point) : null;
    }

    /** The end of a fragment; null when there is none. */
    static WireEnd find(Vehicle vehicle, String id) {
        if (id == null) {
            return null;
        }
        int dot = id.indexOf('.', id.lastIndexOf('/') + 1);
        if (dot > 0 && dot < id.length() - 1 && Fragments.find(vehicle, id.substring(0, dot)) instanceof Device device) {
            return new Pin(device, id.substring(dot + 1));
        }
        EObject found = Fragments.find(vehicle, id);
        return found instanceof Attachment attachment ? of(attachment) : null;
    }
}
