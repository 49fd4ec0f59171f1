// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;

/** The workbench's own icons, 16 px, drawn to be seen on light and on dark ground. */
public final class Icons {
    private Icons() {
    }

    /** The icon of a name, for example {@code vehicle}. */
    public static ImageDescriptor of(String name) {
        return ResourceLocator.imageDescriptorFromBundle(Ids.PLUGIN, "icons/" + name + ".svg")
                .orElseGet(ImageDescriptor::getMissingImageDescriptor);
    }
}
