// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.List;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Point;

/**
 * Where an edge that is being drawn would end.
 *
 * @param element element aimed at; null for none
 * @param ending  ending there; null for none
 * @param verdict what the model says; null for nothing aimed at
 */
record Joint(String element, String ending, Verdict verdict) {
    static final Joint NONE = new Joint(null, null, null);

    /** Says what joining to an ending means. */
    @FunctionalInterface
    interface Judge {
        /** The verdict on an ending. */
        Verdict on(String ending);
    }

    /** True when the edge may end there. */
    boolean possible() {
        return ending != null && verdict != null && verdict.possible();
    }

    /**
     * Where the pointer aims.
     *
     * @param before where it aimed before: its endings are offered below it and stay as long as the pointer is on them
     * @param other  the edge's other ending; null when it has none yet
     */
    static Joint under(Point screen, Joint before, String other, ToolContext context, Judge judge) {
        String chosen = Chip.under(Chip.of(before.element(), context), screen);
        if (chosen != null) {
            return new Joint(before.element(), chosen, judge.on(chosen));
        }
        String element = context.under(screen, id -> !context.advice().endings(id).isEmpty());
        return element == null ? NONE : at(element, other, context, judge);
    }

    /** At the likeliest ending of an element; at its first, with the reason why not, where none is possible. */
    static Joint at(String element, String other, ToolContext context, Judge judge) {
        String natural = context.advice().natural(element, other);
        List<Advice.Ending> endings = context.advice().endings(element);
        String ending = natural != null ? natural : endings.isEmpty() ? null : endings.get(0).id();
        return ending == null ? NONE : new Joint(element, ending, judge.on(ending));
    }

    /** The next ending of the element. */
    Joint turned(ToolContext context, Judge judge) {
        List<Advice.Ending> endings = element == null ? List.of() : context.advice().endings(element);
        for (int i = 0; i < endings.size(); i++) {
            if (endings.get(i).id().equals(ending)) {
                String next = endings.get((i + 1) % endings.size()).id();
                return new Joint(element, next, judge.on(next));
            }
        }
        return this;
    }

    /**
     * What is painted while an edge is drawn to here.
     *
     * @param from   where it begins, px of the sheet; null for nowhere
     * @param screen where the pointer is, px of the window; null for at the element
     */
    Feedback feedback(Point from, Point screen, ToolContext context) {
        Overlay overlay = new Overlay(context);
        HitIndex hits = context.hits();
        Point middle = element == null ? null : Walk.middle(element, hits);
        Point end = screen != null ? screen : middle == null ? null : context.viewport().toScreen(middle);
        overlay.frame(element, verdict);
        if (from != null && end != null) {
            overlay.line(List.of(context.viewport().toScreen(from), end), verdict);
        }
        overlay.chips(Chip.of(element, context), ending, verdict);
        if (end != null) {
            overlay.bubble(end, verdict);
        }
        List<Group> groups = overlay.groups();
        return Feedback.aiming(element, groups, verdict);
    }
}
