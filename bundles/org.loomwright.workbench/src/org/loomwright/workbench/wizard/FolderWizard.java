// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.wizard;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.IImportWizard;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.actions.WorkspaceModifyOperation;
import org.loomwright.workbench.app.Icons;
import org.loomwright.workbench.builder.FleetNature;

/** Opens a folder of the machine as a project; the files stay where they are. */
public final class FolderWizard extends Wizard implements IImportWizard {
    private IWorkbench workbench;
    private FolderPage page;

    @Override
    public void init(IWorkbench forWorkbench, IStructuredSelection selection) {
        workbench = forWorkbench;
        setWindowTitle(Messages.Folder_title);
        setDefaultPageImageDescriptor(Icons.of("fleet"));
        setNeedsProgressMonitor(true);
    }

    @Override
    public void addPages() {
        page = new FolderPage();
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        Path folder = page.folder();
        IProject[] made = new IProject[1];
        try {
            getContainer().run(true, false, new WorkspaceModifyOperation(null) {
                @Override
                protected void execute(IProgressMonitor monitor) throws CoreException {
                    made[0] = open(folder, monitor);
                }
            });
            DemoFleet.openFirst(workbench.getActiveWorkbenchWindow().getActivePage(), made[0]);
            return true;
        } catch (InvocationTargetException problem) {
            ErrorDialog.openError(getShell(), Messages.Folder_title, Messages.Folder_failed, WizardStatus.of(problem));
        } catch (CoreException problem) {
            ErrorDialog.openError(getShell(), Messages.Folder_title, Messages.Folder_failed, problem.getStatus());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return false;
    }

    /** Makes the folder a project of the workspace, named as the folder. */
    static IProject open(Path folder, IProgressMonitor monitor) throws CoreException {
        IWorkspace workspace = ResourcesPlugin.getWorkspace();
        org.eclipse.core.runtime.Path location = new org.eclipse.core.runtime.Path(folder.toString());
        org.eclipse.core.runtime.IPath file = location.append(IProjectDescription.DESCRIPTION_FILE_NAME);
        IProjectDescription description = file.toFile().exists() ? workspace.loadProjectDescription(file)
                : workspace.newProjectDescription(location.lastSegment());
        IProject project = workspace.getRoot().getProject(description.getName());
        if (!project.exists()) {
            if (!workspace.getRoot().getLocation().isPrefixOf(location)) {
                description.setLocation(location);
            }
            project.create(description, monitor);
        }
        project.open(monitor);
        FleetNature.give(project, monitor);
        return project;
    }
}
