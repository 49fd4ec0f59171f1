// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/**
 * The findings of one sheet: a badge for each element that has some, and their list, the worst first. A finding on something
 * within a device is shown at the device.
 *
 * @param badges worst badge and number of findings by id of the element drawn
 * @param lines  findings for the list
 */
record PlanFindings(Map<String, Marked> badges, List<PlanFoot.Line> lines) {
    /** No findings. */
    static final PlanFindings NONE = new PlanFindings(Map.of(), List.of());

    PlanFindings {
        badges = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(badges));
        lines = List.copyOf(lines);
    }

    /** A badge at an element; count is the number of findings it stands for, 1 for an element that causes some elsewhere. */
    record Marked(Badge badge, int count) {
        Marked with(Badge other, boolean counts) {
            int sum = count + (counts ? 1 : 0);
            return other.ordinal() < badge.ordinal() ? new Marked(other, counts ? sum : count) : new Marked(badge, sum);
        }
    }

    /**
     * Findings that hold in a case, or in any when no case is chosen.
     *
     * @param drawn ids of the elements that the sheet shows
     */
    static PlanFindings of(List<Finding> findings, String caseName, String arrangement, Set<String> drawn) {
        Designations shown = new Designations(arrangement);
        Map<String, Marked> badges = new LinkedHashMap<>();
        List<PlanFoot.Line> lines = new ArrayList<>();
        List<Finding> sorted = findings.stream()
                .filter(finding -> caseName == null || finding.caseName() == null || caseName.equals(finding.caseName()))
                .sorted(Comparator.comparing((Finding finding) -> badge(finding).ordinal())).toList();
        for (Finding finding : sorted) {
            String at = drawnId(finding.element(), drawn);
            if (at == null) {
                continue;
            }
            badges.merge(at, new Marked(badge(finding), 1), (known, more) -> known.with(more.badge(), true));
            lines.add(new PlanFoot.Line(finding.element(), badge(finding), head(shown.shown(finding.element()),
                    finding.title()), detail(finding)));
        }
        for (Finding finding : sorted) {
            if (finding.accepted() == null && finding.severity() != Severity.NOTE) {
                causes(finding, drawn, badges);
            }
        }
        return new PlanFindings(badges, lines);
    }

    private static String head(String element, String title) {
        return title.contains(element) ? title : element + ": " + title;
    }

    private static void causes(Finding finding, Set<String> drawn, Map<String, Marked> badges) {
        Badge badge = finding.severity() == Severity.ERROR ? Badge.CAUSE_ERROR : Badge.CAUSE_WARNING;
        for (Cause cause : finding.causes()) {
            String at = drawnId(cause.element(), drawn);
            if (at != null) {
                badges.merge(at, new Marked(badge, 1), (known, more) -> known.with(more.badge(), false));
            }
        }
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

    private static String detail(Finding finding) {
        StringBuilder words = new StringBuilder(finding.rule());
        if (finding.is() != null) {
            words.append(", ").append(finding.is());
        }
        if (finding.wanted() != null) {
            words.append(", limit ").append(finding.wanted());
        }
        if (finding.caseName() != null) {
            words.append(", case ").append(finding.caseName());
        }
        return words.toString();
    }

    /** The id itself, or that of the drawn element it belongs to; null when the sheet does not show it. */
    private static String drawnId(String id, Set<String> drawn) {
        String at = id;
        while (!drawn.contains(at)) {
            int cut = StrictMath.max(at.lastIndexOf('#'), StrictMath.max(at.lastIndexOf('/'), at.lastIndexOf('.')));
            if (cut <= 0) {
                return null;
            }
            at = at.substring(0, cut);
        }
        return at;
    }
}
