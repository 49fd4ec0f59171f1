// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.wizard;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import java.util.Map;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Path;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.ide.IDE;
import org.loomwright.workbench.app.Ids;
import org.loomwright.workbench.builder.FleetFiles;
import org.loomwright.workbench.builder.FleetNature;
import org.loomwright.model.files.FileKind;
import org.osgi.framework.Bundle;

/** The demo fleet, copied into a project of its own. */
public final class DemoFleet {
    /** Name of the project. */
    public static final String PROJECT = "demo-fleet";
    /** Vehicle that is opened first. */
    public static final String FIRST = "heron.vehicle";

    private static final String SAMPLES = "org.loomwright.samples";
    private static final String FOLDER = "/fleet/";

    private DemoFleet() {
    }

    /** Makes the project from the installed samples. The project must not exist. */
    public static IProject create(String name, IProgressMonitor monitor) throws CoreException {
        IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(name);
        ResourcesPlugin.getWorkspace().run(inner -> fill(project, inner),
                ResourcesPlugin.getWorkspace().getRoot(), 0, monitor);
        return project;
    }

    private static void fill(IProject project, IProgressMonitor monitor) throws CoreException {
        Bundle samples = Platform.getBundle(SAMPLES);
        if (samples == null) {
            throw new CoreException(Status.error(Messages.Demo_missing));
        }
        Map<String, URL> files = files(samples);
        SubMonitor progress = SubMonitor.convert(monitor, files.size() + 2);
        IProjectDescription description = ResourcesPlugin.getWorkspace().newProjectDescription(project.getName());
        project.create(description, progress.split(1));
        project.open(progress.split(1));
        for (Map.Entry<String, URL> entry : files.entrySet()) {
            IFile file = project.getFile(new Path(entry.getKey()));
            makeFolders(file.getParent());
            try (InputStream content = entry.getValue().openStream()) {
                file.create(content, true, progress.split(1));
            } catch (IOException problem) {
                throw new CoreException(Status.error(Messages.Demo_unreadable, problem));
            }
        }
        FleetNature.give(project, null);
    }

    /** Paths in the project and where their content is, in a fixed order. */
    private static Map<String, URL> files(Bundle samples) {
        Map<String, URL> files = new TreeMap<>();
        for (URL url : Collections.list(samples.findEntries(FOLDER, "*", true))) {
            String path = url.getPath();
            if (!path.endsWith("/")) {
                files.put(path.substring(path.indexOf(FOLDER) + FOLDER.length()), url);
            }
        }
        return files;
    }

    private static void makeFolders(IContainer container) throws CoreException {
        if (container instanceof IFolder folder && !folder.exists()) {
            makeFolders(folder.getParent());
            folder.create(true, true, null);
        }
    }

    /** Brings the demo fleet in when it is not there, and opens its first vehicle when nothing is open. */
    public static void importOnce(IWorkbenchPage page) {
        try {
            IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(PROJECT);
            if (!project.exists()) {
                create(PROJECT, null);
            }
            project.open(null);
            openFirst(page, project);
        } catch (CoreException problem) {
            IStatus status = problem.getStatus();
            ILog.of(DemoFleet.class).log(status);
        }
    }

    /** Opens the first vehicle of a project, unless an editor is open. */
    public static void openFirst(IWorkbenchPage page, IProject project) throws CoreException {
        List<IFile> vehicles = FleetFiles.of(project, java.util.EnumSet.of(FileKind.VEHICLE));
        if (!vehicles.isEmpty() && page.getEditorReferences().length == 0) {
            IFile named = project.getFile(FIRST);
            IDE.openEditor(page, named.exists() ? named : vehicles.get(0));
        }
        page.showView(Ids.VEHICLES, null, IWorkbenchPage.VIEW_VISIBLE);
    }
}
