// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/** Relays, cut-outs and loads with a lock-out come to rest in every case; a set of states that comes again does so for ever. */
final class StateCyclingRule implements Rule {

    @Override
    public String slug() {
        return "state-cycling";
    }

    @Override
    public String says() {
        return "Relays, cut-outs and lock-outs come to rest in every case.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (SolvedCase solved : context.cases()) {
            if (solved.running().point().status() == OperatingPoint.Status.CYCLING) {
                findings.add(finding(context, solved));
            }
        }
        return findings;
    }

    private Finding finding(CheckContext context, SolvedCase solved) {
        NetworkIndex index = NetworkIndex.of(context.plan(), solved.running().at());
        List<String> changing = solved.running().point().trouble().stream().map(item -> TroubleNames.of(context, index, item))
                .distinct().toList();
        String element = changing.isEmpty() ? TroubleNames.vehicle(context) : changing.get(0);
        List<String> shown = changing.stream().map(context.names()::shown).toList();
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, element,
                shown.size() < 2 ? context.names().shown(element) + " switches itself on and off without end"
                        : String.join(", ", shown) + " switch each other on and off without end")
                .inCase(solved.state().name())
                .because("What switches off raises the voltage that lets it switch on again, or a relay cuts its own coil.")
                .because("Figures of this case are those of one of the states; limits are not judged in it.");
        for (String other : changing.subList(changing.isEmpty() ? 0 : 1, changing.size())) {
            builder.causedBy(other, "changes with it", null);
        }
        return builder.mend(Mend.inWords("Widen the distance between the voltages for off and on beyond the step that "
                + "switching makes, or lower the resistance of the way to it.")).build();
    }
}
