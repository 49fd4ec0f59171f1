// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.parts.WaySpec;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Terminal;

/** The grammar of names and their uniqueness within a container. */
public final class Names {
    /** What a name looks like, for messages. */
    public static final String GRAMMAR = "letters, digits and . _ + - after a first letter or digit";
    private static final Pattern FORM = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._+-]*");
    private static final int LONGEST = 80;

    private Names() {
    }

    /** True for a name of the grammar, at most 80 characters long. */
    public static boolean wellFormed(String name) {
        return name != null && name.length() <= LONGEST && FORM.matcher(name).matches();
    }

    /** Reports names out of the grammar and names that occur twice among the children of one object. */
    static void check(EObject container, Consumer<Violation> found) {
        if (container instanceof Named named && named.getName() != null) {
            checkGrammar(named, found);
        }
        checkUnique(container.eContents(), found);
    }

    private static void checkGrammar(Named named, Consumer<Violation> found) {
        String name = named.getName();
        if (!wellFormed(name)) {
            found.accept(Violation.blocking("name-grammar", named, "name", "'" + name + "' is no name", GRAMMAR));
        } else if (named instanceof Device && name.indexOf('.') >= 0) {
            found.accept(Violation.blocking("name-grammar", named, "name",
                    "'" + name + "' has a dot, which parts a device from its terminal", "a device name without a dot"));
        }
    }

    private static void checkUnique(List<EObject> children, Consumer<Violation> found) {
        Map<String, EObject> seen = new HashMap<>();
        for (EObject child : children) {
            if (child instanceof Terminal || !(child instanceof Named named) || named.getName() == null) {
                continue;
            }
            EObject other = seen.putIfAbsent(space(child) + named.getName(), child);
            if (other != null) {
                found.accept(Violation.blocking("name-unique", child, "name",
                        "'" + named.getName() + "' is already the name of a " + kind(other) + " in the same place",
                        "a name of its own"));
            }
        }
    }

    /** A way and its outlet terminal carry the same number by intent. */
    private static String space(EObject child) {
        return child instanceof WaySpec ? "way:" : child instanceof TerminalSpec ? "terminal:" : ":";
    }

    /** The kind of an object in words: its class name in small letters. */
    static String kind(EObject object) {
        return object.eClass().getName().replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(java.util.Locale.ROOT);
    }
}
