// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import java.util.regex.Pattern;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Terminal;

/**
 * Names as people read them: reference designations with the minus sign of IEC 81346, terminals after the colon of IEC 61666.
 * Names that are no designations stay as they are.
 */
final class Designated {
    private static final Pattern DESIGNATION = Pattern.compile("[A-Z]{1,3}[0-9]+[A-Za-z0-9_]*");

    private Designated() {
    }

    /** {@code -W12} for W12, {@code fridge} for fridge; null for none. */
    static String of(Named element) {
        String name = name(element);
        return name != null && DESIGNATION.matcher(name).matches() ? "-" + name : name;
    }

    /** {@code -X1:3} for a terminal of a device, {@code -XE1} for an earth point; null for none. */
    static String at(Attachment end) {
        return end instanceof Terminal && end.eContainer() instanceof Named device ? of(device) + ":" + name(end) : of(end);
    }

    /** The plain name; null for none and for what could not be read. */
    static String name(Named element) {
        return element == null || element.eIsProxy() ? null : element.getName();
    }

    /** {@code first / second}; the side that is open as three dots; null when both are. */
    static String between(String first, String second) {
        return first == null && second == null ? null
                : (first == null ? "..." : first) + " / " + (second == null ? "..." : second);
    }
}
