// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.loomwright.model.parts.PartsPackage;

/** Follows references into other files. */
final class CrossFile {
    private final VehicleResource from;

    CrossFile(VehicleResource from) {
        this.from = from;
    }

    /**
     * The root of another file.
     *
     * @param written its relative URI, empty for this file itself
     * @return the root; null when the file is there but could not be read, which is among its own faults
     * @throws RefusedFileException when there is no such file to be read; the message says why
     */
    EObject root(String written) throws RefusedFileException {
        URI uri = written.isEmpty() ? from.getURI() : resolved(written);
        return uri.equals(from.getURI()) ? first(from) : root(uri, written);
    }

    /**
     * An element of a file.
     *
     * @param root the file's root
     * @param text relative URI, {@code #} and a fragment, for example {@code parts/base.parts#/}
     * @param type what it must be
     * @throws RefusedFileException when there is none; the message says why
     */
    EObject find(EObject root, String text, EClass type) throws RefusedFileException {
        int hash = text.indexOf('#');
        String fragment = text.substring(hash + 1);
        if (FileKind.ofRoot(type).isPresent() && root.eResource() == from) {
            throw new RefusedFileException(text + " is this file itself", "another file");
        }
        EObject found = Fragments.find(root, fragment);
        if (found == null) {
            throw new RefusedFileException("there is no '" + fragment + "' in " + text.substring(0, hash),
                    wanted(type) + " of that file");
        }
        if (!type.isInstance(found)) {
            Optional<FileKind> kind = FileKind.of(found);
            String is = kind.map(known -> "a " + known.word()).orElse(ElementPath.aKind(found.eClass()));
            throw new RefusedFileException(text + " is " + is + ", not " + wanted(type),
                    FileKind.ofRoot(type).isPresent() ? "the file of " + wanted(type) : wanted(type));
        }
        return found;
    }

    private static String wanted(EClass type) {
        return FileKind.ofRoot(type).map(kind -> "a " + kind.word()).orElse(ElementPath.aKind(type));
    }

    private URI resolved(String relative) throws RefusedFileException {
        try {
            URI uri = URI.createURI(relative);
            return from.getURI() == null || from.getURI().isRelative() || !from.getURI().isHierarchical() ? uri
                    : uri.resolve(from.getURI());
        } catch (IllegalArgumentException e) {
            throw new RefusedFileException("'" + relative + "' is no relative URI", "a path such as parts/base.parts");
        }
    }

    private EObject root(URI uri, String written) throws RefusedFileException {
        ResourceSet set = from.getResourceSet();
        if (set == null) {
            throw new RefusedFileException(written + " cannot be looked for: this file was opened without its surroundings",
                    null);
        }
        Resource resource = set.getResource(uri, false);
        if (resource instanceof VehicleResource other && other.isLoading()) {
            throw new RefusedFileException(circle(set, other), "files that depend on each other one way only");
        }
        if (resource == null) {
            resource = set.createResource(uri);
            try {
                resource.load(set.getLoadOptions());
            } catch (IOException e) {
                set.getResources().remove(resource);
                RefusedFileException refused = RefusedFileException.because(e);
                throw new RefusedFileException(written + " " + refused.getMessage(), refused.expected());
            }
        }
        from.filesTried().add(resource);
        return first(resource);
    }

    private static EObject first(Resource resource) {
        return resource.getContents().isEmpty() ? null : resource.getContents().get(0);
    }

    /** The files being read are nested in each other in the order of the resource set. */
    private String circle(ResourceSet set, VehicleResource start) {
        List<String> names = new ArrayList<>();
        boolean within = false;
        for (Resource resource : set.getResources()) {
            within |= resource == start;
            if (within && resource instanceof VehicleResource reading && reading.isLoading()) {
                names.add(FilePaths.name(reading.getURI()));
            }
        }
        names.add(FilePaths.name(start.getURI()));
        boolean libraries = from.kind() == FileKind.PARTS;
        return (libraries ? "libraries use each other in a circle: " : from.kind() == FileKind.PRACTICE
                ? "practices are based on each other in a circle: " : "files refer to each other in a circle: ")
                + String.join(" > ", names);
    }

    /** True for references whose targets may come out of libraries. */
    static boolean intoLibraries(EClass type) {
        return type.getEPackage() == PartsPackage.eINSTANCE && FileKind.ofRoot(type).isEmpty();
    }
}
