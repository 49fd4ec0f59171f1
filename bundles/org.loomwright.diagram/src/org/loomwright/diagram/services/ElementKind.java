// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Terminal;

/** A kind of element that a diagram shows. */
public interface ElementKind {
    /**
     * What every diagram tells of a kind.
     *
     * @param type         class of the model's objects of this kind
     * @param edge         true for what is drawn as lines between two others
     * @param paletteGroup group of the palette that makes such elements
     */
    record Traits(EClass type, boolean edge, String paletteGroup) {
    }

    /** What is told of it. */
    Traits traits();

    /** Class of the model's objects of this kind. */
    default EClass type() {
        return traits().type();
    }

    /** True for what is drawn as lines between two others. */
    default boolean edge() {
        return traits().edge();
    }

    /** Group of the palette that makes such elements. */
    default String paletteGroup() {
        return traits().paletteGroup();
    }

    /** The kind of an object of the model; null for what the diagram does not show. */
    static <K extends ElementKind> K of(K[] kinds, EClass type) {
        for (K kind : kinds) {
            if (kind.type() == type) {
                return kind;
            }
        }
        return null;
    }

    /** What is drawn at the end of a conductor: the device of a terminal, or the earth point; null for an open end. */
    static EObject drawnAt(Attachment end) {
        return end instanceof Terminal terminal ? terminal.eContainer() : end;
    }
}
