// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What came of a step.
 *
 * @param selection ids to be selected afterwards; null when the selection stays
 * @param told      what a person should know, in sentences
 */
public record Outcome(Set<String> selection, List<String> told) {
    public Outcome {
        selection = selection == null ? null : Collections.unmodifiableSet(new LinkedHashSet<>(selection));
        told = List.copyOf(told);
    }

    static Outcome selecting(String... ids) {
        return new Outcome(new LinkedHashSet<>(List.of(ids)), List.of());
    }

    static Outcome quiet() {
        return new Outcome(null, List.of());
    }
}
