// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/**
 * A body into which loads or sources return is joined with the minus of a battery: by straps, seams, and the cable between an
 * earth point and the battery. Hinges, bearings and mountings do not count, they are no declared path.
 */
final class BodyUnbondedRule implements Rule {
    @Override
    public String slug() {
        return "body-unbonded";
    }

    @Override
    public String says() {
        return "A body that carries return current is bonded to the minus of the battery.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Plan plan = context.plan();
        Wiring wiring = Wiring.of(plan);
        for (int b = 0; b < plan.bodies().size(); b++) {
            Set<Integer> reached = wiring.reach(wiring.body(b), step -> true);
            boolean home = plan.elements().stream().anyMatch(element -> element instanceof Plan.Cell cell
                    && reached.contains(cell.b())
                    || element instanceof Plan.Converter converter && converter.isolated() && reached.contains(converter.outB()));
            if (!home) {
                Set<String> returning = returning(context, wiring, b);
                if (!returning.isEmpty()) {
                    findings.add(finding(context, plan.bodies().get(b), returning));
                }
            }
        }
        return findings;
    }

    /** What returns into a body by its own earth points and cases. */
    private static Set<String> returning(CheckContext context, Wiring wiring, int body) {
        Plan plan = context.plan();
        Set<Integer> joined = new LinkedHashSet<>();
        for (Wiring.Step step : wiring.from(wiring.body(body))) {
            if (wiring.isTerminal(step.to())) {
                joined.addAll(wiring.reach(step.to(), next -> next.via() != Wiring.Via.STRUCTURE));
            }
        }
        Set<String> found = new LinkedHashSet<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            Plan.Element element = plan.elements().get(e);
            int minus = element instanceof Plan.Regulated source ? source.b() : ReturnWays.returnTerminal(element);
            if (minus >= 0 && joined.contains(minus)) {
                found.add(context.names().element(e));
            }
        }
        return found;
    }

    private Finding finding(CheckContext context, Plan.Body body, Set<String> returning) {
        List<String> shown = returning.stream().map(context.names()::shown).toList();
        String who = shown.size() <= 3 ? String.join(", ", shown) : String.join(", ", shown.subList(0, 3)) + " and "
                + (shown.size() - 3) + " more";
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, body.id(), "Body " + body.id() + " takes the return of " + who
                + " and is not bonded to the battery's minus")
                .because("No strap, seam or cable that is declared leads from it to the minus of a battery; the current would "
                + "find its way "
                        + "through bearings, cables and linkages.");
        returning.forEach(id -> builder.causedBy(id, "returns into it", null));
        return builder.mend(Mend.inWords("Add a strap from " + body.id()
                + " to the body at which the battery's minus cable ends."))
                .build();
    }
}
