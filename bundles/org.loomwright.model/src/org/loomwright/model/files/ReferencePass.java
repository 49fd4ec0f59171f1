// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.StringTokenizer;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.InternalEList;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.PartsLibrary;

/** Binds all references of a file once it was read: first those to other files, then names, which may come out of these. */
final class ReferencePass {
    private final Faults faults;
    private final CrossFile crossFile;
    private final WrittenNames writtenNames;
    private final Set<String> failedFiles = new LinkedHashSet<>();
    private boolean librariesIncomplete;

    ReferencePass(VehicleResource resource, Faults faults, WrittenNames writtenNames) {
        this.faults = faults;
        this.crossFile = new CrossFile(resource);
        this.writtenNames = writtenNames;
    }

    /** Binds them; what cannot be bound is reported and left out. */
    void bind(List<PendingReference> references) {
        faults.startPass();
        for (PendingReference pending : references) {
            if (FileKind.ofRoot(pending.reference().getEReferenceType()).isPresent()) {
                bind(pending);
            }
        }
        faults.startPass();
        for (PendingReference pending : references) {
            if (FileKind.ofRoot(pending.reference().getEReferenceType()).isEmpty()) {
                bind(pending);
            }
        }
    }

    @SuppressWarnings("unchecked")
    private void bind(PendingReference pending) {
        StringTokenizer names = new StringTokenizer(pending.text());
        if (!pending.reference().isMany()) {
            if (names.countTokens() > 1) {
                report(pending, "'" + pending.text() + "' is more than one name", "one name");
            } else if (names.hasMoreTokens()) {
                EObject target = target(pending, names.nextToken());
                if (target != null) {
                    pending.referrer().eSet(pending.reference(), target);
                }
            }
            return;
        }
        InternalEList<EObject> list = (InternalEList<EObject>) pending.referrer().eGet(pending.reference());
        Set<EObject> seen = new LinkedHashSet<>();
        while (names.hasMoreTokens()) {
            String name = names.nextToken();
            EObject target = target(pending, name);
            if (target != null && !seen.add(target)) {
                report(pending, "'" + name + "' is listed twice", "each name once");
            } else if (target != null) {
                list.addUnique(target);
            }
        }
    }

    private EObject target(PendingReference pending, String name) {
        EReference reference = pending.reference();
        boolean toRoot = FileKind.ofRoot(reference.getEReferenceType()).isPresent();
        if (name.indexOf('#') >= 0) {
            return acrossFiles(pending, name, toRoot);
        }
        if (toRoot) {
            librariesIncomplete = true;
            report(pending, "'" + name + "' names no file", "the relative path of a file and #/, for example "
                    + (name.indexOf('.') > 0 ? name : "parts/base.parts") + "#/");
            return null;
        }
        List<Target> meanings = NameResolver.meanings(pending.referrer(), reference, name);
        if (meanings.size() == 1) {
            EObject target = meanings.get(0).take();
            if (name.indexOf('/') >= 0 || name.charAt(0) == '@') {
                writtenNames.keep(pending.referrer(), reference, target, name);
            }
            return target;
        }
        if (meanings.isEmpty()) {
            dangling(pending, name);
        } else {
            ambiguous(pending, name, meanings);
        }
        return null;
    }

    private EObject acrossFiles(PendingReference pending, String text, boolean toRoot) {
        String file = text.substring(0, text.indexOf('#'));
        EObject root = failedFiles.contains(file) ? null : otherRoot(pending, file);
        if (root == null) {
            librariesIncomplete |= toRoot;
            return null;
        }
        try {
            EObject target = crossFile.find(root, text, pending.reference().getEReferenceType());
            writtenNames.keep(pending.referrer(), pending.reference(), target, text);
            return target;
        } catch (RefusedFileException e) {
            librariesIncomplete |= toRoot;
            report(pending, e.getMessage(), e.expected());
            return null;
        }
    }

    /** The root of another file. That it cannot be read is said once, or by that file's own faults. */
    private EObject otherRoot(PendingReference pending, String file) {
        try {
            EObject root = crossFile.root(file);
            if (root == null) {
                failedFiles.add(file);
            }
            return root;
        } catch (RefusedFileException e) {
            failedFiles.add(file);
            report(pending, e.getMessage(), e.expected());
            return null;
        }
    }

    /** Other files that could not be read; what was to be found there is missing in the model. */
    Set<String> failedFiles() {
        return failedFiles;
    }

    private void dangling(PendingReference pending, String name) {
        EClass type = pending.reference().getEReferenceType();
        if (librariesIncomplete && CrossFile.intoLibraries(type)) {
            return;
        }
        if (faults.isFull()) {
            report(pending, name, null);
            return;
        }
        int dot = NameResolver.mayBeTerminal(type) ? name.indexOf('.') : -1;
        String wanted = dot > 0 ? name.substring(0, dot) : name;
        String kind = dot > 0 ? "device" : NameResolver.mayBeTerminal(type) ? "earth point" : ElementPath.kind(type);
        String message = "there is no " + kind + " '" + wanted + "' here";
        EObject other = otherKind(pending.referrer(), wanted);
        if (other != null) {
            message += "; '" + wanted + "' is " + ElementPath.aKind(other.eClass());
        }
        String near = SimilarNames.nearest(wanted, VisibleNames.of(pending.referrer(), type));
        report(pending, message, (NameResolver.mayBeTerminal(type) ? "DEVICE.TERMINAL or the name of an earth point"
                : "the name of a " + kind) + (near == null ? "" : "; probably " + near + (dot > 0 ? name.substring(dot) : "")));
    }

    /** Something else of that name in sight. */
    private static EObject otherKind(EObject referrer, String name) {
        for (EObject scope = referrer; scope != null; scope = scope.eContainer()) {
            List<EObject> children = ScopeIndex.children(scope, name);
            if (!children.isEmpty()) {
                return children.get(0);
            }
        }
        return null;
    }

    private void ambiguous(PendingReference pending, String name, List<Target> meanings) {
        if (faults.isFull()) {
            report(pending, name, null);
            return;
        }
        List<String> elements = new ArrayList<>();
        List<String> ways = new ArrayList<>();
        EObject own = NameResolver.root(pending.referrer());
        for (Target meaning : meanings) {
            EObject element = meaning.element();
            EObject root = NameResolver.root(element);
            elements.add(ElementPath.of(element));
            String unmistakable = Fragments.unmistakable(element) + (meaning.terminal() == null ? "" : "." + meaning.terminal());
            ways.add(root == own || !(root instanceof PartsLibrary) ? unmistakable
                    : ((Named) root).getName() + "/" + unmistakable);
        }
        boolean samePlace = meanings.stream().map(m -> m.element().eContainer()).distinct().count() == 1;
        report(pending, "'" + name + "' is ambiguous: it may be " + String.join(" or ", elements),
                samePlace ? "names that differ" : String.join(" or ", ways));
    }

    private void report(PendingReference pending, String message, String expected) {
        faults.attribute(pending.tag(), pending.reference().getName(), pending.referrer(), message, expected);
    }
}
