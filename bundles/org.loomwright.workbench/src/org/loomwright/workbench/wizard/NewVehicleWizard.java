// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.wizard;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.dialogs.WizardNewFileCreationPage;
import org.eclipse.ui.ide.IDE;
import org.loomwright.model.files.FileKind;
import org.loomwright.model.vehicle.VehiclePackage;
import org.loomwright.workbench.app.Icons;
import org.loomwright.workbench.builder.FleetNature;

/** Makes an empty vehicle. */
public final class NewVehicleWizard extends Wizard implements INewWizard {
    private IWorkbench workbench;
    private IStructuredSelection selection;
    private WizardNewFileCreationPage page;

    @Override
    public void init(IWorkbench forWorkbench, IStructuredSelection selected) {
        workbench = forWorkbench;
        selection = selected;
        setWindowTitle(Messages.Vehicle_title);
        setDefaultPageImageDescriptor(Icons.of("vehicle"));
    }

    @Override
    public void addPages() {
        page = new WizardNewFileCreationPage("vehicle", selection) {
            @Override
            protected InputStream getInitialContents() {
                return new ByteArrayInputStream(content(name(getFileName())).getBytes(StandardCharsets.UTF_8));
            }

            @Override
            protected boolean validatePage() {
                boolean valid = super.validatePage();
                if (valid && !name(getFileName()).matches("[A-Za-z0-9][A-Za-z0-9._+-]*")) {
                    setErrorMessage(Messages.Vehicle_name);
                    return false;
                }
                return valid;
            }
        };
        page.setTitle(Messages.Vehicle_title);
        page.setDescription(Messages.Vehicle_description);
        page.setFileExtension(FileKind.VEHICLE.extension());
        page.setFileName("vehicle." + FileKind.VEHICLE.extension());
        addPage(page);
    }

    private static String name(String fileName) {
        String end = "." + FileKind.VEHICLE.extension();
        return fileName.endsWith(end) ? fileName.substring(0, fileName.length() - end.length()) : fileName;
    }

    /** An empty vehicle of this name, as its file is written. */
    static String content(String name) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<vehicle:Vehicle xmlns:vehicle=\"" + VehiclePackage.eNS_URI
                + "\" format=\"1.0\" name=\"" + name + "\"/>\n";
    }

    @Override
    public boolean performFinish() {
        IFile file = page.createNewFile();
        if (file == null) {
            return false;
        }
        try {
            FleetNature.give(file.getProject(), null);
            IDE.openEditor(workbench.getActiveWorkbenchWindow().getActivePage(), file);
        } catch (CoreException problem) {
            ILog.of(NewVehicleWizard.class).log(problem.getStatus());
        }
        return true;
    }
}
