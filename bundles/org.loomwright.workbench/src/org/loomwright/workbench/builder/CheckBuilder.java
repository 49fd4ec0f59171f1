// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.builder;

import java.util.EnumSet;
import java.util.List;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.osgi.util.NLS;
import org.loomwright.model.files.FileKind;
import org.loomwright.workbench.markers.FindingMarkers;

/**
 * Checks vehicles when they are saved. A change of a library, a practice or a stock concerns every vehicle of the project.
 */
public final class CheckBuilder extends IncrementalProjectBuilder {
    /** Name of the builder. */
    public static final String ID = "org.loomwright.workbench.check";

    @Override
    protected IProject[] build(int kind, Map<String, String> arguments, IProgressMonitor monitor) throws CoreException {
        Set<IFile> vehicles = kind == FULL_BUILD ? null : changed(getDelta(getProject()));
        boolean all = vehicles == null;
        List<IFile> files = all ? FleetFiles.of(getProject(), EnumSet.of(FileKind.VEHICLE)) : List.copyOf(vehicles);
        if (files.isEmpty()) {
            return new IProject[0];
        }
        for (IFile shared : FleetFiles.of(getProject(), EnumSet.complementOf(EnumSet.of(FileKind.VEHICLE)))) {
            shared.deleteMarkers(FindingMarkers.FAULT_TYPE, true, IResource.DEPTH_ZERO);
        }
        SubMonitor progress = SubMonitor.convert(monitor, Messages.Check_task, files.size());
        FileCheck check = new FileCheck();
        for (IFile file : files) {
            progress.subTask(NLS.bind(Messages.Check_file, file.getName()));
            check.run(file, progress.split(1));
        }
        return new IProject[0];
    }

    /** Vehicles that changed; null when something changed that concerns all of them. */
    private static Set<IFile> changed(IResourceDelta delta) throws CoreException {
        if (delta == null) {
            return null;
        }
        Set<IFile> vehicles = new LinkedHashSet<>();
        boolean[] shared = {false};
        delta.accept(each -> {
            FileKind kind = FleetFiles.kind(each.getResource());
            boolean content = each.getKind() != IResourceDelta.CHANGED
                    || (each.getFlags() & (IResourceDelta.CONTENT | IResourceDelta.REPLACED)) != 0;
            if (kind == FileKind.VEHICLE && content && each.getKind() != IResourceDelta.REMOVED) {
                vehicles.add((IFile) each.getResource());
            } else if (kind != null && kind != FileKind.VEHICLE && content) {
                shared[0] = true;
            }
            return !shared[0];
        });
        return shared[0] ? null : vehicles;
    }

    @Override
    protected void clean(IProgressMonitor monitor) throws CoreException {
        getProject().deleteMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_INFINITE);
        getProject().deleteMarkers(FindingMarkers.FAULT_TYPE, true, IResource.DEPTH_INFINITE);
    }
}
