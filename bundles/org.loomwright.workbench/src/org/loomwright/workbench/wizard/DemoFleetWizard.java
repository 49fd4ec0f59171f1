// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.wizard;

import java.lang.reflect.InvocationTargetException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.IImportWizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.dialogs.WizardNewProjectCreationPage;
import org.eclipse.ui.actions.WorkspaceModifyOperation;
import org.loomwright.workbench.app.Icons;

/** Copies the demo fleet into a new project. */
public final class DemoFleetWizard extends Wizard implements INewWizard, IImportWizard {
    private IWorkbench workbench;
    private WizardNewProjectCreationPage page;

    @Override
    public void init(IWorkbench forWorkbench, IStructuredSelection selection) {
        workbench = forWorkbench;
        setWindowTitle(Messages.Demo_title);
        setDefaultPageImageDescriptor(Icons.of("fleet"));
        setNeedsProgressMonitor(true);
    }

    @Override
    public void addPages() {
        page = new WizardNewProjectCreationPage("demo");
        page.setTitle(Messages.Demo_title);
        page.setDescription(Messages.Demo_description);
        page.setInitialProjectName(DemoFleet.PROJECT);
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        String name = page.getProjectName();
        IProject[] made = new IProject[1];
        try {
            getContainer().run(true, false, new WorkspaceModifyOperation(null) {
                @Override
                protected void execute(org.eclipse.core.runtime.IProgressMonitor monitor) throws CoreException {
                    made[0] = DemoFleet.create(name, monitor);
                }
            });
            DemoFleet.openFirst(workbench.getActiveWorkbenchWindow().getActivePage(), made[0]);
            return true;
        } catch (InvocationTargetException problem) {
            ErrorDialog.openError(getShell(), Messages.Demo_title, Messages.Demo_failed, WizardStatus.of(problem));
        } catch (CoreException problem) {
            ErrorDialog.openError(getShell(), Messages.Demo_title, Messages.Demo_failed, problem.getStatus());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return false;
    }
}
