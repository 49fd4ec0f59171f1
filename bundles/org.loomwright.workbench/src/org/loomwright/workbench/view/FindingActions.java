// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.workbench.editor.MendFixes;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;

/** What can be done about a finding, as a menu. */
final class FindingActions {
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

    private static Action action(String text, Runnable run) {
        return new Action(text.replace("@", "@@").replace("&", "&&")) {
            @Override
            public void run() {
                run.run();
            }
        };
    }
}
