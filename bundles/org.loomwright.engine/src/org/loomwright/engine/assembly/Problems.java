// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects problems while a plan is assembled; the same problem counts once. */
final class Problems {
    private final Set<AssemblyProblem> found = new LinkedHashSet<>();

    void add(String element, String message) {
        found.add(new AssemblyProblem(element, message));
    }

    List<AssemblyProblem> all() {
        return new ArrayList<>(found);
    }
}
