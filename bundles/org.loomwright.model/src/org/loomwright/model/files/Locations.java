// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import org.eclipse.emf.ecore.EObject;

/** Where elements were written: as of the last load, later edits do not move it. */
public final class Locations {
    private Locations() {
    }

    /** Line and column of an element's start tag; {@link Location#UNKNOWN} for one that was not read from a file. */
    public static Location of(EObject object) {
        return object.eResource() instanceof VehicleResource resource ? resource.location(object) : Location.UNKNOWN;
    }

    /** The file an element is in, as a path or URI to show; null when it is in none. */
    public static String file(EObject object) {
        return object.eResource() == null || object.eResource().getURI() == null ? null
                : FilePaths.shown(object.eResource().getURI());
    }
}
