// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.part.ViewPart;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.VehicleEditor;

/** A view that follows the vehicle in the active editor: its model, analysis and selection. */
public abstract class DocumentView extends ViewPart {
    private final VehicleDocument.Listener changes = change -> later();
    private final Consumer<Set<String>> selection = ids -> later();
    private final IPartListener2 parts = new IPartListener2() {
        @Override
        public void partActivated(IWorkbenchPartReference part) {
            follow();
        }

        @Override
        public void partBroughtToTop(IWorkbenchPartReference part) {
            follow();
        }

        @Override
        public void partClosed(IWorkbenchPartReference part) {
            follow();
        }
    };
    private VehicleDocument document;
    private Composite control;
    private boolean due;

    @Override
    public final void createPartControl(Composite parent) {
        control = parent;
        create(parent);
        getSite().getPage().addPartListener(parts);
        follow();
        update(document);
    }

    /** Makes the widgets. */
    protected abstract void create(Composite parent);

    /** Shows a document as it is now; null when no vehicle is open. */
    protected abstract void update(VehicleDocument shown);

    /** The vehicle looked at; null for none. */
    protected final VehicleDocument document() {
        return document;
    }

    private void follow() {
        VehicleDocument active = getSite().getPage().getActiveEditor() instanceof VehicleEditor editor
                && editor.document() != null && editor.document().sound() ? editor.document() : null;
        if (active != document) {
            leave();
            document = active;
            if (active != null) {
                active.listen(changes);
                active.selection().listen(selection);
            }
            later();
        }
    }

    private void leave() {
        if (document != null) {
            document.unlisten(changes);
            document.selection().unlisten(selection);
        }
    }

    private void later() {
        if (!due && !control.isDisposed()) {
            due = true;
            control.getDisplay().asyncExec(() -> {
                due = false;
                if (!control.isDisposed()) {
                    update(document);
                }
            });
        }
    }

    @Override
    public void dispose() {
        getSite().getPage().removePartListener(parts);
        leave();
        document = null;
        super.dispose();
    }
}
