// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.EmptyWay;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * Ways in which nothing is fitted, though a cable leads away from them: filled where the libraries have something that fits, so
 * that sizing chooses it; told where they have nothing.
 */
final class FilledWays {
    private final Plan bare;
    private final List<EmptyWay> ways;

    FilledWays(AssemblyResult assembled) {
        bare = assembled.plan();
        ways = assembled.emptyWays();
    }

    /** The plan with a protector to be chosen in every way that something fits. */
    Plan plan() {
        return with(bare, ways.stream().filter(way -> !way.fitting().options().isEmpty()).map(EmptyWay::fitting).toList());
    }

    /** The result, with a trouble more for each way that carries a current and that nothing on offer fits. */
    SizingResult told(SizingResult result, Monitor monitor) {
        List<EmptyWay> unmet = ways.stream().filter(way -> way.fitting().options().isEmpty()).toList();
        if (unmet.isEmpty()) {
            return result;
        }
        Plan closed = with(result.plan(), unmet.stream().map(EmptyWay::fitting).toList());
        List<SolvedCase> cases = CaseSolver.solveAll(closed, monitor);
        List<Finding> troubles = new ArrayList<>(result.troubles());
        for (int w = 0; w < unmet.size(); w++) {
            int element = result.plan().elements().size() + w;
            SolvedCase most = null;
            for (SolvedCase each : cases) {
                most = most == null || amps(each, element) > amps(most, element) ? each : most;
            }
            if (most != null && amps(most, element) > 0) {
                troubles.add(trouble(unmet.get(w), most, amps(most, element)));
            }
        }
        return result.withTroubles(troubles);
    }

    private static double amps(SolvedCase solved, int element) {
        return StrictMath.abs(solved.running().elementA(element));
    }

    private Finding trouble(EmptyWay way, SolvedCase most, double amps) {
        Quantity wanted = Quantity.of(amps, "A");
        String shown = new Designations(bare.arrangement()).shown(way.id());
        return Finding.of("no-supply", Severity.ERROR, way.id(), shown + " has no fuse, and the libraries have none "
                + (way.takes().isEmpty() ? "for it: its part states no form" : "of the form " + way.takes())
                + "; its cable needs one for " + wanted)
                .inCase(most.state().name()).figures(Quantity.of(0, "A"), wanted)
                .because("Without it nothing behind " + shown + " is fed.")
                .mend(Mend.inWords("Add a fuse or breaker that fits the way to a library, or lead the cable to another way."))
                .build();
    }

    private static Plan with(Plan of, List<Plan.Protector> more) {
        if (more.isEmpty()) {
            return of;
        }
        List<Plan.Element> elements = new ArrayList<>(of.elements());
        elements.addAll(more);
        return SizedPlan.with(of, elements, of.cables(), of.conductors());
    }
}
