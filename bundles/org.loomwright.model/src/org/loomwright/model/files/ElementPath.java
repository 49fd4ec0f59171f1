// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.parts.Named;

/** Elements in words for messages, for example {@code vehicle heron > arrangement central > cable W3}. */
public final class ElementPath {
    private ElementPath() {
    }

    /** The element with all that contain it, outermost first. */
    public static String of(EObject object) {
        StringBuilder path = new StringBuilder(step(object));
        for (EObject container = object.eContainer(); container != null; container = container.eContainer()) {
            path.insert(0, step(container) + " > ");
        }
        return path.toString();
    }

    /** The kind of an element in words: {@code EarthPoint} is an earth point. */
    public static String kind(EClass eClass) {
        return eClass.getName().replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    }

    /** The kind with its article: a device, an earth point. */
    public static String aKind(EClass eClass) {
        String kind = kind(eClass);
        return ("aeiou".indexOf(kind.charAt(0)) >= 0 ? "an " : "a ") + kind;
    }

    private static String step(EObject object) {
        String kind = kind(object.eClass());
        if (object instanceof Named named && named.getName() != null && !named.getName().isEmpty()) {
            return kind + " " + named.getName();
        }
        if (object.eContainer() == null || !object.eContainmentFeature().isMany()) {
            return kind;
        }
        return kind + " number " + (((List<?>) object.eContainer().eGet(object.eContainmentFeature())).indexOf(object) + 1);
    }
}
