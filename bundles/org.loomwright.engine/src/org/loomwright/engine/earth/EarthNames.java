// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.ElementNames;
import org.loomwright.engine.check.NetworkIndex;

/** How the things of the return are called in sentences. */
final class EarthNames {
    private static final int LISTED = 3;

    private final Plan plan;
    private final ElementNames names;

    EarthNames(Plan plan, ElementNames names) {
        this.plan = plan;
        this.names = names;
    }

    /** A strap: {@code -WE1}. */
    String strap(int bond) {
        return names.shown(plan.bonds().get(bond).id());
    }

    /** Straps: {@code strap -WE1}, {@code straps -WE1 and -WE2}. */
    String straps(List<Integer> bonds) {
        return bonds.size() == 1 ? "strap " + strap(bonds.get(0))
                : "straps " + String.join(" and ", bonds.stream().map(this::strap).toList());
    }

    String body(int body) {
        return plan.bodies().get(body).id();
    }

    /** A load or source with its label. */
    String element(int element) {
        return names.shownElement(element);
    }

    /** Id of an element under which findings name it. */
    String id(int element) {
        return names.element(element);
    }

    /** Id of a conductor under which findings name it. */
    String conductorId(int conductor) {
        return names.conductor(conductor);
    }

    /** Up to three, and how many more. */
    String list(List<String> all) {
        List<String> shown = all.stream().distinct().toList();
        if (shown.size() <= LISTED) {
            return shown.size() < 2 ? String.join("", shown)
                    : String.join(", ", shown.subList(0, shown.size() - 1)) + " and " + shown.get(shown.size() - 1);
        }
        return String.join(", ", shown.subList(0, LISTED)) + " and " + (shown.size() - LISTED) + " more";
    }

    /** Something that carries current, by what it is for: {@code the return of -B3 (gauge)}, {@code strap -WE2}. */
    String carrier(NetworkIndex.Kind kind, int index) {
        return switch (kind) {
            case CONDUCTOR -> conductor(index);
            case ELEMENT -> inside(index);
            case BOND -> "strap " + strap(index);
            case SEAM -> "seam " + names.shown(plan.bodyLinks().get(index).id());
            case EARTH_CONTACT -> "earth point " + names.shown(plan.terminals().get(index).id());
            case CASE_CONTACT -> "the case of " + names.shown(plan.devices().get(plan.terminals().get(index).device()).id());
        };
    }

    private String inside(int index) {
        Plan.Element element = plan.elements().get(index);
        String shown = names.shown(names.element(index));
        return element instanceof Plan.Protector ? "fuse " + shown
                : element instanceof Plan.Contact ? "the contact of " + shown
                : element instanceof Plan.Shunt ? "shunt " + shown : "the joint in " + shown;
    }

    private String conductor(int conductor) {
        Plan.Conductor core = plan.conductors().get(conductor);
        String cable = names.shownConductor(conductor);
        for (int terminal : new int[] {core.a(), core.b()}) {
            int device = plan.terminals().get(terminal).device();
            if (device >= 0 && isReturn(terminal)) {
                return "the return " + cable + " of " + shown(device);
            } else if (device >= 0 && "control".equals(plan.terminals().get(terminal).role())) {
                return "the control cable " + cable + " of " + shown(device);
            } else if (device >= 0 && "sense".equals(plan.terminals().get(terminal).role())) {
                return "the sense lead " + cable + " of " + shown(device);
            }
        }
        return cable;
    }

    private String shown(int device) {
        Plan.Device named = plan.devices().get(device);
        return names.shown(named.id()) + (named.label() == null || named.label().isEmpty() ? "" : " (" + named.label() + ")");
    }

    /** True for a terminal at which a load, coil or converter gives its current back. */
    boolean isReturn(int terminal) {
        return plan.elements().stream().anyMatch(element -> returnTerminal(element) == terminal);
    }

    /** Terminal at which a load, coil or converter gives its current back, -1 for other elements. */
    static int returnTerminal(Plan.Element element) {
        return element instanceof Plan.Demand demand ? demand.b()
                : element instanceof Plan.Coil coil ? coil.b()
                : element instanceof Plan.Converter converter ? converter.inB() : -1;
    }
}
