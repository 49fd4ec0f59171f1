// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.wizard;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Asks for the folder. */
final class FolderPage extends WizardPage {
    private Text path;

    FolderPage() {
        super("folder", Messages.Folder_title, null);
        setDescription(Messages.Folder_description);
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(3).applyTo(body);
        new Label(body, SWT.NONE).setText(Messages.Folder_label);
        path = new Text(body, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(path);
        path.addModifyListener(event -> check());
        Button browse = new Button(body, SWT.PUSH);
        browse.setText(Messages.Folder_browse);
        browse.addListener(SWT.Selection, event -> {
            String chosen = new DirectoryDialog(getShell()).open();
            if (chosen != null) {
                path.setText(chosen);
            }
        });
        setControl(body);
    }

    private void check() {
        boolean usable = folder() != null;
        setErrorMessage(usable || path.getText().isBlank() ? null : Messages.Folder_none);
        setPageComplete(usable);
    }

    /** The folder chosen; null when there is none of that name. */
    Path folder() {
        try {
            Path folder = Path.of(path.getText().strip());
            return folder.isAbsolute() && Files.isDirectory(folder) ? folder.normalize() : null;
        } catch (InvalidPathException wrong) {
            return null;
        }
    }
}
