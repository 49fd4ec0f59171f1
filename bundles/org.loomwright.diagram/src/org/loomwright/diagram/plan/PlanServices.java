// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.diagram.services.DiagramServices;
import org.loomwright.diagram.services.ElementKind;
import org.loomwright.model.edits.NewNames;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.Zone;

/** What a plan needs to know of the model, in verbs that are the same for every diagram. */
public final class PlanServices implements DiagramServices {

    /** Designation with the minus sign for devices and cables, the label or name for everything else. */
    @Override
    public String label(EObject element) {
        if (!(element instanceof Named named) || named.getName() == null) {
            return "";
        }
        if (element instanceof Device || element instanceof Cable || element instanceof EarthPoint) {
            return "-" + named.getName();
        }
        return named.getLabel() == null || named.getLabel().isBlank() || element instanceof Run ? named.getName()
                : named.getLabel();
    }

    /** {@code hot}, {@code wet} or {@code dry} for zones, {@code existing} for the base vehicle, else the kind. */
    @Override
    public String role(EObject element) {
        PlanKind kind = element == null ? null : PlanKind.of(element.eClass());
        if (kind == null) {
            return null;
        }
        if (element instanceof Zone zone) {
            return Boolean.TRUE.equals(zone.getHot()) ? "hot" : PlanReader.wet(zone.getWetness()) ? "wet" : "dry";
        }
        boolean existing = element instanceof Device device && Boolean.TRUE.equals(device.getExisting())
                || element instanceof Cable cable && Boolean.TRUE.equals(cable.getExisting())
                || element instanceof EarthPoint point && Boolean.TRUE.equals(point.getExisting());
        return existing ? "existing" : kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What is told when the pointer rests on an element: name, label, what is stated of it; with units. */
    @Override
    public String tip(EObject element) {
        List<String> words = new ArrayList<>();
        words.add(label(element));
        if (element instanceof Named named && named.getLabel() != null && !words.contains(named.getLabel())) {
            words.add(named.getLabel());
        }
        if (element instanceof Place place && place.getXMm() != null && place.getYMm() != null && place.getZMm() != null) {
            words.add("x " + mm(place.getXMm()) + ", y " + mm(place.getYMm()) + ", z " + mm(place.getZMm()));
        } else if (element instanceof Run run) {
            words.add(label(run.getFrom()) + " to " + label(run.getTo()));
            words.add(run.getLengthMm() == null ? "straight" : mm(run.getLengthMm()));
        } else if (element instanceof Device device && device.getPart() != null) {
            words.add(device.getPart().getLabel() == null ? device.getPart().getName() : device.getPart().getLabel());
        } else if (element instanceof Cable cable) {
            words.add(cable.getSectionMm2() == null ? "section open" : cable.getSectionMm2().toPlainString() + " mm\u00B2");
        } else if (element instanceof Zone zone && zone.getAmbientMaxC() != null) {
            words.add("up to " + zone.getAmbientMaxC().toPlainString() + " \u00B0C");
        }
        return String.join(", ", words);
    }

    /** Where a run or cable begins: a place, device or earth point; null for one that begins nowhere, and for no edge. */
    @Override
    public EObject source(EObject edge) {
        return edge instanceof Run run ? run.getFrom() : end(edge, true);
    }

    /** Where a run or cable ends; see {@link #source}. */
    @Override
    public EObject target(EObject edge) {
        return edge instanceof Run run ? run.getTo() : end(edge, false);
    }

    /** True when a run can be made between two: different places of one vehicle that no run joins yet. */
    @Override
    public boolean canConnect(EObject from, EObject to) {
        if (!(from instanceof Place a) || !(to instanceof Place b) || a == b || a.eContainer() != b.eContainer()
                || !(a.eContainer() instanceof Vehicle vehicle)) {
            return false;
        }
        return vehicle.getRuns().stream().noneMatch(run -> run.getFrom() == a && run.getTo() == b
                || run.getFrom() == b && run.getTo() == a);
    }

    /**
     * Makes a run between two places, named by the first free number; its length is the straight distance until it is stated.
     *
     * @throws IllegalArgumentException when {@link #canConnect} says no
     */
    @Override
    public Run connect(EObject from, EObject to) {
        if (!canConnect(from, to)) {
            throw new IllegalArgumentException("no run from " + label(from) + " to " + label(to)
                    + ": expected two places of one vehicle that no run joins yet");
        }
        Vehicle vehicle = (Vehicle) from.eContainer();
        Run run = VehicleFactory.eINSTANCE.createRun();
        run.setName(NewNames.free(vehicle, "R"));
        run.setFrom((Place) from);
        run.setTo((Place) to);
        vehicle.getRuns().add(run);
        return run;
    }

    private static EObject end(EObject edge, boolean first) {
        if (edge instanceof Cable cable) {
            for (Core core : cable.getCores()) {
                Attachment at = first ? core.getA() : core.getB();
                if (at != null) {
                    return ElementKind.drawnAt(at);
                }
            }
        }
        return null;
    }

    private static String mm(BigDecimal value) {
        return value.toPlainString() + " mm";
    }
}
