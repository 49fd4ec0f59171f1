// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Terminal;

/**
 * The identity of elements within their file: a path of names below the root, for example {@code central/W1}; a terminal is
 * {@code central/X1.3}; what has no name of its own is written by position, for example {@code central/W1/@cores.0}.
 * The root is {@code /}. Of several children with one name the first in the model's order has the name.
 */
public final class Fragments {
    /** Fragment of the root. */
    public static final String ROOT = "/";

    private Fragments() {
    }

    /** The fragment of an element, from the outermost container it is in. */
    public static String of(EObject object) {
        return path(object, true);
    }

    /** A fragment that also tells apart children of the same name: all of these are written by position. */
    static String unmistakable(EObject object) {
        return path(object, false);
    }

    /**
     * The element of a fragment.
     *
     * @param root     the root of the file
     * @param fragment a fragment as made by {@link #of}
     * @return the element; null when there is none. A terminal of an existing device always exists.
     */
    public static EObject find(EObject root, String fragment) {
        EObject current = root;
        for (String segment : fragment.split("/")) {
            if (!segment.isEmpty() && current != null) {
                current = child(current, segment);
            }
        }
        return current;
    }

    private static String path(EObject object, boolean firstHasName) {
        if (object.eContainer() == null) {
            return ROOT;
        }
        Deque<String> segments = new ArrayDeque<>();
        EObject current = object;
        String terminal = "";
        if (object instanceof Terminal && object.eContainer() instanceof Device device && device.eContainer() != null) {
            terminal = "." + ((Terminal) object).getName();
            current = device;
        }
        for (; current.eContainer() != null; current = current.eContainer()) {
            segments.addFirst(segment(current, firstHasName));
        }
        return String.join("/", segments) + terminal;
    }

    private static String segment(EObject object, boolean firstHasName) {
        EObject container = object.eContainer();
        if (object instanceof Named named && isName(named.getName())) {
            List<EObject> same = ScopeIndex.children(container, named.getName());
            if (!same.isEmpty() && same.get(0) == object && (firstHasName || same.size() == 1)) {
                return named.getName();
            }
        }
        EStructuralFeature feature = object.eContainmentFeature();
        return "@" + feature.getName()
                + (feature.isMany() ? "." + ((List<?>) container.eGet(feature)).indexOf(object) : "");
    }

    /** True for what can stand in a path without being taken for something else. */
    private static boolean isName(String name) {
        return name != null && !name.isEmpty() && Character.isLetterOrDigit(name.charAt(0))
                && name.chars().noneMatch(c -> c == '/' || c == '#' || c == ':' || c <= ' ');
    }

    static EObject child(EObject container, String segment) {
        if (segment.charAt(0) == '@') {
            return byPosition(container, segment);
        }
        List<EObject> named = ScopeIndex.children(container, segment);
        if (!named.isEmpty()) {
            return named.get(0);
        }
        int dot = segment.indexOf('.');
        if (dot > 0 && dot < segment.length() - 1) {
            EObject device = segment.charAt(0) == '@' ? null : firstDevice(container, segment.substring(0, dot));
            return device == null ? null : Terminals.of((Device) device, segment.substring(dot + 1));
        }
        return null;
    }

    private static EObject firstDevice(EObject container, String name) {
        for (EObject child : ScopeIndex.children(container, name)) {
            if (child instanceof Device) {
                return child;
            }
        }
        return null;
    }

    /** {@code @devices.3}; with a second dot the terminal of a device: {@code @devices.3.30}. */
    private static EObject byPosition(EObject container, String segment) {
        String[] parts = segment.substring(1).split("\\.", 3);
        EStructuralFeature feature = container.eClass().getEStructuralFeature(parts[0]);
        if (feature == null || !(feature instanceof org.eclipse.emf.ecore.EReference reference) || !reference.isContainment()) {
            return null;
        }
        if (!feature.isMany()) {
            return (EObject) container.eGet(feature);
        }
        List<?> list = (List<?>) container.eGet(feature);
        if (parts.length < 2 || !parts[1].matches("[0-9]{1,9}") || Integer.parseInt(parts[1]) >= list.size()) {
            return null;
        }
        EObject found = (EObject) list.get(Integer.parseInt(parts[1]));
        return parts.length == 2 ? found : found instanceof Device device ? Terminals.of(device, parts[2]) : null;
    }
}
