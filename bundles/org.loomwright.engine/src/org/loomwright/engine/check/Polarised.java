// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.nets.Nets;

/** Which terminals have a polarity. */
final class Polarised {
    private Polarised() {
    }

    /** Terminals of an element between which plus and minus must not be exchanged. */
    static List<Integer> terminals(Plan.Element element) {
        List<Integer> found = new ArrayList<>();
        if (element instanceof Plan.Demand demand) {
            found.addAll(List.of(demand.a(), demand.b()));
        } else if (element instanceof Plan.Cell cell) {
            found.addAll(List.of(cell.a(), cell.b()));
        } else if (element instanceof Plan.Regulated source) {
            found.addAll(List.of(source.a(), source.b()));
        } else if (element instanceof Plan.Converter converter) {
            found.addAll(List.of(converter.inA(), converter.inB(), converter.outA(), converter.outB()));
        } else if (element instanceof Plan.Diode diode) {
            found.addAll(List.of(diode.a(), diode.b()));
        } else if (element instanceof Plan.Threshold threshold && threshold.plus() >= 0 && threshold.minus() >= 0) {
            found.addAll(List.of(threshold.plus(), threshold.minus()));
        }
        return found;
    }

    /** Terminals that change-over contacts lay on plus or on minus, as those of a motor that runs both ways. */
    static Set<Integer> reversed(CheckContext context) {
        Map<Integer, List<Plan.Contact>> at = new HashMap<>();
        for (Plan.Element element : context.plan().elements()) {
            if (element instanceof Plan.Contact contact) {
                at.computeIfAbsent(contact.a(), key -> new ArrayList<>()).add(contact);
                at.computeIfAbsent(contact.b(), key -> new ArrayList<>()).add(contact);
            }
        }
        Wiring wiring = Wiring.of(context.plan());
        Set<Integer> found = new TreeSet<>();
        at.forEach((common, contacts) -> {
            Set<Nets.Kind> kinds = new TreeSet<>();
            contacts.forEach(contact -> kinds.add(kind(context, contact.a() == common ? contact.b() : contact.a())));
            if (kinds.contains(Nets.Kind.PLUS) && kinds.contains(Nets.Kind.MINUS)) {
                found.addAll(wiring.reach(common, step -> step.via() != Wiring.Via.STRUCTURE
                        && !(step.via() == Wiring.Via.ELEMENT
                                && context.plan().elements().get(step.index()) instanceof Plan.Contact)));
            }
        });
        return found;
    }

    private static Nets.Kind kind(CheckContext context, int terminal) {
        return context.nets().nets().get(context.nets().netOf()[terminal]).kind();
    }
}
