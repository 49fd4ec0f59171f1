// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.Optional;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.parts.PartsPackage;
import org.loomwright.model.practice.PracticePackage;
import org.loomwright.model.vehicle.VehiclePackage;

/** The kinds of files, told apart by their root element. */
public enum FileKind {
    /** One vehicle with its arrangements. */
    VEHICLE("vehicle", "vehicle"),
    /** A parts library. */
    PARTS("parts library", "parts"),
    /** What lies at hand. */
    STOCK("stock", "stock"),
    /** Limits that a workshop adopts. */
    PRACTICE("practice", "practice");

    private final String word;
    private final String extension;

    FileKind(String word, String extension) {
        this.word = word;
        this.extension = extension;
    }

    /** The kind in words, for messages. */
    public String word() {
        return word;
    }

    /** End of the file's name, without dot. */
    public String extension() {
        return extension;
    }

    /** Class of the root. */
    public EClass rootClass() {
        return switch (this) {
            case VEHICLE -> VehiclePackage.Literals.VEHICLE;
            case PARTS -> PartsPackage.Literals.PARTS_LIBRARY;
            case STOCK -> PartsPackage.Literals.STOCK;
            case PRACTICE -> PracticePackage.Literals.PRACTICE;
        };
    }

    /** Namespace without its version. */
    String namespaceBase() {
        String uri = rootClass().getEPackage().getNsURI();
        return uri.substring(0, uri.lastIndexOf('/') + 1);
    }

    /** The root's qualified name in a new file. */
    String rootTag() {
        return rootClass().getEPackage().getNsPrefix() + ":" + rootClass().getName();
    }

    /** The kind whose root is of this class; empty when it is not the root of a file. */
    static Optional<FileKind> ofRoot(EClass eClass) {
        for (FileKind kind : values()) {
            if (kind.rootClass() == eClass) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /** The kind of file an element is the root of; empty for any other element. */
    public static Optional<FileKind> of(EObject root) {
        return root == null ? Optional.empty() : ofRoot(root.eClass());
    }
}
