// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.LinkedHashSet;
import java.util.Set;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Terminal;

/** The names that could have been written in a place. */
final class VisibleNames {
    private VisibleNames() {
    }

    /** Names of elements of a type that an element can refer to, nearest first; for terminals those of devices. */
    static Set<String> of(EObject referrer, EClass type) {
        Set<String> names = new LinkedHashSet<>();
        for (EObject scope = referrer; scope != null; scope = scope.eContainer()) {
            add(scope, type, names);
        }
        for (EObject library : NameResolver.libraries(NameResolver.root(referrer))) {
            add(library, type, names);
        }
        return names;
    }

    private static void add(EObject scope, EClass type, Set<String> names) {
        for (EObject child : scope.eContents()) {
            boolean fits = type.isInstance(child) && !(child instanceof Terminal)
                    || NameResolver.mayBeTerminal(type) && child instanceof Device;
            if (fits && child instanceof Named named && named.getName() != null) {
                names.add(named.getName());
            }
        }
    }
}
