// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;

/** Makes resources for vehicle, parts, stock and practice files; also to be registered for these extensions in Eclipse. */
public final class VehicleResourceFactory implements Resource.Factory {
    private final Migration migration;

    /** A factory of resources that read files of all formats known to this program. */
    public VehicleResourceFactory() {
        this(Migration.standard());
    }

    /** A factory of resources with a migration of their own. */
    public VehicleResourceFactory(Migration migration) {
        this.migration = migration;
    }

    @Override
    public VehicleResource createResource(URI uri) {
        return new VehicleResource(uri, migration);
    }
}
