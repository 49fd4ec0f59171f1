// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;

/**
 * Writes how the figures of one element came about: those that hold in every case, then those of the cases. Long sources are
 * told once, below, by number.
 */
public final class ExplainText {
    private static final int LONG = 36;
    private final PrintWriter out;
    private final Style style;
    private final boolean everyCase;
    private final List<String> sources = new ArrayList<>();

    /**
     * A report on {@code out}.
     *
     * @param everyCase write all cases given; otherwise only the one with the largest last figure of each element
     */
    public ExplainText(PrintWriter out, Style style, boolean everyCase) {
        this.out = out;
        this.style = style;
        this.everyCase = everyCase;
    }

    /** Writes the figures of one vehicle's element, given by its id. */
    public void write(CheckedVehicle checked, String element) {
        List<ElementFigures> explained = checked.result().explainer().explain(element);
        sources.clear();
        out.println(style.strong((checked.plan().vehicle() + " " + checked.plan().arrangement()).strip()));
        if (explained.isEmpty()) {
            out.println();
            out.println("  No figures come with " + checked.designations().shown(element) + ".");
        }
        List<ElementFigures> ofCases = explained.stream().filter(figures -> figures.caseName() != null).toList();
        Map<String, ElementFigures> telling = mostTelling(ofCases);
        for (ElementFigures figures : explained) {
            if (figures.caseName() == null || everyCase || figures == telling.get(figures.element())) {
                out.println();
                out.println("  " + style.strong(checked.designations().shown(figures.element()))
                        + (figures.caseName() == null ? "  in every case" : style.faint("  case " + figures.caseName())));
                figures.derivations().forEach(this::write);
            }
        }
        List<String> others = ofCases.stream().map(ElementFigures::caseName).distinct()
                .filter(name -> telling.values().stream().noneMatch(shown -> shown.caseName().equals(name))).toList();
        if (!everyCase && !others.isEmpty()) {
            out.println();
            WrappedText.write(out, "  ", "", "Shown is the case with the largest figures; --case NAME shows another of "
                    + String.join(", ", others) + ".");
        }
        if (!sources.isEmpty()) {
            out.println();
        }
        for (int i = 0; i < sources.size(); i++) {
            WrappedText.write(out, "  ", "[" + (i + 1) + "] ", sources.get(i));
        }
        out.println();
    }

    private static Map<String, ElementFigures> mostTelling(List<ElementFigures> ofCases) {
        Map<String, ElementFigures> most = new HashMap<>();
        for (ElementFigures figures : ofCases) {
            most.merge(figures.element(), figures, (before, now) -> last(now) > last(before) ? now : before);
        }
        return most;
    }

    private static double last(ElementFigures figures) {
        List<Derivation> all = figures.derivations();
        double value = all.isEmpty() ? 0 : StrictMath.abs(all.get(all.size() - 1).value().value());
        return Double.isNaN(value) ? -1 : value;
    }

    private void write(Derivation derivation) {
        out.println("    " + derivation.figure() + " = " + style.strong(derivation.value().toString()));
        WrappedText.write(out, "      ", "= ", derivation.formula() + "   " + origin(derivation.source()));
        int name = derivation.inputs().stream().mapToInt(input -> input.name().length()).max().orElse(0);
        int value = derivation.inputs().stream().mapToInt(input -> input.value().toString().length()).max().orElse(0);
        for (Derivation.Input input : derivation.inputs()) {
            String figure = input.value().toString();
            out.println("        " + input.name() + " ".repeat(name - input.name().length() + 2)
                    + figure + " ".repeat(value - figure.length() + 2) + style.faint(origin(input.origin())));
        }
    }

    /** A short origin as it is, a long one as the number of its line below. */
    private String origin(String text) {
        if (text.length() <= LONG) {
            return text;
        }
        int at = sources.indexOf(text);
        if (at < 0) {
            sources.add(text);
            at = sources.size() - 1;
        }
        return "[" + (at + 1) + "]";
    }
}
