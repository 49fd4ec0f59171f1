// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import java.io.PrintWriter;
import java.util.List;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.headless.Style;

/** Writes how the figures of one element came about. */
public final class ExplainText {
    private final PrintWriter out;
    private final Style style;

    /** A report on {@code out}. */
    public ExplainText(PrintWriter out, Style style) {
        this.out = out;
        this.style = style;
    }

    /** Writes the figures of one vehicle's element. */
    public void write(CheckedVehicle checked, List<ElementFigures> explained) {
        out.println(style.strong(checked.plan().vehicle() + " " + checked.plan().arrangement()));
        for (ElementFigures figures : explained) {
            out.println();
            out.println("  " + style.strong(checked.designations().shown(figures.element()))
                    + (figures.caseName() == null ? "" : style.faint("  case " + figures.caseName())));
            for (Derivation derivation : figures.derivations()) {
                write(derivation);
            }
        }
        out.println();
    }

    private void write(Derivation derivation) {
        out.println("    " + derivation.figure() + " = " + style.strong(derivation.value().toString()));
        out.println("      = " + derivation.formula() + style.faint("   [" + derivation.source() + "]"));
        int name = derivation.inputs().stream().mapToInt(input -> input.name().length()).max().orElse(0);
        int value = derivation.inputs().stream().mapToInt(input -> input.value().toString().length()).max().orElse(0);
        for (Derivation.Input input : derivation.inputs()) {
            String figure = input.value().toString();
            out.println("        " + input.name() + " ".repeat(name - input.name().length() + 2)
                    + figure + " ".repeat(value - figure.length() + 2) + style.faint(input.origin()));
        }
    }
}
