// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Which elements may refer to which: those of one vehicle, and of an arrangement only from within it. */
final class Scopes {
    private Scopes() {
    }

    /** The vehicle an element belongs to. */
    static Vehicle vehicle(EObject element) {
        if (EcoreUtil.getRootContainer(element) instanceof Vehicle vehicle) {
            return vehicle;
        }
        throw new IllegalArgumentException("the " + ElementPath.of(element) + " belongs to no vehicle");
    }

    /** The arrangement an element is in; null for what all arrangements share. */
    static Arrangement arrangement(EObject element) {
        for (EObject at = element; at != null; at = at.eContainer()) {
            if (at instanceof Arrangement arrangement) {
                return arrangement;
            }
        }
        return null;
    }

    /** Refuses a reference to an element of another vehicle or of an arrangement the referrer is not in. */
    static void requireVisible(EObject referrer, EObject target) {
        if (target == null) {
            return;
        }
        if (vehicle(referrer) != vehicle(target)) {
            throw new IllegalArgumentException("the " + ElementPath.of(target) + " belongs to another vehicle than the "
                    + ElementPath.of(referrer));
        }
        Arrangement home = arrangement(target);
        if (home != null && home != arrangement(referrer)) {
            throw new IllegalArgumentException("the " + ElementPath.of(target) + " is in the arrangement " + home.getName()
                    + ", which the " + ElementPath.of(referrer) + " is not");
        }
    }

    /** Refuses a missing argument. */
    static void require(Object value, String what) {
        if (value == null) {
            throw new IllegalArgumentException("no " + what + " given");
        }
    }
}
