// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.loomwright.workbench.app.Ids;

/** At the start: opens the vehicles of which work was kept that was not saved; each of their editors offers it. */
public final class KeptWork {
    private KeptWork() {
    }

    /** Opens them in a page; does nothing when everything was saved. */
    public static void offer(IWorkbenchPage page) {
        RecoveryFolder folder = RecoveryFolder.ofWorkspace();
        List<RecoveryFolder.Kept> all = folder.all();
        Set<Path> opened = new LinkedHashSet<>();
        for (RecoveryFolder.Kept kept : all) {
            Path file = kept.copy().file();
            if (!Files.exists(file) && !writtenBack(page, folder, kept)) {
                continue;
            }
            if (opened.add(file)) {
                open(page, file);
            }
        }
    }

    private static void open(IWorkbenchPage page, Path file) {
        try {
            IFile[] known = ResourcesPlugin.getWorkspace().getRoot().findFilesForLocationURI(file.toUri());
            if (known.length > 0) {
                IDE.openEditor(page, known[0]);
            } else {
                IDE.openEditor(page, file.toUri(), Ids.EDITOR, true);
            }
        } catch (PartInitException problem) {
            ILog.of(KeptWork.class).log(problem.getStatus());
        }
    }

    /** The file itself is gone: its work is only written back there when the person wants it. */
    private static boolean writtenBack(IWorkbenchPage page, RecoveryFolder folder, RecoveryFolder.Kept kept) {
        RecoveryCopy copy = kept.copy();
        String question = Messages.bound(Messages.Recovery_gone, copy.file(), Messages.changes(copy.changes()),
                VehicleGuard.time(copy.last()), copy.label());
        int answer = MessageDialog.open(MessageDialog.QUESTION, page.getWorkbenchWindow().getShell(), Messages.Recovery_title,
                question, org.eclipse.swt.SWT.NONE, Messages.Recovery_writeBack, Messages.Recovery_discard,
                Messages.Recovery_later);
        try {
            if (answer == 0) {
                Files.createDirectories(copy.file().getParent());
                Files.write(copy.file(), copy.content());
                folder.delete(kept.where());
            } else if (answer == 1) {
                folder.delete(kept.where());
            }
            return answer == 0;
        } catch (IOException problem) {
            ILog.of(KeptWork.class).error("kept work could not be written back to " + copy.file(), problem);
            return false;
        }
    }
}
