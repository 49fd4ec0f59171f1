// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;

/** The tree of a vehicle beside its drawings; selection and findings in step with them. */
final class VehicleOutline extends ContentOutlinePage {
    private final VehicleDocument document;
    private final Consumer<Set<String>> selection = this::selected;
    private final VehicleDocument.Listener changes = this::changed;
    private boolean own;
    private boolean due;

    VehicleOutline(VehicleDocument document) {
        this.document = document;
    }

    @Override
    public void createControl(Composite parent) {
        super.createControl(parent);
        getTreeViewer().setUseHashlookup(true);
        getTreeViewer().setContentProvider(new ModelTree(document.domain().getAdapterFactory()));
        getTreeViewer().setLabelProvider(new BadgedLabels(document, parent.getDisplay()));
        getTreeViewer().setInput(document.vehicle());
        getTreeViewer().addPostSelectionChangedListener(event -> {
            if (!own) {
                own = true;
                document.selection().set(ElementSelectionProvider.ids(event.getSelection()));
                own = false;
            }
        });
        document.selection().listen(selection);
        document.listen(changes);
        if (document.arrangement() != null) {
            getTreeViewer().expandToLevel(document.arrangement(), 1);
        }
    }

    private void selected(Set<String> ids) {
        if (own || getTreeViewer().getControl().isDisposed()) {
            return;
        }
        List<EObject> elements = new ArrayList<>();
        ids.forEach(id -> elements.add(document.element(id)));
        elements.removeIf(Objects::isNull);
        own = true;
        getTreeViewer().setSelection(new StructuredSelection(elements), true);
        own = false;
    }

    private void changed(VehicleDocument.Change change) {
        if (change == VehicleDocument.Change.DIRTY || due || getTreeViewer().getControl().isDisposed()) {
            return;
        }
        due = true;
        getTreeViewer().getControl().getDisplay().asyncExec(() -> {
            due = false;
            if (!getTreeViewer().getControl().isDisposed()) {
                own = true;
                getTreeViewer().refresh(true);
                own = false;
            }
        });
    }

    @Override
    public void dispose() {
        document.selection().unlisten(selection);
        document.unlisten(changes);
        super.dispose();
    }
}
