// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.fault;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;

/** Labels of model objects, by their item providers. */
public final class ModelLabels extends LabelProvider {
    private final AdapterFactory adapters;

    /** Labels by the item providers of a factory. */
    public ModelLabels(AdapterFactory adapters) {
        this.adapters = adapters;
    }

    @Override
    public String getText(Object element) {
        IItemLabelProvider provider = (IItemLabelProvider) adapters.adapt(element, IItemLabelProvider.class);
        return provider == null ? String.valueOf(element) : provider.getText(element);
    }
}
