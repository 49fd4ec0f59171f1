// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.fault;

import java.nio.file.Path;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.provider.ComposedAdapterFactory;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;
import org.loomwright.model.edit.providers.LoomwrightAdapterFactory;
import org.loomwright.model.files.FileKind;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.workbench.builder.FleetFiles;

/**
 * Shows what a file holds as a tree to read, or its faults when it cannot be opened. It changes nothing and never saves, so a
 * file with faults stays as it is.
 */
public final class FileEditor extends EditorPart {
    private final ComposedAdapterFactory adapters = new ComposedAdapterFactory(new AdapterFactory[] {
        new LoomwrightAdapterFactory()});
    private Control content;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        if (!(input instanceof IFileEditorInput)) {
            throw new PartInitException(Messages.Fault_noFile);
        }
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        IFile file = ((IFileEditorInput) getEditorInput()).getFile();
        ReadFile<? extends EObject> read = open(file.getLocation().toPath(), FleetFiles.kind(file));
        if (read.isSound()) {
            TreeViewer tree = new TreeViewer(parent, SWT.SINGLE);
            tree.setContentProvider(new ModelTree(adapters));
            tree.setLabelProvider(new ModelLabels(adapters));
            tree.setInput(new Object[] {read.root()});
            tree.expandToLevel(2);
            getSite().setSelectionProvider(tree);
            content = tree.getControl();
        } else {
            content = new FaultTable(parent, read.faults());
        }
    }

    private static ReadFile<? extends EObject> open(Path path, FileKind kind) {
        VehicleFiles files = new VehicleFiles();
        return switch (kind == null ? FileKind.VEHICLE : kind) {
            case VEHICLE -> files.openVehicle(path);
            case PARTS -> files.openParts(path);
            case STOCK -> files.openStock(path);
            case PRACTICE -> files.openPractice(path);
        };
    }

    @Override
    public void setFocus() {
        content.setFocus();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // nothing can be changed here
    }

    @Override
    public void doSaveAs() {
        // nothing can be changed here
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void dispose() {
        adapters.dispose();
        super.dispose();
    }
}
