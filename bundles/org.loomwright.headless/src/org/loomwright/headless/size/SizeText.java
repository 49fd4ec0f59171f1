// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.engine.sizing.SizingResult.SizedCable;
import org.loomwright.engine.sizing.SizingResult.Totals;
import org.loomwright.export.table.Table;
import org.loomwright.export.table.TextTable;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.check.CheckedVehicle;
import org.loomwright.headless.check.ExplainText;

/** Writes a sizing for people: totals and proof, troubles, then the tables. */
final class SizeText {
    private final PrintWriter out;
    private final Style style;

    SizeText(PrintWriter out, Style style) {
        this.out = out;
        this.style = style;
    }

    /** Writes one arrangement. */
    void write(SizedVehicle sized) {
        SizingResult result = sized.result();
        out.println(style.strong(sized.plan().vehicle()) + (sized.label().isEmpty() ? "" : "  " + sized.label())
                + style.faint("  " + sized.file()));
        out.println("  " + (sized.plan().arrangement().isEmpty() ? "no arrangement"
                : "arrangement " + style.strong(sized.plan().arrangement()) + (sized.adopted() ? " (adopted)" : ""))
                + ", practice " + sized.plan().practice().name() + ", objective " + result.objective().word());
        if (result.cables().isEmpty() && result.protectors().isEmpty()) {
            out.println();
            WrappedText.write(out, "  ", "", "Nothing is open: every section and rating was chosen by a person or belongs to "
                    + "the base vehicle. --all opens what a person chose.");
            out.println();
            return;
        }
        out.println("  " + result.cables().size() + " cables, " + changed(result) + " of them with another section; "
                + result.protectors().size() + " fuses and breakers, "
                + result.protectors().stream().filter(SizingResult.SizedProtector::changed).count() + " of them with another part");
        totals(result);
        result.troubles().forEach(trouble -> trouble(trouble, sized));
        SizeTables tables = new SizeTables(result, sized.plan());
        table(tables.cables(), "largest current in any case; fuse before it; drop over all its cores");
        table(tables.protectors(), "that stand before no cable above; largest current in any case");
        table(tables.limits(), "copper saved if a load's limit were loosened");
        out.println();
    }

    private static long changed(SizingResult result) {
        return result.cables().stream().filter(SizedCable::changed).count();
    }

    private void totals(SizingResult result) {
        out.println();
        line("before", result.before());
        line("after", result.after());
        if (result.alone() != null) {
            line("each alone", result.alone());
        }
        String unit = "1".equals(result.objective().unit()) || "money".equals(result.objective().unit()) ? ""
                : " " + result.objective().unit();
        WrappedText.write(out, "  ", "proof       ", result.objective().word() + " " + Figures.three(result.cost())
                + unit + "; at the design's currents no choice of the sections and ratings on offer has less than "
                + Figures.three(result.bound()) + unit + ": gap " + Figures.three(100 * result.gap()) + " %, after "
                + result.rounds() + (result.rounds() == 1 ? " round" : " rounds") + " with the check");
        if (result.alone() != null) {
            double kg = result.alone().copperKg() - result.after().copperKg();
            double money = result.alone().money() - result.after().money();
            WrappedText.write(out, "  ", "saved       ", Figures.three(kg) + " kg of copper"
                    + (Double.isNaN(money) ? "" : " and " + Figures.three(money) + " in price")
                    + " against sizing each cable on its own");
        }
    }

    private void line(String word, Totals totals) {
        out.println("  " + word + " ".repeat(12 - word.length()) + (Double.isNaN(totals.copperKg()) ? "copper not known"
                : String.format(Locale.ROOT, "%.2f kg copper", totals.copperKg()))
                + (Double.isNaN(totals.money()) ? ", price not known" : String.format(Locale.ROOT, ", price %.2f", totals.money()))
                + ", " + totals.sections() + (totals.sections() == 1 ? " section" : " different sections"));
    }

    private void trouble(Finding trouble, SizedVehicle sized) {
        out.println();
        out.println("  " + style.severity(trouble.severity(), "trouble ") + "  "
                + style.strong(sized.designations().shown(trouble.element())) + style.faint("  " + trouble.rule()
                        + (trouble.caseName() == null ? "" : ", case " + trouble.caseName())));
        WrappedText.write(out, "    ", "", trouble.title());
        if (trouble.is() != null && trouble.wanted() != null) {
            WrappedText.write(out, "    ", "figures  ", trouble.is() + ", limit " + trouble.wanted());
        }
        trouble.why().forEach(why -> WrappedText.write(out, "    ", "why      ", why));
        trouble.mends().forEach(mend -> WrappedText.write(out, "    ", "mend     ", mend.text()));
    }

    private void table(Table table, String legend) {
        if (!table.rows().isEmpty()) {
            out.println();
            out.println("  " + style.strong(table.title()) + style.faint("  " + legend));
            new TextTable(table, "    ").all().forEach(out::println);
        }
    }

    /** Writes how the figures came about; all, or those of one element given by its id. */
    void explain(SizedVehicle sized, String element) {
        StudyResult figures = new StudyResult("size", sized.plan().vehicle(), sized.plan().arrangement(), List.of(), List.of(),
                asked -> new SizeFigures(sized).of(element).toList());
        new ExplainText(out, style, true).write(new CheckedVehicle(sized.file(), sized.label(), sized.adopted(), sized.plan(),
                figures), element.isEmpty() ? SizeFigures.WHOLE : element);
    }
}
