// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.edits.Deletion;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.parts.Named;

/** Deletions, and what they take along. */
final class Removing {
    private final Drawn drawn;

    Removing(Drawn drawn) {
        this.drawn = drawn;
    }

    private Deletion plan(Collection<String> ids) {
        return Deletion.of(drawn.elements(ids, EObject.class));
    }

    /** What goes beside the elements asked for, in words: one line for each kind, with names where there are such. */
    List<String> alsoGoes(Collection<String> ids) {
        List<EObject> asked = drawn.elements(ids, EObject.class);
        Map<String, List<String>> kinds = new LinkedHashMap<>();
        for (EObject element : plan(ids).removed()) {
            if (!asked.contains(element)) {
                String name = element instanceof Named named && named.getName() != null ? drawn.label(element) : "";
                kinds.computeIfAbsent(ElementPath.kind(element.eClass()), kind -> new ArrayList<>()).add(name);
            }
        }
        List<String> lines = new ArrayList<>();
        kinds.forEach((kind, names) -> {
            List<String> known = names.stream().filter(name -> !name.isEmpty()).toList();
            lines.add(names.size() + " " + kind + (names.size() == 1 ? "" : "s")
                    + (known.isEmpty() ? "" : ": " + String.join(" ", known)));
        });
        return lines;
    }

    Outcome remove(Collection<String> ids) {
        List<String> also = alsoGoes(ids);
        plan(ids).apply();
        return new Outcome(Set.of(), also.isEmpty() ? List.of() : List.of("went along: " + String.join("; ", also)));
    }
}
