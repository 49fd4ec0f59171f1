// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.Set;

/**
 * What a check is asked to look at.
 *
 * @param cases names of the cases to look at; empty for all
 */
public record CheckOptions(Set<String> cases) {
    public CheckOptions {
        cases = Set.copyOf(cases);
    }

    /** Everything. */
    public static CheckOptions all() {
        return new CheckOptions(Set.of());
    }

    /** True when the case of that name is to be looked at. */
    public boolean wants(String caseName) {
        return cases.isEmpty() || cases.contains(caseName);
    }
}
