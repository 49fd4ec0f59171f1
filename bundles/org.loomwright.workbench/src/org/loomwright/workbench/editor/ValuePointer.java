// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.swt.SWT;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.engine.result.Quantity;
import org.loomwright.workbench.diagram.SceneCanvas;
import org.loomwright.workbench.diagram.Typeface;
import org.loomwright.workbench.view.FigureFocus;
import org.loomwright.workbench.view.FigureQuestion;

/** A click on a figure in a drawing asks how it came about. */
final class ValuePointer {
    private static final Pattern FIGURE = Pattern.compile(
            "([+\u2212-]?[0-9]+(?:\\.[0-9]+)?)\\s*(mV|V|mA|A|kW|W|%|\u00B0C|degC|m\u03A9|mohm|mm\u00B2|mm2|mm|m)(?![A-Za-z\u00B2])");

    private ValuePointer() {
    }

    /** Listens to the clicks on a canvas. */
    static void on(SceneCanvas canvas) {
        // after the tools, which select the element first
        canvas.addListener(SWT.MouseUp, event -> {
            if (event.button == 1) {
                FigureQuestion question = at(canvas, canvas.viewport().toSheet(new Point(event.x, event.y)));
                if (question != null) {
                    FigureFocus.current().ask(question);
                }
            }
        });
    }

    /** The question about the figure at a spot of the sheet; null where there is none. */
    static FigureQuestion at(SceneCanvas canvas, Point spot) {
        TextMeasure type = Typeface.of(canvas.getDisplay()).type();
        for (Group group : canvas.scene().groups()) {
            for (Mark mark : group.element() == null ? java.util.List.<Mark>of() : group.marks()) {
                if (mark instanceof Mark.Text text) {
                    Quantity figure = figure(text, spot, type);
                    if (figure != null) {
                        return FigureQuestion.live(group.element(), figure);
                    }
                }
            }
        }
        return null;
    }

    private static Quantity figure(Mark.Text text, Point spot, TextMeasure type) {
        double wide = type.widthPx(text.text(), text.sizePx(), text.bold());
        double left = switch (text.anchor()) {
            case START -> text.at().x();
            case MIDDLE -> text.at().x() - wide / 2;
            case END -> text.at().x() - wide;
        };
        double base = text.at().y();
        if (spot.x() < left || spot.x() > left + wide || spot.y() < base - text.sizePx() || spot.y() > base + text.sizePx() / 3) {
            return null;
        }
        Matcher matcher = FIGURE.matcher(text.text());
        while (matcher.find()) {
            double from = left + type.widthPx(text.text().substring(0, matcher.start()), text.sizePx(), text.bold());
            double to = left + type.widthPx(text.text().substring(0, matcher.end()), text.sizePx(), text.bold());
            if (spot.x() >= from && spot.x() <= to) {
                return Quantity.of(Double.parseDouble(matcher.group(1).replace('\u2212', '-')), matcher.group(2));
            }
        }
        return null;
    }
}
