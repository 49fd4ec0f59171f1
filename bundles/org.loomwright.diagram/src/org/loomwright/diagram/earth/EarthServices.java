// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.diagram.services.DiagramServices;
import org.loomwright.diagram.services.ElementKind;
import org.loomwright.model.edits.NewNames;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.BodyLink;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.ReturnPolicy;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** What an earth diagram needs to know of the model, in verbs that are the same for every diagram. */
public final class EarthServices implements DiagramServices {

    /** Designation with the minus sign for straps and cables, label or name for bodies and seams, the name for earth points. */
    @Override
    public String label(EObject element) {
        if (!(element instanceof Named named) || named.getName() == null) {
            return "";
        }
        if (element instanceof Bond || element instanceof Cable) {
            return "-" + named.getName();
        }
        return element instanceof EarthPoint || named.getLabel() == null || named.getLabel().isBlank() ? named.getName()
                : named.getLabel();
    }

    /** {@code forbidden} for a body that takes no returns, {@code existing} for the base vehicle, else the kind. */
    @Override
    public String role(EObject element) {
        EarthKind kind = element == null ? null : EarthKind.of(element.eClass());
        if (kind == null || kind == EarthKind.RETURN && earthPoint((Cable) element) == null) {
            return null;
        }
        if (element instanceof Body body && body.isSetReturnPolicy() && body.getReturnPolicy() == ReturnPolicy.FORBIDDEN) {
            return "forbidden";
        }
        boolean existing = element instanceof Bond bond && Boolean.TRUE.equals(bond.getExisting())
                || element instanceof EarthPoint point && Boolean.TRUE.equals(point.getExisting())
                || element instanceof Cable cable && Boolean.TRUE.equals(cable.getExisting());
        return existing ? "existing" : kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Name, label and what is stated of the element; with units. */
    @Override
    public String tip(EObject element) {
        List<String> words = new ArrayList<>();
        words.add(label(element));
        if (element instanceof Named named && named.getLabel() != null && !words.contains(named.getLabel())) {
            words.add(named.getLabel());
        }
        if (element instanceof Bond bond) {
            words.add(bond.getPart() == null ? "bolted joint" : bond.getPart().getSectionMm2() == null ? "strap"
                    : "strap " + EarthText.section(bond.getPart().getSectionMm2().doubleValue()));
            if (bond.getMilliohm() != null) {
                words.add(bond.getMilliohm().toPlainString() + " m\u03A9");
            }
        } else if (element instanceof Body body && body.getMaterial() != null) {
            words.add(body.getMaterial());
        } else if (element instanceof EarthPoint point && point.getStudMm() != null) {
            words.add("stud of " + point.getStudMm().toPlainString() + " mm");
        }
        return String.join(", ", words);
    }

    /** Body or earth point at which a seam or strap begins; the earth point's other end for a cable; null for no edge. */
    @Override
    public EObject source(EObject edge) {
        if (edge instanceof Cable cable) {
            Core core = core(cable);
            return core == null ? null : ElementKind.drawnAt(core.getA() instanceof EarthPoint ? core.getB() : core.getA());
        }
        return edge instanceof Bond bond ? bond.getA() : edge instanceof BodyLink link ? link.getA() : null;
    }

    /** Body or earth point at which a seam, strap or return ends; null for no edge. */
    @Override
    public EObject target(EObject edge) {
        return edge instanceof Cable cable ? earthPoint(cable) : edge instanceof Bond bond ? bond.getB()
                : edge instanceof BodyLink link ? link.getB() : null;
    }

    /** True for two earth points of different bodies, or two different bodies, of one vehicle. */
    @Override
    public boolean canConnect(EObject from, EObject to) {
        if (from == null || to == null || from == to || !(from.eContainer() instanceof Vehicle)
                || from.eContainer() != to.eContainer()) {
            return false;
        }
        return from instanceof EarthPoint a && to instanceof EarthPoint b && a.getBody() != b.getBody()
                || from instanceof Body && to instanceof Body;
    }

    /**
     * Makes a strap between two earth points, or a seam between two bodies, named by the first free number; part, length and
     * resistance are left for a person to state.
     */
    @Override
    public EObject connect(EObject from, EObject to) {
        if (!canConnect(from, to)) {
            throw new IllegalArgumentException("nothing can join " + label(from) + " and " + label(to)
                    + ": expected earth points of two bodies, or two bodies, of one vehicle");
        }
        Vehicle vehicle = (Vehicle) from.eContainer();
        if (from instanceof EarthPoint) {
            Bond bond = VehicleFactory.eINSTANCE.createBond();
            bond.setName(NewNames.free(vehicle, "WE"));
            bond.setA((EarthPoint) from);
            bond.setB((EarthPoint) to);
            vehicle.getBonds().add(bond);
            return bond;
        }
        BodyLink link = VehicleFactory.eINSTANCE.createBodyLink();
        link.setName(NewNames.free(vehicle, "WS"));
        link.setA((Body) from);
        link.setB((Body) to);
        vehicle.getBodyLinks().add(link);
        return link;
    }

    private static Core core(Cable cable) {
        return cable.getCores().stream().filter(core -> core.getA() instanceof EarthPoint || core.getB() instanceof EarthPoint)
                .findFirst().orElse(null);
    }

    private static EarthPoint earthPoint(Cable cable) {
        Core core = core(cable);
        return core == null ? null : core.getB() instanceof EarthPoint point ? point : (EarthPoint) core.getA();
    }
}
