// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.eclipse.emf.edit.provider.ComposedAdapterFactory;
import org.eclipse.emf.edit.provider.ReflectiveItemProviderAdapterFactory;
import org.eclipse.emf.edit.provider.resource.ResourceItemProviderAdapterFactory;

/**
 * Item providers of all files of this program, of the resources that hold them and, reflectively, of anything else: labels as
 * people read them, with designations after IEC 81346 and units; children and properties as generated. One thread at a time;
 * {@link #dispose()} when no longer needed.
 */
public final class LoomwrightAdapterFactory extends ComposedAdapterFactory {

    /** A factory of its own; nothing is shared with another. */
    public LoomwrightAdapterFactory() {
        addAdapterFactory(new ResourceItemProviderAdapterFactory());
        addAdapterFactory(new VehicleProviderFactory());
        addAdapterFactory(new PartsProviderFactory());
        addAdapterFactory(new PracticeProviderFactory());
        addAdapterFactory(new ReflectiveItemProviderAdapterFactory());
    }
}
