// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Finding;

/** Findings by the element they are about, and by the elements elsewhere that cause them. */
final class FindingIndex {
    private final TreeMap<String, List<Finding>> own = new TreeMap<>();
    private final Map<String, List<Finding>> caused = new LinkedHashMap<>();

    FindingIndex(List<Finding> findings) {
        for (Finding finding : findings) {
            own.computeIfAbsent(finding.element(), id -> new ArrayList<>()).add(finding);
            for (Cause cause : finding.causes()) {
                if (finding.accepted() == null && !cause.element().equals(finding.element())) {
                    List<Finding> list = caused.computeIfAbsent(cause.element(), id -> new ArrayList<>());
                    if (!list.contains(finding)) {
                        list.add(finding);
                    }
                }
            }
        }
    }

    /** Findings about an element itself. */
    List<Finding> of(String element) {
        return List.copyOf(own.getOrDefault(element, List.of()));
    }

    /** Findings about an element or something in it: its ways, terminals, cores. */
    List<Finding> within(String element) {
        List<Finding> found = new ArrayList<>(own.getOrDefault(element, List.of()));
        for (char next : new char[] {'#', '.', '/'}) {
            own.subMap(element + next, element + (char) (next + 1)).values().forEach(found::addAll);
        }
        return found;
    }

    /** Findings elsewhere that an element causes. */
    List<Finding> causedBy(String element) {
        return List.copyOf(caused.getOrDefault(element, List.of()));
    }

    /** The mark of findings; null for none. */
    static FindingMark mark(List<Finding> findings) {
        if (findings.isEmpty()) {
            return null;
        }
        List<Finding> sorted = new ArrayList<>(findings);
        sorted.sort(Comparator.comparing(FindingIndex::badge));
        Badge worst = badge(sorted.get(0));
        return new FindingMark(worst, (int) sorted.stream().filter(finding -> badge(finding) == worst).count(), sorted);
    }

    /** The mark of a cause; null for none or where only notes are caused. */
    static FindingMark causeMark(List<Finding> findings) {
        FindingMark mark = mark(findings);
        return mark == null || mark.badge() == Badge.NOTE ? null
                : new FindingMark(mark.badge() == Badge.ERROR ? Badge.CAUSE_ERROR : Badge.CAUSE_WARNING, mark.count(),
                        mark.findings());
    }

    private static Badge badge(Finding finding) {
        if (finding.accepted() != null) {
            return Badge.ACCEPTED;
        }
        return switch (finding.severity()) {
            case ERROR -> Badge.ERROR;
            case WARNING -> Badge.WARNING;
            case NOTE -> Badge.NOTE;
        };
    }
}
