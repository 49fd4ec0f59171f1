// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.loomwright.diagram.services.FindingMark;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.workbench.editor.MendFixes;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;

/** What can be done about a finding, as a menu. */
public final class FindingActions {
    private FindingActions() {
    }

    static void fill(IMenuManager menu, VehicleDocument document, Finding finding, Designations names, Shell shell) {
        menu.add(action(Words.of("findings.go"), () -> document.reveal(finding.element())));
        for (Cause cause : finding.causes()) {
            if (!cause.element().equals(finding.element())) {
                menu.add(action(Words.of("findings.culprit", names.shown(cause.element())),
                        () -> document.reveal(cause.element())));
            }
        }
        menu.add(new Separator());
        for (Mend mend : finding.mends()) {
            boolean possible = !mend.changes().isEmpty();
            Action action = action(possible ? mend.text() : Words.of("findings.hand", mend.text()),
                    () -> apply(document, mend, shell));
            action.setEnabled(possible);
            menu.add(action);
        }
        menu.add(new Separator());
        // what cannot be meant in the file itself is mended, not accepted
        if (finding.accepted() == null && RuleCatalogue.standard().slugs().contains(finding.rule())) {
            menu.add(action(Words.of("findings.accept"), () -> accept(document, finding, names, shell)));
        }
        if (finding.accepted() != null) {
            menu.add(action(Words.of("findings.takeback"), () -> MendFixes.of(document).takeBack(finding)));
        }
    }

    /**
     * The same for everything that was found at an element or in it, a menu for each finding; and the ways to what it is the
     * cause of. Adds nothing for an element without findings.
     */
    public static void fillFor(IMenuManager menu, VehicleDocument document, String element, Shell shell) {
        if (document.analysis() == null || !document.analysis().worked()) {
            return;
        }
        Designations names = new Designations(document.arrangement() == null ? "" : document.arrangement().getName());
        FindingMark own = document.analysis().view().markWithin(element);
        FindingMark cause = document.analysis().view().causeMark(element);
        for (Finding finding : own == null ? List.<Finding>of() : own.findings()) {
            MenuManager sub = new MenuManager(Words.of("findings.one", finding.severity().slug(), finding.title())
                    .replace("&", "&&"));
            fill(sub, document, finding, names, shell);
            menu.add(sub);
        }
        for (Finding finding : cause == null ? List.<Finding>of() : cause.findings()) {
            if (own == null || !own.findings().contains(finding)) {
                menu.add(action(Words.of("findings.effect", names.shown(finding.element()), finding.title()),
                        () -> document.reveal(finding.element())));
            }
        }
    }

    private static void apply(VehicleDocument document, Mend mend, Shell shell) {
        try {
            MendFixes.of(document).apply(mend);
        } catch (IllegalArgumentException impossible) {
            MessageDialog.openInformation(shell, Words.of("edit.impossible"), impossible.getMessage());
        }
    }

    private static void accept(VehicleDocument document, Finding finding, Designations names, Shell shell) {
        InputDialog dialog = new InputDialog(shell, Words.of("findings.accept.title"),
                Words.of("findings.accept.text", names.shown(finding.element()) + ": " + finding.title()), "",
                text -> text.isBlank() ? Words.of("findings.accept.empty") : null);
        if (dialog.open() == Window.OK) {
            MendFixes.of(document).accept(finding, dialog.getValue().strip());
        }
    }

    /** No letter of it is a mnemonic, none a key. */
    private static String plain(String text) {
        return text.replace("&", "&&") + "@";
    }

    private static Action action(String text, Runnable run) {
        return new Action(plain(text)) {
            @Override
            public void run() {
                run.run();
            }
        };
    }
}
