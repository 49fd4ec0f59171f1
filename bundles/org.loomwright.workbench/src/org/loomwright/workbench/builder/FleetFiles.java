// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.builder;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.loomwright.model.files.FileKind;

/** Finds the files of the project's kinds in a container. */
public final class FleetFiles {
    private FleetFiles() {
    }

    /** The kind of a file by the end of its name; null for any other file. */
    public static FileKind kind(IResource resource) {
        if (resource.getType() == IResource.FILE && resource.getFileExtension() != null) {
            for (FileKind kind : FileKind.values()) {
                if (kind.extension().equals(resource.getFileExtension())) {
                    return kind;
                }
            }
        }
        return null;
    }

    /** All files of these kinds below a container, in the order of their paths; hidden and derived ones left out. */
    public static List<IFile> of(IContainer container, Set<FileKind> kinds) throws CoreException {
        List<IFile> found = new ArrayList<>();
        container.accept(resource -> {
            if (resource.isDerived() || resource.getName().startsWith(".") && resource.getType() != IResource.ROOT) {
                return false;
            }
            FileKind kind = kind(resource);
            if (kind != null && kinds.contains(kind)) {
                found.add((IFile) resource);
            }
            return true;
        });
        found.sort((a, b) -> a.getFullPath().toString().compareTo(b.getFullPath().toString()));
        return found;
    }
}
