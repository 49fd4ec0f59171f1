// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.help;

import java.util.function.Consumer;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWizard;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.wizards.IWizardDescriptor;

/** Follows links of pages: to other pages, to views and wizards. */
final class HelpLinks {
    private final IWorkbenchPage window;
    private final Consumer<String> pages;

    /**
     * Links inside a window.
     *
     * @param pages shows the page of an id
     */
    HelpLinks(IWorkbenchPage window, Consumer<String> pages) {
        this.window = window;
        this.pages = pages;
    }

    /** Follows a link, for example page:sizing or view:org.loomwright.workbench.findings. */
    void follow(String link) {
        int colon = link.indexOf(':');
        String target = link.substring(colon + 1);
        try {
            switch (link.substring(0, Math.max(0, colon))) {
                case "page" -> pages.accept(target);
                case "view" -> window.showView(target);
                case "new" -> wizard(target);
                default -> throw new IllegalArgumentException("a link to nothing: " + link);
            }
        } catch (CoreException problem) {
            ILog.of(HelpLinks.class).log(problem.getStatus());
        }
    }

    private void wizard(String id) throws CoreException {
        IWizardDescriptor found = PlatformUI.getWorkbench().getNewWizardRegistry().findWizard(id);
        if (found == null) {
            found = PlatformUI.getWorkbench().getImportWizardRegistry().findWizard(id);
        }
        if (found == null) {
            throw new IllegalArgumentException("there is no wizard " + id);
        }
        IWorkbenchWizard wizard = found.createWizard();
        wizard.init(PlatformUI.getWorkbench(), StructuredSelection.EMPTY);
        new WizardDialog(window.getWorkbenchWindow().getShell(), wizard).open();
    }
}
