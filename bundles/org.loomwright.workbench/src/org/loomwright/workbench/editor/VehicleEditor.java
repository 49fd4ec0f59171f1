// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.emf.edit.domain.IEditingDomainProvider;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.ide.IGotoMarker;
import org.eclipse.ui.ide.ResourceUtil;
import org.eclipse.ui.part.EditorPart;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import org.eclipse.ui.views.properties.IPropertySheetPage;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.services.DrawingPreferences;
import org.loomwright.workbench.app.ThemeWatch;
import org.loomwright.workbench.gesture.DrawingMenu;
import org.loomwright.workbench.gesture.DrawingSite;
import org.loomwright.workbench.markers.FindingKey;
import org.loomwright.workbench.markers.FindingTarget;
import org.loomwright.workbench.preference.Units;
import org.loomwright.workbench.properties.ElementProperties;
import org.loomwright.workbench.recovery.RepairPane;
import org.loomwright.workbench.recovery.VehicleGuard;
import org.loomwright.workbench.study.StudySource;

/**
 * Editor of a vehicle file: its drawings, kept up to date with what the analysis finds. A file that could not be read whole
 * shows what is wrong with it instead, and is never saved over.
 */
public final class VehicleEditor extends EditorPart implements IGotoMarker, FindingTarget, IEditingDomainProvider {
    private VehicleDocument document;
    private DrawingPane pane;
    private VehicleGuard guard;
    private RepairPane repair;
    private HistoryActions history;
    private LiveMarkers markers;
    private AutoCloseable themeWatch;
    private boolean commentsAsked;
    private final IPropertyChangeListener units = event -> pane.preferences(preferences());

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        IPath path = path(input);
        if (path == null) {
            throw new PartInitException("only files on the disk can be opened, not " + input.getName());
        }
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        document = VehicleDocument.open(Path.of(path.toOSString()), new DisplayThread(site.getShell().getDisplay()));
    }

    private static IPath path(IEditorInput input) {
        IFile file = ResourceUtil.getFile(input);
        if (file != null) {
            return file.getLocation();
        }
        return input instanceof org.eclipse.ui.IPathEditorInput local ? local.getPath()
                : input instanceof org.eclipse.ui.IURIEditorInput remote && "file".equals(remote.getURI().getScheme())
                        ? org.eclipse.core.runtime.Path.fromOSString(Path.of(remote.getURI()).toString()) : null;
    }

    @Override
    public void createPartControl(Composite parent) {
        if (!document.sound()) {
            repair = new RepairPane(parent, location(), ResourceUtil.getFile(getEditorInput()), document.file().faults(),
                    this::openAnew, () -> firePropertyChange(PROP_DIRTY));
            return;
        }
        guard = new VehicleGuard(parent, document, location(), ResourceUtil.getFile(getEditorInput()));
        pane = new DrawingPane(guard.content(), document);
        pane.theme(theme());
        pane.preferences(preferences());
        themeWatch = ThemeWatch.onChange(() -> {
            if (!pane.isDisposed()) {
                pane.theme(theme());
            }
        });
        Units.store().addPropertyChangeListener(units);
        document.listen(change -> {
            if (change == VehicleDocument.Change.DIRTY) {
                firePropertyChange(PROP_DIRTY);
            }
        });
        history = new HistoryActions(document);
        getEditorSite().getActionBars().setGlobalActionHandler(ActionFactory.UNDO.getId(), history.undo());
        getEditorSite().getActionBars().setGlobalActionHandler(ActionFactory.REDO.getId(), history.redo());
        pane.gestures().in(new DrawingSite(getEditorSite(), pane.canvas(), history.undo(), history.redo()));
        getSite().setSelectionProvider(new ElementSelectionProvider(document));
        DrawingMenu.on(pane.canvas(), getEditorSite());
        IFile file = ResourceUtil.getFile(getEditorInput());
        if (file != null) {
            markers = new LiveMarkers(document, file, getSite().getShell().getDisplay());
        }
    }

    private Path location() {
        return Path.of(path(getEditorInput()).toOSString());
    }

    /** A file that has changed so much that it is better read from the beginning. */
    private void openAnew() {
        IWorkbenchPage page = getSite().getPage();
        IEditorInput input = getEditorInput();
        getSite().getShell().getDisplay().asyncExec(() -> {
            try {
                page.closeEditor(this, false);
                page.openEditor(input, getSite().getId());
            } catch (PartInitException problem) {
                ILog.of(VehicleEditor.class).log(problem.getStatus());
            }
        });
    }

    private static Theme theme() {
        return ThemeWatch.isDark() ? Theme.dark() : Theme.light();
    }

    private static DrawingPreferences preferences() {
        return new DrawingPreferences(Units.section() == Units.Section.AWG, Units.system() == Units.Length.IMPERIAL);
    }

    /** The open vehicle. */
    public VehicleDocument document() {
        return document;
    }

    /** Its drawings; null for a file with faults. */
    public DrawingPane pane() {
        return pane;
    }

    /** What keeps its work; null for a file with faults. */
    public VehicleGuard guard() {
        return guard;
    }

    /** What is open for repair; null for a file that was read whole. */
    public RepairPane repair() {
        return repair;
    }

    @Override
    public EditingDomain getEditingDomain() {
        return document.domain();
    }

    @Override
    public void setFocus() {
        if (pane != null) {
            pane.canvas().setFocus();
        } else if (repair != null) {
            repair.setFocus();
        }
    }

    @Override
    public boolean isDirty() {
        return repair != null ? repair.dirty() : document.dirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        if (!isDirty() || repair == null && !mayLoseComments()) {
            monitor.setCanceled(true);
            return;
        }
        try {
            if (repair != null) {
                repair.save();
            } else {
                document.save();
                guard.saved();
            }
            IFile file = ResourceUtil.getFile(getEditorInput());
            if (file != null) {
                file.refreshLocal(IResource.DEPTH_ZERO, monitor);
            }
        } catch (IOException | CoreException | RuntimeException problem) {
            monitor.setCanceled(true);
            ILog.of(VehicleEditor.class).error("saving " + getEditorInput().getName() + " failed", problem);
            MessageDialog.openError(getSite().getShell(), Words.of("save.failed"),
                    getEditorInput().getName() + " " + problem.getMessage());
        }
    }

    private boolean mayLoseComments() {
        if (document.file().hasComments() && !commentsAsked) {
            commentsAsked = MessageDialog.openQuestion(getSite().getShell(), Words.of("save.comments.title"),
                    Words.of("save.comments.text"));
            return commentsAsked;
        }
        return true;
    }

    @Override
    public void doSaveAs() {
        // a vehicle is copied in the navigator, where its links to libraries stay right
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void gotoMarker(IMarker marker) {
        reveal(FindingKey.of(marker));
    }

    @Override
    public void reveal(FindingKey finding) {
        if (pane == null) {
            return;
        }
        if (!finding.arrangement().isEmpty()) {
            document.showArrangement(finding.arrangement());
        }
        if (finding.element().isEmpty()) {
            return;
        }
        if (document.caseName() != null && !finding.caseName().isEmpty()) {
            document.showCase(finding.caseName());
        }
        document.reveal(finding.element());
    }

    @Override
    public boolean mend(FindingKey finding, String mend) {
        if (pane == null) {
            return false;
        }
        reveal(finding);
        return MendFixes.of(document).mend(finding, mend);
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        if (document != null && document.sound()) {
            if (type == IContentOutlinePage.class) {
                return type.cast(new VehicleOutline(document));
            }
            if (type == IPropertySheetPage.class) {
                return type.cast(ElementProperties.page(document));
            }
            IFile file = ResourceUtil.getFile(getEditorInput());
            if (type == StudySource.class && file != null) {
                return type.cast(new EditedVehicle(document, file));
            }
            if (type == VehicleDocument.class) {
                return type.cast(document);
            }
        }
        return super.getAdapter(type);
    }

    @Override
    public void dispose() {
        Units.store().removePropertyChangeListener(units);
        try {
            if (themeWatch != null) {
                themeWatch.close();
            }
        } catch (Exception problem) {
            ILog.of(VehicleEditor.class).warn("the editor could not let go of the theme", problem);
        }
        if (markers != null) {
            markers.close();
        }
        if (guard != null) {
            guard.close();
        }
        if (history != null) {
            history.dispose();
        }
        if (document != null) {
            document.dispose();
        }
        super.dispose();
    }

}
