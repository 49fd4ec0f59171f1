// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.welcome;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;
import org.loomwright.workbench.app.Icons;

/** Input of the first screen; there is only one, and it is not restored. */
final class WelcomeInput implements IEditorInput {
    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Icons.of("vehicle");
    }

    @Override
    public String getName() {
        return Messages.Welcome_title;
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return Messages.Welcome_title;
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WelcomeInput;
    }

    @Override
    public int hashCode() {
        return WelcomeInput.class.hashCode();
    }
}
