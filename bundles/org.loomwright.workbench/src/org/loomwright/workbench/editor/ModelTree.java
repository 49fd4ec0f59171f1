// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.Collection;
import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.edit.provider.IStructuredItemContentProvider;
import org.eclipse.emf.edit.provider.ITreeItemContentProvider;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** The model as a tree, by its item providers. */
final class ModelTree implements ITreeContentProvider {
    private final AdapterFactory factory;

    ModelTree(AdapterFactory factory) {
        this.factory = factory;
    }

    @Override
    public Object[] getElements(Object input) {
        return factory.adapt(input, IStructuredItemContentProvider.class) instanceof IStructuredItemContentProvider provider
                ? provider.getElements(input).toArray() : new Object[0];
    }

    @Override
    public Object[] getChildren(Object parent) {
        ITreeItemContentProvider provider = provider(parent);
        return provider == null ? new Object[0] : array(provider.getChildren(parent));
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

    private ITreeItemContentProvider provider(Object object) {
        return factory.adapt(object, ITreeItemContentProvider.class) instanceof ITreeItemContentProvider provider ? provider
                : null;
    }

    private static Object[] array(Collection<?> objects) {
        return objects.toArray();
    }
}
