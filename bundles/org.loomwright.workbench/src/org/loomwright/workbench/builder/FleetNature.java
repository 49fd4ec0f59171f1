// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.builder;

import java.util.Arrays;
import java.util.stream.Stream;
import org.eclipse.core.resources.ICommand;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IProjectNature;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;

/** Marks a project as a fleet: its vehicles are checked whenever a file of it is saved. */
public final class FleetNature implements IProjectNature {
    /** Name of the nature. */
    public static final String ID = "org.loomwright.workbench.fleet";

    private IProject project;

    /** Gives a project the nature; one that has it already is left as it is. */
    public static void give(IProject project, IProgressMonitor monitor) throws CoreException {
        if (!project.hasNature(ID)) {
            IProjectDescription description = project.getDescription();
            description.setNatureIds(Stream.concat(Arrays.stream(description.getNatureIds()), Stream.of(ID))
                    .toArray(String[]::new));
            project.setDescription(description, monitor);
        }
    }

    @Override
    public void configure() throws CoreException {
        IProjectDescription description = project.getDescription();
        ICommand[] commands = description.getBuildSpec();
        if (Arrays.stream(commands).noneMatch(each -> each.getBuilderName().equals(CheckBuilder.ID))) {
            ICommand check = description.newCommand();
            check.setBuilderName(CheckBuilder.ID);
            description.setBuildSpec(Stream.concat(Arrays.stream(commands), Stream.of(check)).toArray(ICommand[]::new));
            project.setDescription(description, null);
        }
    }

    @Override
    public void deconfigure() throws CoreException {
        IProjectDescription description = project.getDescription();
        description.setBuildSpec(Arrays.stream(description.getBuildSpec())
                .filter(each -> !each.getBuilderName().equals(CheckBuilder.ID)).toArray(ICommand[]::new));
        project.setDescription(description, null);
    }

    @Override
    public IProject getProject() {
        return project;
    }

    @Override
    public void setProject(IProject project) {
        this.project = project;
    }
}
