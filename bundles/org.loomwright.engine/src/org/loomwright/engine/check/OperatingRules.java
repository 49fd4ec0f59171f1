// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;

/** The rules on operating points, heat, distances and protective devices. */
final class OperatingRules {
    private OperatingRules() {
    }

    static List<Rule> all() {
        return List.of();
    }
}
