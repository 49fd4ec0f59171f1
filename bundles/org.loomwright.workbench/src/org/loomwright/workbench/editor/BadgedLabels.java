// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;
import org.loomwright.diagram.services.FindingMark;
import org.loomwright.model.files.Fragments;

/** Labels of the model with the badge of the worst that was found in or below an element. */
final class BadgedLabels extends LabelProvider {
    private final VehicleDocument document;
    private final BadgeImages badges;

    BadgedLabels(VehicleDocument document, Display display) {
        this.document = document;
        badges = new BadgeImages(display);
    }

    @Override
    public String getText(Object element) {
        return document.domain().getAdapterFactory().adapt(element, IItemLabelProvider.class) instanceof IItemLabelProvider labels
                ? labels.getText(element) : super.getText(element);
    }

    @Override
    public Image getImage(Object element) {
        if (!(element instanceof EObject object) || object.eContainer() == null || document.analysis() == null
                || !document.analysis().worked()) {
            return badges.of(null);
        }
        String id = Fragments.of(object);
        FindingMark mark = document.analysis().view().markWithin(id);
        FindingMark cause = mark == null ? document.analysis().view().causeMark(id) : null;
        return badges.of(mark != null ? mark.badge() : cause != null ? cause.badge() : null);
    }

    @Override
    public void dispose() {
        badges.dispose();
        super.dispose();
    }
}
