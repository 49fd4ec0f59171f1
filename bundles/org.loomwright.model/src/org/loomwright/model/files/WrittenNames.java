// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.IdentityHashMap;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** References that a person wrote in another than the shortest way: they are saved as written while they mean the same. */
final class WrittenNames {
    private final Map<EObject, Map<EReference, Map<EObject, String>>> names = new IdentityHashMap<>();

    void keep(EObject referrer, EReference reference, EObject target, String text) {
        names.computeIfAbsent(referrer, r -> new IdentityHashMap<>())
                .computeIfAbsent(reference, r -> new IdentityHashMap<>()).put(target, text);
    }

    /** The text as written; null when it was written in the shortest way or the target is new. */
    String of(EObject referrer, EReference reference, EObject target) {
        Map<EReference, Map<EObject, String>> byReference = names.isEmpty() ? null : names.get(referrer);
        Map<EObject, String> byTarget = byReference == null ? null : byReference.get(reference);
        return byTarget == null ? null : byTarget.get(target);
    }

    void clear() {
        names.clear();
    }
}
