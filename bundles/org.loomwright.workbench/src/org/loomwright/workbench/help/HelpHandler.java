// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.help;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the help at the page that helps with the part that is active. */
public final class HelpHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchPart part = HandlerUtil.getActivePart(event);
        try {
            HelpView view = (HelpView) HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(HelpView.ID);
            if (part != null && part != view) {
                view.show(HelpPages.ofPart(part.getSite().getId()));
            }
        } catch (PartInitException problem) {
            throw new ExecutionException(problem.getMessage(), problem);
        }
        return null;
    }
}
