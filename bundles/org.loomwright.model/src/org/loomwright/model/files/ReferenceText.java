// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.resource.Resource;

/** How references are written: names where a name will do, else the relative URI of the other file and a fragment. */
final class ReferenceText {
    private final VehicleResource resource;

    ReferenceText(VehicleResource resource) {
        this.resource = resource;
    }

    /** The text of a reference, several separated by blanks; null when there are no targets. */
    String of(EObject referrer, EReference reference) throws RefusedFileException {
        StringBuilder text = new StringBuilder();
        for (EObject target : NameResolver.targets(referrer, reference)) {
            text.append(text.isEmpty() ? "" : " ").append(one(referrer, reference, target));
        }
        return text.isEmpty() ? null : text.toString();
    }

    private String one(EObject referrer, EReference reference, EObject target) throws RefusedFileException {
        if (target.eIsProxy()) {
            return relative(((InternalEObject) target).eProxyURI());
        }
        Resource home = target.eResource();
        if (home == null) {
            throw new RefusedFileException("is not saved: " + ElementPath.of(referrer) + ": " + reference.getName()
                    + " refers to the " + ElementPath.of(target) + ", which is in no file", null);
        }
        String written = resource.writtenNames().of(referrer, reference, target);
        if (written != null && stillMeans(referrer, reference, written, target)) {
            return written;
        }
        if (FileKind.ofRoot(reference.getEReferenceType()).isEmpty()) {
            String name = NameResolver.name(referrer, reference, target);
            if (name != null) {
                return name;
            }
        }
        return relative(home.getURI().appendFragment(Fragments.unmistakable(target)));
    }

    private boolean stillMeans(EObject referrer, EReference reference, String written, EObject target) {
        int hash = written.indexOf('#');
        if (hash < 0) {
            return NameResolver.means(referrer, reference, written, target);
        }
        URI uri = hash == 0 ? resource.getURI() : URI.createURI(written.substring(0, hash)).resolve(resource.getURI());
        return uri.equals(target.eResource().getURI())
                && Fragments.find(NameResolver.root(target), written.substring(hash + 1)) == target;
    }

    private String relative(URI uri) {
        URI own = resource.getURI();
        boolean standing = own == null || own.isRelative() || !own.isHierarchical();
        return (standing ? uri : uri.deresolve(own, true, true, false)).toString();
    }
}
