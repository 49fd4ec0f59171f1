// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.loomwright.model.parts.EndPart;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Lugs, receptacles and other ends that are made for a range of sections: another section needs the end of the same kind and
 * stud that is made for it.
 */
public final class SectionEnds {
    private final List<EndPart> offered;

    /** Ends of a vehicle's libraries. */
    public SectionEnds(Vehicle vehicle) {
        offered = new WrittenParts(vehicle).ends();
    }

    /**
     * The end for a section: the same where it takes it, else the smallest like it that does.
     *
     * @param end        end at hand; may be null
     * @param sectionMm2 section of the core, mm2
     * @return the end at hand where the libraries have none for the section
     */
    public EndPart of(EndPart end, BigDecimal sectionMm2) {
        if (end == null || end.eIsProxy() || sectionMm2 == null || takes(end, sectionMm2)) {
            return end;
        }
        return like(end).stream().filter(other -> takes(other, sectionMm2)).findFirst().orElse(end);
    }

    /** Ends of the same kind and stud for other sections, those for small ones first. */
    public List<EndPart> like(EndPart end) {
        return offered.stream().filter(other -> other != end && alike(end, other))
                .sorted(Comparator.comparing(EndPart::getSectionMaxMm2, Comparator.nullsLast(Comparator.naturalOrder()))).toList();
    }

    /** Gives the cores of a cable the ends for their sections; false when nothing changes. */
    boolean follow(Cable cable) {
        boolean changed = false;
        for (Core core : cable.getCores()) {
            BigDecimal section = core.getSectionMm2() == null ? cable.getSectionMm2() : core.getSectionMm2();
            EndPart a = of(core.getAEnd(), section);
            EndPart b = of(core.getBEnd(), section);
            if (a != core.getAEnd()) {
                core.setAEnd(a);
                changed = true;
            }
            if (b != core.getBEnd()) {
                core.setBEnd(b);
                changed = true;
            }
        }
        return changed;
    }

    private static boolean takes(EndPart end, BigDecimal sectionMm2) {
        return (end.getSectionMinMm2() == null || end.getSectionMinMm2().compareTo(sectionMm2) <= 0)
                && (end.getSectionMaxMm2() == null || end.getSectionMaxMm2().compareTo(sectionMm2) >= 0);
    }

    private static boolean alike(EndPart a, EndPart b) {
        boolean sameStud = a.getStudMm() == null ? b.getStudMm() == null
                : b.getStudMm() != null && a.getStudMm().compareTo(b.getStudMm()) == 0;
        return sameStud && Objects.equals(a.isSetKind() ? a.getKind() : null, b.isSetKind() ? b.getKind() : null);
    }
}
