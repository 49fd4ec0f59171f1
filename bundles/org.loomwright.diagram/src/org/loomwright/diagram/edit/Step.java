// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.util.function.Supplier;

/**
 * One change of the model that can be undone, not yet made.
 *
 * @param verb    what it does, a slug, for example {@code connect}
 * @param subject what it is done to, as shown to people; may be empty
 * @param change  makes it; throws an IllegalArgumentException in the user's words when it is refused
 */
public record Step(String verb, String subject, Supplier<Outcome> change) {
    /**
     * Makes the change; in the thread that owns the model, recorded by whoever can undo it.
     *
     * @throws IllegalArgumentException when it is refused, with the reason; the model may then have to be rolled back
     */
    public Outcome run() {
        return change.get();
    }
}
