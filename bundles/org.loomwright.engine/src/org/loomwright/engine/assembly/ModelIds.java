// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Terminal;

/**
 * Ids of model objects: the names on the way from the root, as in files and markers. The same as the fragments of the files
 * wherever names are unique, found without looking at other objects.
 */
final class ModelIds {
    /** Id of a root. */
    static final String ROOT = "/";

    private ModelIds() {
    }

    /** For example {@code central/X1}; {@code central/X1.3} for a terminal; {@code /} for a root. */
    static String of(EObject object) {
        EObject container = object.eContainer();
        if (container == null) {
            return ROOT;
        }
        String own = segment(object, container);
        String outer = of(container);
        if (ROOT.equals(outer)) {
            return own;
        }
        return outer + (object instanceof Terminal ? "." : "/") + own;
    }

    private static String segment(EObject object, EObject container) {
        if (object instanceof Named named && named.getName() != null && !named.getName().isEmpty()) {
            return named.getName();
        }
        return ((InternalEObject) container).eURIFragmentSegment(object.eContainingFeature(), object);
    }
}
