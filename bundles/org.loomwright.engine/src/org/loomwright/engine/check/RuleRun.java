// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.result.Finding;

/** Runs the rules over solved cases and settles what their findings count for: severity, acceptance, order. */
final class RuleRun {
    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::severity).thenComparing(Finding::rule)
            .thenComparing(Finding::element)
            .thenComparing(finding -> finding.caseName() == null ? "" : finding.caseName());

    private final RuleCatalogue catalogue;

    RuleRun(RuleCatalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * What the enabled rules find: one finding for the same thing in several cases, the practice's severities and the
     * vehicle's waivers applied, sorted by severity, rule, element and case.
     *
     * @throws IllegalStateException when a rule fails, naming the rule
     */
    List<Finding> findings(CheckContext context, Monitor monitor) {
        List<Rule> enabled = catalogue.rules().stream().filter(rule -> context.practice().enabled(rule.slug())).toList();
        List<List<Finding>> byRule = new ArrayList<>(Collections.nCopies(enabled.size(), null));
        RuntimeException[] failed = new RuntimeException[enabled.size()];
        // a rule takes nothing from another, so the findings do not depend on which is worked on first
        IntStream.range(0, enabled.size()).parallel().forEach(i -> {
            try {
                byRule.set(i, settled(enabled.get(i), context, monitor));
            } catch (RuntimeException problem) {
                failed[i] = problem;
            }
        });
        List<Finding> found = new ArrayList<>();
        for (int i = 0; i < failed.length; i++) {
            if (failed[i] != null) {
                throw failed[i];
            }
            found.addAll(byRule.get(i));
        }
        found.sort(ORDER);
        return List.copyOf(found);
    }

    private static List<Finding> settled(Rule rule, CheckContext context, Monitor monitor) {
        Cancelled.check(monitor);
        List<Finding> settled = FindingMerge.acrossCases(run(rule, context)).stream()
                .map(finding -> accepted(severity(finding, context.practice()), context.plan())).toList();
        synchronized (monitor) {
            monitor.worked(1);
        }
        return settled;
    }

    private static List<Finding> run(Rule rule, CheckContext context) {
        try {
            return rule.check(context);
        } catch (Practice.MissingLimitException | CancellationException forTheCaller) {
            throw forTheCaller;
        } catch (RuntimeException fault) {
            throw new IllegalStateException("rule " + rule.slug() + " failed on vehicle " + context.plan().vehicle() + ": "
                    + fault, fault);
        }
    }

    private static Finding severity(Finding finding, Practice practice) {
        Practice.RuleSetting setting = practice.rules().get(finding.rule());
        return setting == null || setting.severity() == null ? finding : finding.withSeverity(setting.severity());
    }

    private static Finding accepted(Finding finding, Plan plan) {
        for (Plan.Waiver waiver : plan.waivers()) {
            if (waiver.rule().equals(finding.rule()) && waiver.element().equals(finding.element())) {
                return finding.acceptedWith(reason(waiver));
            }
        }
        return finding;
    }

    private static String reason(Plan.Waiver waiver) {
        String by = waiver.who() == null ? "" : waiver.who();
        String on = waiver.when() == null ? "" : waiver.when();
        String signature = by.isEmpty() || on.isEmpty() ? by + on : by + ", " + on;
        String reason = waiver.reason() == null || waiver.reason().isEmpty() ? "no reason given" : waiver.reason();
        return signature.isEmpty() ? reason : reason + " (" + signature + ")";
    }
}
