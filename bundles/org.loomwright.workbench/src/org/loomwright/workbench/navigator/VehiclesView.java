// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.navigator;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.DeleteResourceAction;
import org.eclipse.ui.actions.RefreshAction;
import org.eclipse.ui.actions.RenameResourceAction;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.ide.ResourceUtil;
import org.eclipse.ui.part.ViewPart;
import org.loomwright.workbench.markers.FindingKey;
import org.loomwright.workbench.markers.FindingTarget;

/** The tree of vehicles, libraries, practices and stocks, with the worst finding of each as a badge. */
public final class VehiclesView extends ViewPart {
    private static final int QUIET_MS = 100;

    private final IResourceChangeListener changes = this::changed;
    private TreeViewer viewer;
    private Display display;
    private boolean waiting;

    @Override
    public void createPartControl(Composite parent) {
        viewer = new TreeViewer(parent, SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
        display = parent.getDisplay();
        FleetTree tree = new FleetTree();
        viewer.setContentProvider(tree);
        viewer.setLabelProvider(new DelegatingStyledCellLabelProvider(new FleetLabels(tree)));
        viewer.setInput(ResourcesPlugin.getWorkspace().getRoot());
        viewer.setAutoExpandLevel(2);
        viewer.expandToLevel(2);
        viewer.addOpenListener(event -> open(((IStructuredSelection) event.getSelection()).getFirstElement()));
        viewer.addPostSelectionChangedListener(event -> follow(event.getStructuredSelection().getFirstElement()));
        getSite().setSelectionProvider(viewer);
        makeActions();
        ResourcesPlugin.getWorkspace().addResourceChangeListener(changes, IResourceChangeEvent.POST_CHANGE);
    }

    private void makeActions() {
        RenameResourceAction rename = new RenameResourceAction(getSite());
        DeleteResourceAction delete = new DeleteResourceAction(getSite());
        RefreshAction refresh = new RefreshAction(getSite());
        viewer.addSelectionChangedListener(event -> {
            rename.selectionChanged(event.getStructuredSelection());
            delete.selectionChanged(event.getStructuredSelection());
            refresh.selectionChanged(event.getStructuredSelection());
        });
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.RENAME.getId(), rename);
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.DELETE.getId(), delete);
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.REFRESH.getId(), refresh);
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(manager -> {
            manager.add(rename);
            manager.add(delete);
            manager.add(refresh);
            manager.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        });
        Control control = viewer.getControl();
        control.setMenu(menu.createContextMenu(control));
        getSite().registerContextMenu(menu, viewer);
    }

    private void open(Object element) {
        try {
            if (element instanceof FindingNode node) {
                reveal(IDE.openEditor(getSite().getPage(), node.file()), node.key());
            } else if (element instanceof ArrangementNode node) {
                reveal(IDE.openEditor(getSite().getPage(), node.file()), new FindingKey(node.name(), "", "", ""));
            } else if (element instanceof IFile file) {
                IDE.openEditor(getSite().getPage(), file);
            } else {
                viewer.setExpandedState(element, !viewer.getExpandedState(element));
            }
        } catch (PartInitException problem) {
            ILog.of(VehiclesView.class).log(problem.getStatus());
        }
    }

    /** Shows the element of a finding in the drawing of its vehicle where that is open already. */
    private void follow(Object element) {
        IEditorPart editor = element instanceof FindingNode node ? ResourceUtil.findEditor(getSite().getPage(), node.file())
                : null;
        if (editor != null) {
            getSite().getPage().bringToTop(editor);
            reveal(editor, ((FindingNode) element).key());
        }
    }

    private static void reveal(IEditorPart editor, FindingKey finding) {
        FindingTarget target = Adapters.adapt(editor, FindingTarget.class);
        if (target != null) {
            target.reveal(finding);
        }
    }

    /** Once for many changes: a build changes hundreds of markers. */
    private synchronized void changed(IResourceChangeEvent event) {
        if (!waiting && !display.isDisposed()) {
            waiting = true;
            display.asyncExec(() -> display.timerExec(QUIET_MS, this::refresh));
        }
    }

    private void refresh() {
        synchronized (this) {
            waiting = false;
        }
        if (!viewer.getControl().isDisposed()) {
            boolean empty = viewer.getTree().getItemCount() == 0;
            viewer.refresh();
            if (empty) {
                viewer.expandToLevel(2);
            }
        }
    }

    @Override
    public void setFocus() {
        viewer.getControl().setFocus();
    }

    /** The tree, for tests. */
    TreeViewer viewer() {
        return viewer;
    }

    @Override
    public void dispose() {
        ResourcesPlugin.getWorkspace().removeResourceChangeListener(changes);
        super.dispose();
    }
}
