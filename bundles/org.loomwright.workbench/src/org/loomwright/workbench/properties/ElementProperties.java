// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.properties;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.views.properties.IPropertySheetPage;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.preference.Units;

/** The properties of what is selected in a vehicle. */
public final class ElementProperties {
    private ElementProperties() {
    }

    /** A page that follows the selection and the model. */
    public static IPropertySheetPage page(VehicleDocument document) {
        return new Page(document);
    }

    private static final class Page extends PropertySheetPage {
        private final VehicleDocument document;
        private final VehicleDocument.Listener listener = this::changed;
        private final IPropertyChangeListener units = event -> shownAnew();
        private IWorkbenchPart part;
        private ISelection selected = StructuredSelection.EMPTY;
        private boolean due;

        Page(VehicleDocument document) {
            this.document = document;
            setPropertySourceProvider(object -> object instanceof EObject element ? new ElementSource(document, element) : null);
            document.listen(listener);
            Units.store().addPropertyChangeListener(units);
        }

        @Override
        public void selectionChanged(IWorkbenchPart from, ISelection selection) {
            part = from;
            selected = selection;
            super.selectionChanged(from, selection);
        }

        /** Names and texts of properties hold the unit: they are made again. */
        private void shownAnew() {
            if (part != null && getControl() != null && !getControl().isDisposed()) {
                ISelection again = selected;
                super.selectionChanged(part, StructuredSelection.EMPTY);
                super.selectionChanged(part, again);
            }
        }

        private void changed(VehicleDocument.Change change) {
            if (change != VehicleDocument.Change.MODEL || due || getControl() == null || getControl().isDisposed()) {
                return;
            }
            due = true;
            getControl().getDisplay().asyncExec(() -> {
                due = false;
                if (getControl() != null && !getControl().isDisposed()) {
                    refresh();
                }
            });
        }

        @Override
        public void dispose() {
            document.unlisten(listener);
            Units.store().removePropertyChangeListener(units);
            super.dispose();
        }
    }
}
