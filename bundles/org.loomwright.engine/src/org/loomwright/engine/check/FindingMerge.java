// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Quantity;

/**
 * Makes one finding of the same thing found in several cases: the same rule, element and main cause. The worst is kept and
 * names the other cases.
 */
final class FindingMerge {
    private FindingMerge() {
    }

    /** The findings of one rule, each thing once, in the order of its first appearance. */
    static List<Finding> acrossCases(List<Finding> findings) {
        return merged(findings, finding -> finding.causes().isEmpty() ? "" : finding.causes().get(0).element());
    }

    /**
     * The same for a rule that says one thing of an element, whatever causes it from case to case; findings with figures of
     * different units stay apart.
     */
    static List<Finding> perElement(List<Finding> findings) {
        return merged(findings, finding -> finding.is() == null ? "" : finding.is().unit());
    }

    private static List<Finding> merged(List<Finding> findings, Function<Finding, String> distinct) {
        Map<List<String>, List<Finding>> same = new LinkedHashMap<>();
        for (Finding finding : findings) {
            same.computeIfAbsent(List.of(finding.rule(), finding.element(), distinct.apply(finding)), key -> new ArrayList<>())
                    .add(finding);
        }
        return same.values().stream().flatMap(group -> merged(group).stream()).toList();
    }

    private static List<Finding> merged(List<Finding> group) {
        if (group.size() == 1 || group.stream().anyMatch(finding -> finding.caseName() == null)) {
            return group;
        }
        Finding worst = group.get(0);
        for (Finding finding : group) {
            if (worse(finding, worst)) {
                worst = finding;
            }
        }
        List<String> others = new ArrayList<>();
        for (Finding finding : group) {
            if (!finding.caseName().equals(worst.caseName()) && !others.contains(finding.caseName())) {
                others.add(finding.caseName());
            }
        }
        return List.of(others.isEmpty() ? worst : withOthers(worst, others));
    }

    private static boolean worse(Finding a, Finding b) {
        int severity = a.severity().compareTo(b.severity());
        return severity != 0 ? severity < 0 : distance(a) > distance(b);
    }

    /** How far the figure lies from its limit, as a share of the limit where that is not zero. */
    private static double distance(Finding finding) {
        Quantity is = finding.is();
        Quantity wanted = finding.wanted();
        if (is == null || wanted == null) {
            return 0;
        }
        double off = StrictMath.abs(is.value() - wanted.value());
        return wanted.value() == 0 ? off : off / StrictMath.abs(wanted.value());
    }

    private static Finding withOthers(Finding worst, List<String> others) {
        List<String> why = new ArrayList<>(worst.why());
        why.add(others.size() == 1 ? "Also in one other case: " + others.get(0) + "."
                : "Also in " + others.size() + " other cases: " + String.join(", ", others) + ".");
        return new Finding(worst.rule(), worst.severity(), worst.element(), worst.caseName(), worst.title(), worst.is(),
                worst.wanted(), why, worst.causes(), worst.mends(), worst.derivations(), worst.accepted());
    }
}
