// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import java.util.List;
import java.util.Set;

/**
 * A strap lost in one case.
 *
 * @param id      id of the strap
 * @param shown   how it is shown to people
 * @param figures figures of the case without it, at the moment of the loss
 * @param harmful something is harmed by it
 * @param told    what it comes to, a sentence each
 * @param more    ids of the elements that carry more than before
 */
public record LostStrap(String id, String shown, CaseView figures, boolean harmful, List<String> told, Set<String> more) {
    public LostStrap {
        told = List.copyOf(told);
        more = Set.copyOf(more);
    }
}
