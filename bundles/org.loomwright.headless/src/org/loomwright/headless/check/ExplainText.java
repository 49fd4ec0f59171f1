// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
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
     * @param everyCase write all cases given; otherwise only the one with the largest last figure
     */
    public ExplainText(PrintWriter out, Style style, boolean everyCase) {
        this.out = out;
        this.style = style;
        this.everyCase = everyCase;
    }

    /** Writes the figures of one vehicle's element. */
    public void write(CheckedVehicle checked, List<ElementFigures> explained) {
        sources.clear();
        out.println(style.strong(checked.plan().vehicle() + " " + checked.plan().arrangement()));
        List<ElementFigures> ofCases = explained.stream().filter(figures -> figures.caseName() != null).toList();
        ElementFigures telling = everyCase ? null : mostTelling(ofCases);
        for (ElementFigures figures : explained) {
            if (figures.caseName() == null || everyCase || figures == telling) {
                out.println();
                out.println("  " + style.strong(checked.designations().shown(figures.element()))
                        + (figures.caseName() == null ? "  in every case" : style.faint("  case " + figures.caseName())));
                figures.derivations().forEach(this::write);
            }
        }
        if (telling != null && ofCases.size() > 1) {
            out.println();
            WrappedText.write(out, "  ", "", "Shown is the case with the largest figures; --case NAME shows another of "
                    + String.join(", ", ofCases.stream().map(ElementFigures::caseName).toList()) + ".");
        }
        out.println();
        for (int i = 0; i < sources.size(); i++) {
            WrappedText.write(out, "  ", "[" + (i + 1) + "] ", sources.get(i));
        }
        out.println();
    }

    private static ElementFigures mostTelling(List<ElementFigures> ofCases) {
        ElementFigures most = null;
        for (ElementFigures figures : ofCases) {
            if (most == null || last(figures) > last(most)) {
                most = figures;
            }
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
