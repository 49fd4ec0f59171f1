// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.ProtectorPart;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Way;

/**
 * Writes what sizing chose into a vehicle: sections, and protectors in their ways, both marked as chosen by sizing. Ends that are
 * named follow the section. Nothing else changes; where the choice stands already, nothing changes at all.
 */
public final class SizingEdits {
    private SizingEdits() {
    }

    /** What was chosen: a part of the design. */
    public sealed interface Choice {
    }

    /** A cable's section, by id of the cable, mm2. */
    public record Section(String cable, double sectionMm2) implements Choice {
    }

    /** A way's protector, by id of the way and name of the part. */
    public record Fitted(String way, String protector) implements Choice {
    }

    /**
     * Applies choices, all or none: what cannot be written is refused before anything changes.
     *
     * @param openPersonChoices what a person chose may be written over; wiring of the base vehicle never is
     * @return number of elements that changed
     * @throws IllegalArgumentException when an element or part is not there, or a choice may not be written over
     */
    public static int apply(Vehicle vehicle, List<? extends Choice> choices, boolean openPersonChoices) {
        WiringIds ids = new WiringIds(vehicle);
        WrittenParts parts = new WrittenParts(vehicle);
        Map<Choice, Object> targets = new LinkedHashMap<>();
        Map<Choice, ProtectorPart> protectors = new LinkedHashMap<>();
        for (Choice choice : choices) {
            if (choice instanceof Section section) {
                Cable cable = ids.cable(section.cable());
                refuse(Boolean.TRUE.equals(cable.getExisting()), section.cable(), "belongs to the base vehicle");
                refuse(!openPersonChoices && cable.getSectionMm2() != null
                        && !(cable.isSetSectionBy() && cable.getSectionBy() == ChosenBy.SIZING), section.cable(),
                        "has a section that a person chose");
                targets.put(choice, cable);
            } else if (choice instanceof Fitted fitted) {
                Device box = ids.deviceOfWay(fitted.way());
                Way way = way(box, fitted.way());
                refuse(Boolean.TRUE.equals(box.getExisting()), fitted.way(), "belongs to the base vehicle");
                refuse(!openPersonChoices && way != null && way.getProtector() != null
                        && !(way.isSetRatingBy() && way.getRatingBy() == ChosenBy.SIZING), fitted.way(),
                        "has a rating that a person chose");
                targets.put(choice, box);
                protectors.put(choice, parts.protector(fitted.protector()));
            }
        }
        SectionEnds ends = new SectionEnds(vehicle);
        int changed = 0;
        for (Map.Entry<Choice, Object> each : targets.entrySet()) {
            boolean done = each.getKey() instanceof Section section ? section((Cable) each.getValue(), section.sectionMm2(), ends)
                    : fit((Device) each.getValue(), ((Fitted) each.getKey()).way(), protectors.get(each.getKey()));
            changed += done ? 1 : 0;
        }
        return changed;
    }

    private static void refuse(boolean refused, String id, String why) {
        if (refused) {
            throw new IllegalArgumentException(id + " " + why);
        }
    }

    private static boolean section(Cable cable, double sectionMm2, SectionEnds ends) {
        BigDecimal section = asWritten(cable.getPart(), sectionMm2);
        boolean coresFollow = cable.getCores().stream().allMatch(core -> core.getSectionMm2() == null
                || core.getSectionMm2().compareTo(section) == 0);
        if (same(cable.getSectionMm2(), section) && cable.isSetSectionBy() && cable.getSectionBy() == ChosenBy.SIZING
                && coresFollow) {
            return ends.follow(cable);
        }
        if (!same(cable.getSectionMm2(), section)) {
            cable.setSectionMm2(section);
        }
        cable.setSectionBy(ChosenBy.SIZING);
        for (Core core : cable.getCores()) {
            if (core.getSectionMm2() != null && !same(core.getSectionMm2(), section)) {
                core.setSectionMm2(section);
            }
        }
        ends.follow(cable);
        return true;
    }

    private static boolean same(BigDecimal a, BigDecimal b) {
        return a != null && b != null && a.compareTo(b) == 0;
    }

    /** The section with the digits of the part's table. */
    private static BigDecimal asWritten(CablePart part, double sectionMm2) {
        BigDecimal plain = BigDecimal.valueOf(sectionMm2).stripTrailingZeros();
        BigDecimal whole = plain.scale() < 0 ? plain.setScale(0) : plain;
        return part == null ? whole : part.getRows().stream().map(row -> row.getSectionMm2())
                .filter(each -> same(each, whole)).findFirst().orElse(whole);
    }

    private static boolean fit(Device box, String id, ProtectorPart protector) {
        Way way = way(box, id);
        boolean marked = way != null && way.isSetRatingBy() && way.getRatingBy() == ChosenBy.SIZING;
        if (marked && way.getProtector() == protector) {
            return false;
        }
        if (way != null && way.getProtector() == protector) {
            way.setRatingBy(ChosenBy.SIZING);
            return true;
        }
        if (way != null && way.isSetRatingBy() && !marked) {
            way.setRatingBy(ChosenBy.SIZING);
        }
        BoxEdits.fitProtector(box, WiringIds.way(id), protector, ChosenBy.SIZING);
        return true;
    }

    private static Way way(Device box, String id) {
        return box.getWays().stream().filter(each -> Objects.equals(each.getName(), WiringIds.way(id))).findFirst()
                .orElse(null);
    }
}
