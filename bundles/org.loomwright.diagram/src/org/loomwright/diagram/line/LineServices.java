// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.diagram.services.DiagramServices;
import org.loomwright.diagram.services.ElementKind;
import org.loomwright.diagram.services.Measures;
import org.loomwright.diagram.symbol.DeviceSymbols;
import org.loomwright.model.edits.CoreEnd;
import org.loomwright.model.edits.NewNames;
import org.loomwright.model.edits.VehicleEdits;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.TerminalRole;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.Way;

/** What a line diagram needs to know of the model, in verbs that are the same for every diagram. */
public final class LineServices implements DiagramServices {

    /** Designation with the minus sign of IEC 81346; a way or terminal after its device and a colon. */
    @Override
    public String label(EObject element) {
        if (!(element instanceof Named named) || named.getName() == null) {
            return "";
        }
        if ((element instanceof Way || element instanceof Terminal) && element.eContainer() instanceof Device device) {
            return "-" + device.getName() + ":" + named.getName();
        }
        return "-" + named.getName();
    }

    /** Slug of the symbol for devices; {@code fuse} or {@code spare} for ways; {@code supply} or {@code return} for cables. */
    @Override
    public String role(EObject element) {
        if (element instanceof Device device) {
            return DeviceSymbols.of(device.getPart()).name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
        if (element instanceof Way way) {
            return way.getProtector() == null ? "spare" : "fuse";
        }
        if (element instanceof Cable cable) {
            boolean back = !cable.getCores().isEmpty()
                    && cable.getCores().stream().allMatch(core -> minus(core.getA()) && minus(core.getB()));
            return back ? "return" : "supply";
        }
        return element instanceof EarthPoint ? "earth-point" : null;
    }

    /** Designation, label and what is stated of the element; with units. */
    @Override
    public String tip(EObject element) {
        List<String> words = new ArrayList<>(List.of(label(element)));
        if (element instanceof Named named && named.getLabel() != null && !named.getLabel().isBlank()) {
            words.add(named.getLabel());
        }
        if (element instanceof Device device && device.getPart() != null && device.getPart().getLabel() != null) {
            words.add(device.getPart().getLabel());
        } else if (element instanceof Cable cable && cable.getSectionMm2() != null) {
            words.add(Measures.number(cable.getSectionMm2()) + " mm\u00b2");
        } else if (element instanceof Way way && way.getProtector() != null) {
            words.add(Unit.rating(way.getProtector()));
        } else if (element instanceof EarthPoint earth && earth.getBody() != null && earth.getBody().getName() != null) {
            words.add(earth.getBody().getName());
        }
        return String.join(", ", words);
    }

    /** Device or earth point at which a cable's first core begins. */
    @Override
    public EObject source(EObject edge) {
        Core core = core(edge);
        return core == null ? null : ElementKind.drawnAt(core.getA());
    }

    /** Device or earth point at which a cable's first core ends. */
    @Override
    public EObject target(EObject edge) {
        Core core = core(edge);
        return core == null ? null : ElementKind.drawnAt(core.getB());
    }

    /** True for two terminals, or a terminal and an earth point, of one vehicle that can see each other. */
    @Override
    public boolean canConnect(EObject from, EObject to) {
        if (!(from instanceof Attachment) || !(to instanceof Attachment) || from == to
                || from instanceof EarthPoint && to instanceof EarthPoint) {
            return false;
        }
        if (!(EcoreUtil.getRootContainer(from) instanceof Vehicle)
                || EcoreUtil.getRootContainer(from) != EcoreUtil.getRootContainer(to)) {
            return false;
        }
        Arrangement a = arrangement(from);
        Arrangement b = arrangement(to);
        return a == null || b == null || a == b;
    }

    /**
     * Makes a cable with one core, named by the first free number, in the arrangement of its ends or else in the vehicle; part,
     * section and colour are left for a person or for sizing.
     */
    @Override
    public EObject connect(EObject from, EObject to) {
        if (!canConnect(from, to)) {
            throw new IllegalArgumentException("no cable can join " + label(from) + " and " + label(to)
                    + ": expected two terminals, or a terminal and an earth point, of one arrangement");
        }
        Arrangement arrangement = arrangement(from) != null ? arrangement(from) : arrangement(to);
        Cable cable = VehicleFactory.eINSTANCE.createCable();
        Core core = VehicleFactory.eINSTANCE.createCore();
        cable.getCores().add(core);
        if (arrangement != null) {
            cable.setName(NewNames.free(arrangement, "W"));
            arrangement.getCables().add(cable);
        } else {
            Vehicle vehicle = (Vehicle) EcoreUtil.getRootContainer(from);
            cable.setName(NewNames.free(vehicle, "W"));
            vehicle.getCables().add(cable);
        }
        VehicleEdits.connect(core, CoreEnd.A, (Attachment) from);
        VehicleEdits.connect(core, CoreEnd.B, (Attachment) to);
        return cable;
    }

    private static Core core(EObject edge) {
        return edge instanceof Cable cable && !cable.getCores().isEmpty() ? cable.getCores().get(0) : null;
    }

    private static Arrangement arrangement(EObject element) {
        for (EObject each = element; each != null; each = each.eContainer()) {
            if (each instanceof Arrangement found) {
                return found;
            }
        }
        return null;
    }

    private static boolean minus(Attachment end) {
        if (end instanceof Terminal terminal && terminal.eContainer() instanceof Device device && device.getPart() != null) {
            return device.getPart().getTerminals().stream()
                    .filter(spec -> spec.getName() != null && spec.getName().equals(terminal.getName()))
                    .map(TerminalSpec::getRole).anyMatch(role -> role == TerminalRole.MINUS || role == TerminalRole.CASE);
        }
        return end instanceof EarthPoint;
    }
}
