// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import org.loomwright.engine.result.Quantity;
import org.loomwright.workbench.view.FigureFocus;
import org.loomwright.workbench.view.FigureQuestion;

/** What a line of a card leads to, as a text: another element, or how a figure came about. */
final class CardLink {
    private static final String GO = "go ";
    private static final String ASK = "ask ";

    private CardLink() {
    }

    /** Leads to an element. */
    static String go(String element) {
        return GO + element;
    }

    /** Leads to how a figure of an element came about. */
    static String ask(Quantity figure, String element) {
        return ASK + figure.value() + " " + figure.unit() + " " + element;
    }

    /** Follows a link in a document. */
    static void follow(String link, VehicleDocument document) {
        if (link.startsWith(GO)) {
            document.reveal(link.substring(GO.length()));
        } else if (link.startsWith(ASK)) {
            String[] parts = link.substring(ASK.length()).split(" ", 3);
            document.reveal(parts[2]);
            FigureFocus.current().ask(FigureQuestion.live(parts[2], Quantity.of(Double.parseDouble(parts[0]), parts[1])));
        }
    }
}
