// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.LoadVerdict;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;
import org.loomwright.export.table.Column;
import org.loomwright.export.table.Table;
import org.loomwright.export.table.TextTable;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;

/** Writes the check of a vehicle for people: a summary, the findings by severity, then a line for each load. */
public final class CheckText {
    private final PrintWriter out;
    private final Style style;
    private final Severity threshold;

    /** A report on {@code out} that leaves out findings below the threshold. */
    public CheckText(PrintWriter out, Style style, Severity threshold) {
        this.out = out;
        this.style = style;
        this.threshold = threshold;
    }

    /** Writes one vehicle. */
    public void write(CheckedVehicle checked) {
        Map<String, String> labels = labels(checked.plan());
        head(checked);
        List<Finding> standing = checked.standing(threshold);
        for (Finding finding : standing) {
            finding(finding, checked.designations(), labels);
        }
        if (standing.isEmpty()) {
            out.println();
            out.println("  Nothing found at or above severity " + threshold.slug() + ".");
        }
        for (Finding finding : checked.accepted(threshold)) {
            finding(finding, checked.designations(), labels);
        }
        loads(checked, labels);
        out.println();
    }

    private void head(CheckedVehicle checked) {
        Plan plan = checked.plan();
        out.println(style.strong(plan.vehicle()) + (checked.label().isEmpty() ? "" : "  " + checked.label())
                + style.faint("  " + checked.file()));
        out.println("  " + (plan.arrangement().isEmpty() ? "no arrangement"
                : "arrangement " + style.strong(plan.arrangement()) + (checked.adopted() ? " (adopted)" : ""))
                + ", practice " + plan.practice().name() + ", " + volts(plan) + ", "
                + (checked.result().verdicts().isEmpty() ? "" : counted(checked.result().verdicts().size(), "load") + ", ")
                + counted(plan.cables().size(), "cable") + ", "
                + counted(plan.cases().size(), "case"));
        int errors = count(checked, Severity.ERROR);
        int warnings = count(checked, Severity.WARNING);
        int notes = count(checked, Severity.NOTE);
        int accepted = (int) checked.result().findings().stream().filter(finding -> finding.accepted() != null).count();
        out.println("  " + counted(errors, "error") + ", " + counted(warnings, "warning")
                + (notes > 0 ? ", " + counted(notes, "note") : "") + (accepted > 0 ? ", " + accepted + " accepted" : ""));
    }

    private static int count(CheckedVehicle checked, Severity severity) {
        return (int) checked.result().findings().stream()
                .filter(finding -> finding.accepted() == null && finding.severity() == severity).count();
    }

    private static String volts(Plan plan) {
        return String.join(" and ", plan.domains().stream()
                .map(domain -> BigDecimal.valueOf(domain.nominalV()).stripTrailingZeros().toPlainString() + " V").distinct()
                .toList());
    }

    private static String counted(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    private void finding(Finding finding, Designations designations, Map<String, String> labels) {
        out.println();
        String word = finding.accepted() != null ? "accepted" : finding.severity().slug();
        String label = labels.getOrDefault(finding.element(), "");
        out.println("  " + style.severity(finding.severity(), pad(word, 8)) + "  "
                + style.strong(designations.shown(finding.element())) + (label.isEmpty() ? "" : " " + label)
                + style.faint("  " + finding.rule()
                        + (finding.caseName() == null ? "" : ", case " + finding.caseName())));
        wrapped("    ", "", finding.title());
        if (finding.is() != null && finding.wanted() != null) {
            wrapped("    ", "figures  ", finding.is() + ", limit " + finding.wanted());
        }
        if (finding.accepted() != null) {
            wrapped("    ", "reason   ", finding.accepted());
        }
        for (String why : finding.why()) {
            wrapped("    ", "why      ", why);
        }
        for (Cause cause : finding.causes()) {
            wrapped("    ", "cause    ", designations.shown(cause.element()) + ": " + cause.what()
                    + (cause.share() == null ? "" : ", " + cause.share()));
        }
        for (Mend mend : finding.mends()) {
            wrapped("    ", "mend     ", mend.text());
        }
    }

    private void loads(CheckedVehicle checked, Map<String, String> labels) {
        if (checked.result().verdicts().isEmpty()) {
            return;
        }
        List<List<Object>> rows = new ArrayList<>();
        for (LoadVerdict verdict : checked.result().verdicts()) {
            rows.add(Arrays.asList(checked.designations().shown(verdict.load()),
                    labels.getOrDefault(verdict.load(), ""), verdict.caseName() == null ? "" : verdict.caseName(),
                    fixed(verdict.voltageV(), 2), current(verdict.currentA()), fixed(verdict.dropV(), 2),
                    fixed(verdict.dropShare() * 100, 1), fixed(verdict.limit() * 100, 0), mostly(verdict)));
        }
        Table table = new Table("Loads", List.of(Column.text("load", "load"), Column.text("label", ""),
                Column.text("case", "case"), Column.number("voltageV", "at load", "V"),
                Column.number("currentA", "current", "A"), Column.number("dropV", "drop", "V"),
                Column.number("dropPercent", "drop", "%"), Column.number("limitPercent", "limit", "%"),
                Column.text("mostly", "mostly in")), rows, null);
        out.println();
        out.println("  " + style.strong("Loads") + style.faint("  each in the case with its largest drop"));
        new TextTable(table, "    ").all().forEach(out::println);
    }

    /** The two largest shares of the drop: what to look at first when it is too much. */
    private static String mostly(LoadVerdict verdict) {
        List<String> parts = verdict.shares().stream().limit(2)
                .map(cause -> StrictMath.round(cause.share().value()) + " % " + cause.what().replaceFirst("^the ", "")).toList();
        return String.join(", ", parts);
    }

    /** Currents of small devices would be lost behind one decimal. */
    private static BigDecimal current(double value) {
        return fixed(value, StrictMath.abs(value) < 1 ? 2 : 1);
    }

    /** A number with fixed decimals; null, shown empty, for one that is not known. */
    private static BigDecimal fixed(double value, int decimals) {
        return Double.isFinite(value) ? BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP) : null;
    }

    /** Labels of devices by the ids of the devices and of what belongs to them. */
    private static Map<String, String> labels(Plan plan) {
        Map<String, String> labels = new HashMap<>();
        for (Plan.Device device : plan.devices()) {
            if (device.label() != null) {
                labels.put(device.id(), device.label());
            }
        }
        for (Plan.Element element : plan.elements()) {
            String label = plan.devices().get(element.device()).label();
            if (label != null) {
                labels.putIfAbsent(element.id(), label);
            }
        }
        return labels;
    }

    private void wrapped(String indent, String lead, String text) {
        WrappedText.write(out, indent, lead, text);
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(StrictMath.max(0, width - text.length()));
    }
}
