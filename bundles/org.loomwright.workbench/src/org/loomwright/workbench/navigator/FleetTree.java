// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.navigator;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.loomwright.model.files.FileKind;
import org.loomwright.workbench.builder.FleetFiles;
import org.loomwright.workbench.markers.FindingMarkers;

/** Projects, their files vehicles first, the arrangements of each vehicle, and what was found in each. */
public final class FleetTree implements ITreeContentProvider {
    private static final Object[] NONE = {};

    private final Map<IFile, FileSummary> summaries = new HashMap<>();
    private final Map<IFile, Long> stamps = new HashMap<>();

    @Override
    public Object[] getElements(Object input) {
        return getChildren(input);
    }

    @Override
    public Object[] getChildren(Object parent) {
        if (parent instanceof IWorkspaceRoot root) {
            return root.getProjects();
        }
        if (parent instanceof IProject project && project.isOpen()) {
            return files(project).toArray();
        }
        if (parent instanceof IFile file && FleetFiles.kind(file) == FileKind.VEHICLE) {
            return summary(file).arrangements().toArray();
        }
        if (parent instanceof ArrangementNode node) {
            return findings(node).toArray();
        }
        return NONE;
    }

    /** Findings of an arrangement as its file was checked last, the worst first. */
    private static List<FindingNode> findings(ArrangementNode node) {
        try {
            return node.file().isAccessible() ? Stream.of(node.file().findMarkers(FindingMarkers.TYPE, false,
                    IResource.DEPTH_ZERO)).map(marker -> FindingNode.of(node.file(), marker))
                    .filter(finding -> finding.key().arrangement().equals(node.name()))
                    .sorted(Comparator.comparingInt((FindingNode each) -> -each.severity()).thenComparing(FindingNode::where)
                            .thenComparing(FindingNode::title))
                    .toList() : List.of();
        } catch (CoreException gone) {
            return List.of();
        }
    }

    private static List<IFile> files(IProject project) {
        try {
            return Stream.concat(FleetFiles.of(project, EnumSet.of(FileKind.VEHICLE)).stream(),
                    FleetFiles.of(project, EnumSet.complementOf(EnumSet.of(FileKind.VEHICLE))).stream()).toList();
        } catch (CoreException problem) {
            ILog.of(FleetTree.class).log(problem.getStatus());
            return List.of();
        }
    }

    /** The summary of a file, read again when the file changed. */
    FileSummary summary(IFile file) {
        long stamp = file.getModificationStamp();
        if (!Long.valueOf(stamp).equals(stamps.put(file, stamp))) {
            summaries.put(file, FileSummary.of(file));
        }
        return summaries.get(file);
    }

    @Override
    public Object getParent(Object element) {
        if (element instanceof ArrangementNode node) {
            return node.file();
        }
        if (element instanceof FindingNode node) {
            return summary(node.file()).arrangements().stream().filter(each -> each.name().equals(node.key().arrangement()))
                    .findFirst().orElse(null);
        }
        return element instanceof IFile file ? file.getProject() : null;
    }

    @Override
    public boolean hasChildren(Object element) {
        return getChildren(element).length > 0;
    }
}
