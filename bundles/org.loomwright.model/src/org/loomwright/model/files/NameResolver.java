// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.PartsPackage;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.VehiclePackage;

/**
 * What a name means where it is written. A bare name is looked for among the children of the referring element, then of
 * its container, and so on up to the root, and at last in the libraries the file uses; the reference's type decides which
 * of them count. {@code a/b} is a path of names from the root, or from the library called {@code a};
 * {@code /a} means the root's child where a nearer {@code a} hides it. A terminal is {@code DEVICE.TERMINAL}.
 */
final class NameResolver {
    private NameResolver() {
    }

    /** All that a name may mean: none when it is dangling, several when it is ambiguous. Never several of one scope silently. */
    static List<Target> meanings(EObject referrer, EReference reference, String name) {
        EClass type = reference.getEReferenceType();
        if (name.indexOf('/') >= 0 || name.charAt(0) == '@') {
            return byPath(root(referrer), type, name);
        }
        for (EObject scope = referrer; scope != null; scope = scope.eContainer()) {
            List<Target> found = within(scope, type, name);
            if (!found.isEmpty()) {
                return found;
            }
        }
        List<Target> found = new ArrayList<>();
        for (PartsLibrary library : libraries(root(referrer))) {
            found.addAll(within(library, type, name));
        }
        return found;
    }

    /** The shortest text that means the target where the referrer is. */
    static String name(EObject referrer, EReference reference, EObject target) {
        String bare = bareName(target);
        if (bare != null && means(referrer, reference, bare, target)) {
            return bare;
        }
        EObject root = root(target);
        String path = Fragments.unmistakable(target);
        String library = root instanceof Named named && named.getName() != null ? named.getName() + "/" : "/";
        String absolute = path.indexOf('/') >= 0 || path.charAt(0) == '@' ? path : "/" + path;
        String candidate = root == root(referrer) ? absolute : library + path;
        return means(referrer, reference, candidate, target) ? candidate : null;
    }

    static boolean means(EObject referrer, EReference reference, String name, EObject target) {
        List<Target> meanings = meanings(referrer, reference, name);
        return meanings.size() == 1 && meanings.get(0).is(target);
    }

    /** The libraries a file uses, and those they use, each once, nearest first. */
    static Set<PartsLibrary> libraries(EObject root) {
        Set<PartsLibrary> known = new LinkedHashSet<>();
        List<EObject> open = new ArrayList<>(List.of(root));
        for (int i = 0; i < open.size(); i++) {
            for (EReference reference : open.get(i).eClass().getEAllReferences()) {
                if (!reference.isContainment() && reference.getEReferenceType() == PartsPackage.Literals.PARTS_LIBRARY) {
                    for (EObject library : targets(open.get(i), reference)) {
                        if (library != root && !library.eIsProxy() && known.add((PartsLibrary) library)) {
                            open.add(library);
                        }
                    }
                }
            }
        }
        return known;
    }

    /** The values of a reference, single or not. */
    @SuppressWarnings("unchecked")
    static List<EObject> targets(EObject object, EReference reference) {
        Object value = object.eGet(reference);
        return value == null ? List.of() : reference.isMany() ? (List<EObject>) value : List.of((EObject) value);
    }

    static EObject root(EObject object) {
        return EcoreUtil.getRootContainer(object);
    }

    static boolean mayBeTerminal(EClass type) {
        return VehiclePackage.Literals.ATTACHMENT.isSuperTypeOf(type) && type != VehiclePackage.Literals.EARTH_POINT;
    }

    private static String bareName(EObject target) {
        Target meant = Target.of(target);
        String name = meant.element() instanceof Named named ? named.getName() : null;
        if (name == null || name.isEmpty() || meant.element().eContainer() == null
                || name.chars().anyMatch(c -> c == '/' || c == '#' || c == ':' || c <= ' ')) {
            return null;
        }
        return meant.terminal() == null ? name : name + "." + meant.terminal();
    }

    private static List<Target> within(EObject scope, EClass type, String name) {
        List<Target> found = typed(ScopeIndex.children(scope, name), type);
        int dot = name.indexOf('.');
        if (dot > 0 && dot < name.length() - 1 && mayBeTerminal(type)) {
            found = new ArrayList<>(found);
            for (EObject device : ScopeIndex.children(scope, name.substring(0, dot))) {
                if (device instanceof Device) {
                    found.add(new Target(device, name.substring(dot + 1)));
                }
            }
        }
        return found;
    }

    private static List<Target> typed(List<EObject> children, EClass type) {
        if (children.isEmpty()) {
            return List.of();
        }
        List<Target> found = new ArrayList<>(children.size());
        for (EObject child : children) {
            if (type.isInstance(child) && !(child instanceof Attachment && child.eContainer() instanceof Device)) {
                found.add(new Target(child, null));
            }
        }
        return found;
    }

    private static List<Target> byPath(EObject root, EClass type, String path) {
        String[] segments = (path.charAt(0) == '/' ? path.substring(1) : path).split("/", -1);
        List<Target> found = descend(root, type, segments, 0);
        if (!found.isEmpty() || path.charAt(0) == '/' || segments.length < 2) {
            return found;
        }
        if (root instanceof Named named && segments[0].equals(named.getName())) {
            return descend(root, type, segments, 1);
        }
        List<Target> all = new ArrayList<>();
        for (PartsLibrary library : libraries(root)) {
            if (segments[0].equals(library.getName())) {
                all.addAll(descend(library, type, segments, 1));
            }
        }
        return all;
    }

    private static List<Target> descend(EObject start, EClass type, String[] segments, int first) {
        List<EObject> current = List.of(start);
        for (int i = first; i < segments.length - 1; i++) {
            List<EObject> next = new ArrayList<>();
            for (EObject scope : current) {
                next.addAll(children(scope, segments[i]));
            }
            current = next;
        }
        List<Target> found = new ArrayList<>();
        String last = segments[segments.length - 1];
        for (EObject scope : current) {
            if (last.isEmpty()) {
                continue;
            }
            if (last.charAt(0) == '@') {
                EObject child = Fragments.child(scope, last);
                if (type.isInstance(child)) {
                    found.add(Target.of(child));
                }
            } else {
                found.addAll(within(scope, type, last));
            }
        }
        return found;
    }

    private static List<EObject> children(EObject scope, String segment) {
        if (segment.isEmpty()) {
            return List.of();
        }
        if (segment.charAt(0) != '@') {
            return ScopeIndex.children(scope, segment);
        }
        EObject child = Fragments.child(scope, segment);
        return child == null ? List.of() : List.of(child);
    }
}
