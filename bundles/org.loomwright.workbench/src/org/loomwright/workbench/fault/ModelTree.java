// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.fault;

import java.util.Collection;
import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.edit.provider.ITreeItemContentProvider;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** Model objects as a tree, by their item providers. */
public final class ModelTree implements ITreeContentProvider {
    private static final Object[] NONE = {};

    private final AdapterFactory adapters;

    /** A tree over the item providers of a factory. */
    public ModelTree(AdapterFactory adapters) {
        this.adapters = adapters;
    }

    @Override
    public Object[] getElements(Object input) {
        return input instanceof Object[] roots ? roots : getChildren(input);
    }

    @Override
    public Object[] getChildren(Object element) {
        ITreeItemContentProvider provider = provider(element);
        Collection<?> children = provider == null ? null : provider.getChildren(element);
        return children == null ? NONE : children.toArray();
    }

    @Override
    public Object getParent(Object element) {
        ITreeItemContentProvider provider = provider(element);
        return provider == null ? null : provider.getParent(element);
    }

    @Override
    public boolean hasChildren(Object element) {
        ITreeItemContentProvider provider = provider(element);
        return provider != null && provider.hasChildren(element);
    }

    private ITreeItemContentProvider provider(Object element) {
        return (ITreeItemContentProvider) adapters.adapt(element, ITreeItemContentProvider.class);
    }
}
