// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.flow.OperatingPoint.Status;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * Every case has an operating point (an error where it has none), and still has one with all loads raised together by the
 * practice's factor (a warning). A load of constant power draws more the lower its voltage; beyond half the open-circuit
 * voltage of what feeds it no more power comes through (maximum power theorem), and the voltage collapses.
 */
final class NoOperatingPointRule implements Rule {
    private static final String SCALE = "no-operating-point.warning-scale";

    @Override
    public String slug() {
        return "no-operating-point";
    }

    @Override
    public String says() {
        return "Every case has an operating point, with room for larger loads.";
    }

    @Override
    public List<String> limits() {
        return List.of(SCALE);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Practice.Limit scale = context.practice().limit(SCALE);
        for (SolvedCase solved : context.cases()) {
            OperatingPoint point = solved.running().point();
            if (point.status() == Status.COLLAPSED) {
                findings.add(finding(context, solved, point, 1, Severity.ERROR, scale));
            } else if (point.status() == Status.SOLVED && scale.value() > 1 && !solved.state().demands().isEmpty()) {
                OperatingPoint raised = FlowSolver.solve(point.network(), FlowOptions.standard().withLoadScale(scale.value()),
                        new BasicMonitor());
                if (raised.status() == Status.COLLAPSED) {
                    findings.add(finding(context, solved, raised, scale.value(), Severity.WARNING, scale));
                }
            }
        }
        return findings;
    }

    private Finding finding(CheckContext context, SolvedCase solved, OperatingPoint point, double wanted, Severity severity,
            Practice.Limit scale) {
        NetworkIndex index = NetworkIndex.of(context.plan(), solved.running().at());
        List<String> weak = point.trouble().stream().map(item -> TroubleNames.of(context, index, item)).distinct().toList();
        String element = weak.isEmpty() ? TroubleNames.vehicle(context) : weak.get(0);
        Quantity is = Quantity.of(point.loadScale(), "1");
        String title = severity == Severity.ERROR
                ? context.names().shown(element) + " collapses: the supply bears " + is + " times the loads of this case"
                : context.names().shown(element) + " collapses once all loads are " + is
                        + " times as large; room is wanted up to " + Quantity.of(wanted, "1");
        FindingBuilder builder = Finding.of(slug(), severity, element, title).inCase(solved.state().name())
                .figures(is, Quantity.of(wanted, "1"))
                .because("Loads of constant power draw more current the lower their voltage; it is the weakest of them.");
        TroubleNames.supplyCauses(context, solved, index, point, builder);
        for (String other : weak.subList(weak.isEmpty() ? 0 : 1, weak.size())) {
            builder.causedBy(other, "collapses with it", null);
        }
        return builder.mend(Mend.inWords("Shorten or thicken the way to it, feed it from a nearer point, or take "
                + "loads off in this case."))
                .derived(new Derivation("largest common factor on the loads", is, "largest factor with an operating point",
                        List.of(new Derivation.Input("wanted", Quantity.of(wanted, "1"),
                                severity == Severity.ERROR ? "the loads of the case" : scale.name() + ", " + scale.source())),
                        "network theory: of two solutions the one with the higher voltage"))
                .build();
    }
}
