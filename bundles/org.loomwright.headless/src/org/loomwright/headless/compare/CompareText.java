// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import java.io.PrintWriter;
import java.util.List;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.compare.ArrangementFigures;
import org.loomwright.engine.compare.FigureDerivations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.export.table.Table;
import org.loomwright.export.table.TextTable;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.check.CheckedVehicle;
import org.loomwright.headless.check.ExplainText;

/** Writes a comparison for people: what differs in sentences, then the tables. */
final class CompareText {
    private static final int LISTED = 5;
    private final PrintWriter out;
    private final Style style;

    CompareText(PrintWriter out, Style style) {
        this.out = out;
        this.style = style;
    }

    /**
     * Writes the comparison.
     *
     * @param state how the arrangements were taken, in words
     */
    void write(List<StudiedArrangement> studied, String state) {
        ArrangementComparison comparison = new ArrangementComparison(studied.stream().map(StudiedArrangement::figures).toList());
        List<String> names = studied.stream().map(StudiedArrangement::name).toList();
        head(studied, state);
        CompareSentences sentences = new CompareSentences(comparison, names);
        for (int i = 1; i < names.size(); i++) {
            out.println();
            sentences.about(i).forEach(sentence -> WrappedText.write(out, "  ", "", sentence));
        }
        CompareTables tables = new CompareTables(comparison, names);
        table(tables.copper(), "kg; feeders are shared by several loads, a branch serves one");
        table(tables.sections(), "m of conductor; a cable with two cores counts twice");
        table(tables.figures(), "existing wiring and what all arrangements share left out");
        unknown(studied);
        extremes(studied);
        findings(studied);
        table(tables.voltages(), "everything included, in the case where it is lowest; loads that are on");
        out.println();
    }

    private void head(List<StudiedArrangement> studied, String state) {
        CheckedVehicle first = studied.get(0).checked();
        out.println(style.strong(first.plan().vehicle()) + (first.label().isEmpty() ? "" : "  " + first.label())
                + style.faint("  " + first.file()));
        out.println("  practice " + first.plan().practice().name() + ", " + first.plan().cases().size() + " cases, " + state);
        int width = studied.stream().mapToInt(each -> each.name().length()).max().orElse(0);
        for (StudiedArrangement each : studied) {
            out.println("  " + style.strong(each.name()) + " ".repeat(width - each.name().length() + 2) + each.label()
                    + (each.checked().adopted() ? " (adopted)" : ""));
        }
    }

    private void unknown(List<StudiedArrangement> studied) {
        for (StudiedArrangement each : studied) {
            ArrangementFigures figures = each.figures();
            StringBuilder missing = new StringBuilder();
            missing(missing, figures.totalPrice().unknown(), "a price");
            missing(missing, figures.massKg().unknown(), "a mass");
            missing(missing, figures.areaCm2().unknown(), "a size");
            if (missing.length() > 0) {
                WrappedText.write(out, "    ", "", "Left out in " + each.name() + ": " + missing + ".");
            }
        }
    }

    private static void missing(StringBuilder text, int number, String what) {
        if (number > 0) {
            text.append(text.length() > 0 ? ", " : "").append(number).append(number == 1 ? " part without " : " parts without ")
                    .append(what);
        }
    }

    private void extremes(List<StudiedArrangement> studied) {
        out.println();
        for (StudiedArrangement each : studied) {
            ArrangementFigures figures = each.figures();
            if (figures.weakest() != null) {
                WrappedText.write(out, "    ", "", each.name() + ": lowest voltage "
                        + CompareTables.rounded(figures.weakest().volts(), "V") + " V at "
                        + each.checked().designations().shown(figures.weakest().load()) + " in " + figures.weakest().caseName()
                        + (figures.hottest() == null ? "." : "; hottest conductor "
                                + each.checked().designations().shown(figures.hottest().conductor()) + " with "
                                + CompareTables.rounded(figures.hottest().hotC(), "degC") + " degC of "
                                + CompareTables.rounded(figures.hottest().maxC(), "degC") + " in "
                                + figures.hottest().caseName() + "."));
            }
        }
    }

    private void findings(List<StudiedArrangement> studied) {
        for (StudiedArrangement each : studied) {
            List<Finding> standing = each.checked().standing(Severity.WARNING);
            standing.stream().limit(LISTED).forEach(finding -> WrappedText.write(out, "    ", "", each.name() + ": "
                    + finding.severity().slug() + " " + finding.rule() + ", " + finding.title()));
            if (standing.size() > LISTED) {
                WrappedText.write(out, "    ", "", each.name() + ": " + (standing.size() - LISTED)
                        + " more errors and warnings; 'check' tells them.");
            }
        }
    }

    private void table(Table table, String legend) {
        if (!table.rows().isEmpty()) {
            out.println();
            out.println("  " + style.strong(table.title()) + style.faint("  " + legend));
            new TextTable(table, "    ").all().forEach(out::println);
        }
    }

    /** Writes how the sums of each arrangement came about. */
    void explain(List<StudiedArrangement> studied) {
        for (StudiedArrangement each : studied) {
            StudyResult sums = new StudyResult("compare", each.figures().vehicle(), each.figures().arrangement(), List.of(),
                    List.of(), element -> List.of(new ElementFigures(element, null, FigureDerivations.of(each.figures()))));
            CheckedVehicle checked = each.checked();
            new ExplainText(out, style, true).write(new CheckedVehicle(checked.file(), checked.label(), checked.adopted(),
                    checked.plan(), sums), "sums");
        }
    }
}
