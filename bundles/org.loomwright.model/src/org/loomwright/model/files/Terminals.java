// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.InternalEList;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.VehiclePackage;

/**
 * Terminals of devices, made when they are first asked for. They are not part of the file: whether the device's
 * part has such a terminal is a question for the rules.
 */
public final class Terminals {
    private Terminals() {
    }

    /**
     * The terminal of a device, made if need be. Making one sends no notification, so that looking at a model
     * does not count as changing it.
     *
     * @param name name of the terminal, for example {@code 30} or {@code L+}
     */
    public static Terminal of(Device device, String name) {
        return find(device, name).orElseGet(() -> make(device, name));
    }

    /** The terminal of a device if it was asked for before. */
    public static Optional<Terminal> find(Device device, String name) {
        for (EObject child : ScopeIndex.children(device, name)) {
            if (child instanceof Terminal terminal) {
                return Optional.of(terminal);
            }
        }
        return Optional.empty();
    }

    /** The device a terminal belongs to; null when it was taken out of the model. */
    public static Device deviceOf(Terminal terminal) {
        return terminal.eContainer() instanceof Device device ? device : null;
    }

    private static Terminal make(Device device, String name) {
        Terminal terminal = VehicleFactory.eINSTANCE.createTerminal();
        terminal.setName(name);
        ((InternalEList<Terminal>) device.getTerminals()).basicAdd(terminal, null);
        ((InternalEObject) terminal).eInverseAdd((InternalEObject) device,
                InternalEObject.EOPPOSITE_FEATURE_BASE - VehiclePackage.DEVICE__TERMINALS, null, null);
        if (device.eResource() instanceof VehicleResource resource) {
            resource.scopes().addedSilently(device, terminal);
        }
        return terminal;
    }
}
