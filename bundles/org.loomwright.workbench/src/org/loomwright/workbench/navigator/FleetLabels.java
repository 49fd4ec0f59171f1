// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.navigator;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.viewers.DecorationOverlayIcon;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.IDecoration;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.loomwright.workbench.app.Icons;
import org.loomwright.workbench.builder.FleetFiles;
import org.loomwright.workbench.markers.FindingMarkers;

/** Names of the tree, with the label behind in grey and the worst finding as a badge. */
final class FleetLabels extends LabelProvider implements IStyledLabelProvider {
    private final FleetTree tree;
    private final LocalResourceManager images = new LocalResourceManager(JFaceResources.getResources());
    private final Map<String, ImageDescriptor> icons = new HashMap<>();

    FleetLabels(FleetTree tree) {
        this.tree = tree;
    }

    @Override
    public StyledString getStyledText(Object element) {
        if (element instanceof ArrangementNode node) {
            return new StyledString(node.name())
                    .append(node.label().isEmpty() ? "" : "  " + node.label(), StyledString.QUALIFIER_STYLER)
                    .append(node.adopted() ? "  " + Messages.Tree_adopted : "", StyledString.DECORATIONS_STYLER);
        }
        if (element instanceof FindingNode node) {
            return new StyledString(node.where()).append("  " + node.title(), StyledString.QUALIFIER_STYLER);
        }
        if (element instanceof IFile file) {
            String label = tree.summary(file).label();
            String folder = file.getParent().getType() == IResource.PROJECT ? ""
                    : file.getParent().getProjectRelativePath() + "/";
            StyledString text = new StyledString(folder, StyledString.QUALIFIER_STYLER).append(file.getName())
                    .append(label.isEmpty() ? "" : "  " + label, StyledString.QUALIFIER_STYLER);
            return text.append(counted(file), StyledString.COUNTER_STYLER);
        }
        if (element instanceof IProject project) {
            return new StyledString(project.getName())
                    .append(project.isOpen() ? "" : "  " + Messages.Tree_closed, StyledString.QUALIFIER_STYLER);
        }
        return new StyledString(String.valueOf(element));
    }

    @Override
    public String getText(Object element) {
        return getStyledText(element).getString();
    }

    private static String counted(IFile file) {
        int errors = 0;
        int warnings = 0;
        for (IMarker marker : problems(file)) {
            int severity = marker.getAttribute(IMarker.SEVERITY, IMarker.SEVERITY_INFO);
            errors += severity == IMarker.SEVERITY_ERROR ? 1 : 0;
            warnings += severity == IMarker.SEVERITY_WARNING ? 1 : 0;
        }
        return errors + warnings == 0 ? "" : "  " + NLS.bind(Messages.Tree_counts, errors, warnings);
    }

    private static IMarker[] problems(IResource resource) {
        try {
            return resource.isAccessible() ? resource.findMarkers(IMarker.PROBLEM, true, IResource.DEPTH_INFINITE)
                    : new IMarker[0];
        } catch (CoreException gone) {
            return new IMarker[0];
        }
    }

    private static int worst(Object element) {
        IResource resource = element instanceof ArrangementNode node ? node.file() : (IResource) element;
        int worst = -1;
        for (IMarker marker : problems(resource)) {
            if (!(element instanceof ArrangementNode node)
                    || node.name().equals(marker.getAttribute(FindingMarkers.ARRANGEMENT, ""))) {
                worst = Math.max(worst, marker.getAttribute(IMarker.SEVERITY, -1));
            }
        }
        return worst;
    }

    @Override
    public Image getImage(Object element) {
        if (element instanceof FindingNode node) {
            return PlatformUI.getWorkbench().getSharedImages().getImage(switch (node.severity()) {
                case IMarker.SEVERITY_ERROR -> ISharedImages.IMG_OBJS_ERROR_TSK;
                case IMarker.SEVERITY_WARNING -> ISharedImages.IMG_OBJS_WARN_TSK;
                default -> ISharedImages.IMG_OBJS_INFO_TSK;
            });
        }
        ImageDescriptor icon = element instanceof IProject ? PlatformUI.getWorkbench().getSharedImages()
                .getImageDescriptor(IDE.SharedImages.IMG_OBJ_PROJECT) : icons.computeIfAbsent(icon(element), Icons::of);
        String badge = switch (worst(element)) {
            case IMarker.SEVERITY_ERROR -> ISharedImages.IMG_DEC_FIELD_ERROR;
            case IMarker.SEVERITY_WARNING -> ISharedImages.IMG_DEC_FIELD_WARNING;
            default -> null;
        };
        Image plain = images.create(icon);
        ImageDescriptor over = badge == null ? null
                : PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(badge);
        return over == null ? plain : images.create(new DecorationOverlayIcon(plain, over, IDecoration.BOTTOM_RIGHT));
    }

    private static String icon(Object element) {
        if (element instanceof ArrangementNode) {
            return "arrangement";
        }
        return element instanceof IFile file && FleetFiles.kind(file) != null ? FleetFiles.kind(file).extension() : "file";
    }

    @Override
    public void dispose() {
        images.dispose();
        super.dispose();
    }
}
