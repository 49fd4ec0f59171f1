// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.result.Finding;

/** Settles what findings count for: rules switched off, the practice's severities, the vehicle's waivers. */
final class FindingSettings {
    private FindingSettings() {
    }

    /** Findings that count, sorted by severity; those of one severity keep their order, which is that of their weight. */
    static List<Finding> settle(List<Finding> findings, Plan plan) {
        List<Finding> settled = new ArrayList<>();
        for (Finding finding : findings) {
            if (plan.practice().enabled(finding.rule())) {
                settled.add(accepted(severity(finding, plan.practice()), plan));
            }
        }
        settled.sort(Comparator.comparing(Finding::severity));
        return List.copyOf(settled);
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
        List<String> signed = new ArrayList<>();
        for (String part : new String[] {waiver.who(), waiver.when()}) {
            if (part != null && !part.isEmpty()) {
                signed.add(part);
            }
        }
        String reason = waiver.reason() == null || waiver.reason().isEmpty() ? "no reason given" : waiver.reason();
        return signed.isEmpty() ? reason : reason + " (" + String.join(", ", signed) + ")";
    }
}
