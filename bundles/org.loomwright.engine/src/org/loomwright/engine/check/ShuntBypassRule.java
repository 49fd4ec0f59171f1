// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A measuring shunt at the minus of a battery is the only way from its post: loads and charging sources that return on the
 * battery's side, and conductors around it, are not counted. What the shunt's own device draws does not matter, nor do the
 * wires that only sense. With batteries on both sides, the side with fewer loads is taken for the measured battery's.
 */
final class ShuntBypassRule implements Rule {
    @Override
    public String slug() {
        return "shunt-bypass";
    }

    @Override
    public String says() {
        return "The shunt is the only way from the battery's minus.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Wiring wiring = Wiring.of(context.plan());
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (context.plan().elements().get(e) instanceof Plan.Shunt shunt) {
                check(context, wiring, e, shunt, findings);
            }
        }
        return findings;
    }

    private void check(CheckContext context, Wiring wiring, int e, Plan.Shunt shunt, List<Finding> findings) {
        List<String> fewest = null;
        for (int[] sides : new int[][] {{shunt.a(), shunt.b()}, {shunt.b(), shunt.a()}}) {
            if (!batteryAt(context.plan(),
                    wiring.reach(sides[0], step -> step.via() != Wiring.Via.STRUCTURE && !step.through(e)))) {
                continue;
            }
            Set<Integer> side = wiring.reach(sides[0], step -> !step.through(e));
            if (side.contains(sides[1])) {
                findings.add(around(context, wiring, e, side, sides));
                return;
            }
            List<String> passing = passing(context, shunt.device(), side);
            fewest = fewest == null || passing.size() < fewest.size() ? passing : fewest;
        }
        if (fewest != null && !fewest.isEmpty()) {
            findings.add(finding(context, e, fewest));
        }
    }

    private static boolean batteryAt(Plan plan, Set<Integer> side) {
        return plan.elements().stream().anyMatch(element -> element instanceof Plan.Cell cell && side.contains(cell.b()));
    }

    private static List<String> passing(CheckContext context, int device, Set<Integer> side) {
        List<String> found = new ArrayList<>();
        for (int e = 0; e < context.plan().elements().size(); e++) {
            Plan.Element element = context.plan().elements().get(e);
            int minus = element instanceof Plan.Regulated source ? source.b() : ReturnWays.returnTerminal(element);
            boolean charges = element instanceof Plan.Converter converter && side.contains(converter.outB());
            if (element.device() != device && (minus >= 0 && side.contains(minus) || charges)
                    && !found.contains(context.names().element(e))) {
                found.add(context.names().element(e));
            }
        }
        return found;
    }

    private Finding finding(CheckContext context, int e, List<String> passing) {
        List<String> shown = passing.stream().map(context.names()::shown).toList();
        String who = shown.size() <= 3 ? String.join(", ", shown) : String.join(", ", shown.subList(0, 3)) + " and "
                + (shown.size() - 3) + " more";
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(e),
                "Shunt " + context.names().shown(context.names().element(e)) + " does not see " + who)
                .figures(Quantity.of(passing.size(), "1"), Quantity.of(0, "1"))
                .because("They return on the battery's side of the shunt, so the charge it counts is wrong.");
        passing.forEach(id -> builder.causedBy(id, "returns before the shunt", null));
        return builder.mend(Mend.inWords("Move their returns to the other side of the shunt.")).build();
    }

    private Finding around(CheckContext context, Wiring wiring, int e, Set<Integer> side, int[] ends) {
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(e),
                "Shunt " + context.names().shown(context.names().element(e)) + " is bridged by another way")
                .because("Current takes the other way too, through a conductor or the structure, and is not measured.");
        List<Integer> around = loop(context, wiring, e, side, ends);
        List<Integer> elsewhere = around.stream().filter(c -> !endsAt(context.plan().conductors().get(c), ends)).toList();
        (elsewhere.isEmpty() ? around : elsewhere)
                .forEach(c -> builder.causedBy(context.names().conductor(c), "leads around the shunt", null));
        return builder.mend(Mend.inWords("Connect only the battery on one side of the shunt and everything else on the other."))
                .build();
    }

    /** Conductors without any one of which nothing leads around the shunt. */
    private static List<Integer> loop(CheckContext context, Wiring wiring, int e, Set<Integer> side, int[] ends) {
        List<Integer> found = new ArrayList<>();
        for (int c = 0; c < context.plan().conductors().size(); c++) {
            int conductor = c;
            if (side.contains(context.plan().conductors().get(c).a()) && !wiring.reach(ends[0], step -> !step.through(e)
                    && !(step.via() == Wiring.Via.CONDUCTOR && step.index() == conductor)).contains(ends[1])) {
                found.add(c);
            }
        }
        return found;
    }

    private static boolean endsAt(Plan.Conductor core, int[] ends) {
        return core.a() == ends[0] || core.a() == ends[1] || core.b() == ends[0] || core.b() == ends[1];
    }
}
