// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.HashSet;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.parts.WaySpec;
import org.loomwright.model.rules.Names;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;

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
        return free(taken(container), prefix);
    }

    /**
     * The first name with a prefix that is free and neither hides nor is hidden by a name of what all arrangements share: for an
     * arrangement, names of the vehicle are taken too, for the vehicle those of all arrangements.
     */
    public static String unshadowed(EObject container, String prefix) {
        return free(visible(container), prefix);
    }

    /** Names that a new element of a container should not have; see {@link #unshadowed}. */
    static Set<String> visible(EObject container) {
        Set<String> taken = taken(container);
        if (container instanceof Arrangement && container.eContainer() instanceof Vehicle vehicle) {
            taken.addAll(taken(vehicle));
        } else if (container instanceof Vehicle vehicle) {
            vehicle.getArrangements().forEach(arrangement -> taken.addAll(taken(arrangement)));
        }
        return taken;
    }

    static String free(Set<String> taken, String prefix) {
        int number = 1;
        while (taken.contains(prefix + number)) {
            number++;
        }
        return prefix + number;
    }

    private static Set<String> taken(EObject container) {
        Set<String> taken = new HashSet<>();
        for (EObject child : container.eContents()) {
            if (child instanceof Named named && named.getName() != null) {
                taken.add(named.getName());
            }
        }
        return taken;
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
