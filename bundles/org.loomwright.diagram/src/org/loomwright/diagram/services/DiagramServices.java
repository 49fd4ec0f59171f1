// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import org.eclipse.emf.ecore.EObject;

/** What every kind of diagram answers about its elements, whatever draws it. */
public interface DiagramServices {
    /** Text beside the element. */
    String label(EObject element);

    /** Slug of how it is drawn, for example {@code return}; null for an element that the diagram does not show. */
    String role(EObject element);

    /** Text for who points at it. */
    String tip(EObject element);

    /** Element at which an edge begins; null for what is no edge, or open there. */
    EObject source(EObject edge);

    /** Element at which an edge ends; null for what is no edge, or open there. */
    EObject target(EObject edge);

    /** Whether an edge may be drawn between two elements. */
    boolean canConnect(EObject from, EObject to);

    /**
     * Draws an edge between two elements.
     *
     * @return the new element
     * @throws IllegalArgumentException when they cannot be connected, with the reason
     */
    EObject connect(EObject from, EObject to);
}
