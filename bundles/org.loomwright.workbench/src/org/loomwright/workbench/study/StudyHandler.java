// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.loomwright.workbench.app.Ids;

/** Starts a study of the vehicle in the active editor, and shows where its figures will stand. */
abstract class StudyHandler extends AbstractHandler {
    private final StudyKind kind;

    StudyHandler(StudyKind kind) {
        this.kind = kind;
    }

    /** The study wanted; null when the person thinks better of it. */
    abstract Study study(StudySource source, Shell shell);

    @Override
    public Object execute(ExecutionEvent event) {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
        IEditorPart editor = window.getActivePage().getActiveEditor();
        StudySource source = editor == null ? null : Adapters.adapt(editor, StudySource.class);
        if (source == null) {
            MessageDialog.openInformation(window.getShell(), kind.shown(), Messages.Study_noVehicle);
            return null;
        }
        Study study = study(source, window.getShell());
        if (study != null) {
            show(window.getActivePage(), Ids.STUDY);
            new StudyJob(study, source.file()).schedule();
        }
        return null;
    }

    /** Brings a view to the front without taking the focus from the drawing. */
    static void show(IWorkbenchPage page, String view) {
        try {
            page.showView(view, null, IWorkbenchPage.VIEW_VISIBLE);
        } catch (PartInitException problem) {
            ILog.of(StudyHandler.class).log(problem.getStatus());
        }
    }
}
