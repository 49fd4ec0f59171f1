// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.nets.Nets;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/**
 * No protective device and no one-pole hand switch lies in a return (ISO 10133, recalled): what is behind it stays on plus
 * when it opens, and a fault to the structure goes past it. A switch with another pole in the supply opens both. Only coils
 * returning through it make it a warning. The base vehicle's own are as their maker built them.
 */
final class DeviceInReturnRule implements Rule {
    private static final String CHOICE = "device-in-return";

    @Override
    public String slug() {
        return "device-in-return";
    }

    @Override
    public String says() {
        return "No fuse and no one-pole switch lies in a return.";
    }

    @Override
    public List<String> limits() {
        return List.of(CHOICE);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        if ("allowed".equals(context.practice().choice(CHOICE, List.of("forbidden", "allowed")))) {
            return findings;
        }
        Plan plan = context.plan();
        Set<Integer> polesInSupply = new HashSet<>();
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Contact contact && kind(context, contact.a()) == Nets.Kind.PLUS) {
                polesInSupply.add(contact.device());
            }
        }
        Wiring wiring = Wiring.of(plan);
        for (int e = 0; e < plan.elements().size(); e++) {
            Plan.Element element = plan.elements().get(e);
            boolean onePole = element instanceof Plan.Contact contact && "hand".equals(contact.driver())
                    && !polesInSupply.contains(contact.device());
            if ((element instanceof Plan.Protector || onePole) && !plan.devices().get(element.device()).existing()
                    && inReturn(context, element)) {
                findings.add(finding(context, wiring, e));
            }
        }
        return findings;
    }

    private static boolean inReturn(CheckContext context, Plan.Element element) {
        int[] ends = Wiring.ends(element);
        return kind(context, ends[0]) == Nets.Kind.MINUS && kind(context, ends[1]) == Nets.Kind.MINUS;
    }

    private static Nets.Kind kind(CheckContext context, int terminal) {
        return context.nets().nets().get(context.nets().netOf()[terminal]).kind();
    }

    private Finding finding(CheckContext context, Wiring wiring, int e) {
        boolean protector = context.plan().elements().get(e) instanceof Plan.Protector;
        String shown = context.names().shown(context.names().element(e));
        Practice.Choice choice = context.practice().choices().get(CHOICE);
        boolean control = !protector && onlyCoils(context, wiring, e);
        return Finding.of(slug(), control ? Severity.WARNING : Severity.ERROR, context.names().element(e),
                (protector ? "Protective device " : "One-pole switch ") + shown + " lies in a return")
                .because(protector ? "When it opens, everything behind it stays on plus, and a fault to the structure goes "
                + "past it."
                        : "With it open everything behind stays on plus, and one fault to the structure switches it on.")
                .because("The practice says: " + choice.name() + " " + choice.value() + " (" + choice.source() + ").")
                .mend(Mend.inWords(protector ? "Put it into the supply." : "Put it into the supply, or use one with two poles."))
                .build();
    }

    /** True when nothing but coils returns through a switch. */
    private static boolean onlyCoils(CheckContext context, Wiring wiring, int e) {
        for (int end : Wiring.ends(context.plan().elements().get(e))) {
            Set<Integer> side = wiring.reach(end, step -> !step.through(e));
            List<Plan.Element> here = context.plan().elements().stream()
                    .filter(element -> Polarised.terminals(element).stream().anyMatch(side::contains)
                            || element instanceof Plan.Coil coil && side.contains(coil.b())).toList();
            if (!here.isEmpty() && here.stream().allMatch(Plan.Coil.class::isInstance)) {
                return true;
            }
        }
        return false;
    }
}
