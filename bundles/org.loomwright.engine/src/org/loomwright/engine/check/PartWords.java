// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.DropBreakdown.Part;
import org.loomwright.engine.check.DropBreakdown.Share;
import org.loomwright.engine.result.Figures;

/** Plain words for the elements that make up a drop, with the article, for example {@code the return strap WE2}. */
final class PartWords {
    private final Plan plan;
    private final ElementNames names;

    PartWords(Plan plan, ElementNames names) {
        this.plan = plan;
        this.names = names;
    }

    /** The element as it reads in a sentence. */
    String of(DropBreakdown parts, String element) {
        for (Share share : parts.shares()) {
            if (share.element().equals(element)) {
                return of(share);
            }
        }
        return names.shown(element);
    }

    /** The element of one share as it reads in a sentence. */
    String of(Share share) {
        String shown = names.shown(share.element());
        return switch (share.part()) {
            case CABLE, END_JOINTS -> "the " + Figures.three(plan.conductors().get(share.index()).sectionMm2()) + " mm2 cable "
                    + shown;
            case PROTECTOR -> "the " + ((Plan.Protector) plan.elements().get(share.index())).kind() + " " + shown;
            case CONTACT -> "the contact of " + shown;
            case SHUNT -> "the shunt " + shown;
            case JOINT -> "the joint in " + shown;
            case DIODE -> "the diode " + shown;
            case BOND -> (share.returns() ? "the return strap " : "the strap ") + shown;
            case SEAM -> "the seam " + shown;
            case EARTH_CONTACT -> "the earth point " + shown;
            case CASE_CONTACT -> "the case contact of " + shown;
            case OTHER -> shown;
        };
    }

    /** Short word for a part, as a cause. */
    static String kind(Part part) {
        return switch (part) {
            case CABLE -> "cable";
            case END_JOINTS -> "end joints";
            case EARTH_CONTACT -> "earth contact";
            case CASE_CONTACT -> "case contact";
            default -> part.name().toLowerCase(java.util.Locale.ROOT);
        };
    }
}
