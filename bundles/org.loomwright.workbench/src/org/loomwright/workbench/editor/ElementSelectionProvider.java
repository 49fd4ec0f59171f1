// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.eclipse.core.runtime.ListenerList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.loomwright.model.files.Fragments;

/** What is selected in a document as the platform's other parts want it: objects of the model. */
public final class ElementSelectionProvider implements ISelectionProvider {
    private final VehicleDocument document;
    private final ListenerList<ISelectionChangedListener> listeners = new ListenerList<>();

    /** The provider of a document. */
    public ElementSelectionProvider(VehicleDocument document) {
        this.document = document;
        document.selection().listen(ids -> {
            SelectionChangedEvent event = new SelectionChangedEvent(this, getSelection());
            listeners.forEach(listener -> listener.selectionChanged(event));
        });
    }

    @Override
    public IStructuredSelection getSelection() {
        List<EObject> elements = new ArrayList<>();
        document.selection().ids().forEach(id -> elements.add(document.element(id)));
        elements.removeIf(Objects::isNull);
        return elements.isEmpty() ? new StructuredSelection(document.vehicle()) : new StructuredSelection(elements);
    }

    @Override
    public void setSelection(ISelection selection) {
        document.selection().set(ids(selection));
    }

    /** Ids of selected objects of the model. */
    public static List<String> ids(ISelection selection) {
        List<String> ids = new ArrayList<>();
        if (selection instanceof IStructuredSelection structured) {
            for (Object each : structured) {
                if (each instanceof EObject element && element.eContainer() != null) {
                    ids.add(Fragments.of(element));
                }
            }
        }
        return ids;
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }
}
