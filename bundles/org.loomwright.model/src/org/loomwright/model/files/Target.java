// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Terminal;

/**
 * What a reference may mean: an element, or a terminal of a device that need not exist yet.
 *
 * @param element  the element, or the device
 * @param terminal name of the device's terminal; null when the element itself is meant
 */
record Target(EObject element, String terminal) {
    /** The target that an existing element is. */
    static Target of(EObject object) {
        return object instanceof Terminal terminal && terminal.eContainer() instanceof Device device
                ? new Target(device, terminal.getName()) : new Target(object, null);
    }

    boolean is(EObject object) {
        Target other = of(object);
        return element == other.element && java.util.Objects.equals(terminal, other.terminal);
    }

    /** The element itself; a terminal is made if need be. */
    EObject take() {
        return terminal == null ? element : Terminals.of((Device) element, terminal);
    }
}
