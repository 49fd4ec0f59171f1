// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.parts.WaySpec;
import org.loomwright.model.rules.Names;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Terminal;

/** Names for new and renamed elements. */
public final class NewNames {
    private NewNames() {
    }

    /**
     * The first free name with a prefix, for example W13 after W1 to W12.
     *
     * @param container where the element goes
     * @param prefix    class letters, for example W or XE
     */
    public static String free(EObject container, String prefix) {
        java.util.Set<String> taken = new java.util.HashSet<>();
        for (EObject child : container.eContents()) {
            if (child instanceof Named named && named.getName() != null) {
                taken.add(named.getName());
            }
        }
        int number = 1;
        while (taken.contains(prefix + number)) {
            number++;
        }
        return prefix + number;
    }

    /**
     * Checks a name for an element of a container.
     *
     * @throws IllegalArgumentException when it is no name or taken
     */
    static void check(EObject container, EObject element, String name) {
        if (!Names.wellFormed(name)) {
            throw new IllegalArgumentException("'" + name + "' is no name: use " + Names.GRAMMAR);
        }
        if (element instanceof Device && name.indexOf('.') >= 0) {
            throw new IllegalArgumentException("'" + name + "' has a dot, which parts a device from its terminal");
        }
        if (container == null) {
            return;
        }
        for (EObject other : container.eContents()) {
            if (other != element && other instanceof Named named && name.equals(named.getName()) && !pair(element, other)) {
                throw new IllegalArgumentException("'" + name + "' is already the name of "
                        + ElementPath.aKind(other.eClass()) + " in the same place");
            }
        }
    }

    /** A way and its outlet terminal carry the same number by intent; terminals of devices are named by the part. */
    private static boolean pair(EObject a, EObject b) {
        return a instanceof WaySpec && b instanceof TerminalSpec || a instanceof TerminalSpec && b instanceof WaySpec
                || b instanceof Terminal;
    }
}
