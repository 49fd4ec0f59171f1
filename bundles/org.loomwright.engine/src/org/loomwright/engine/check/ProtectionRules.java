// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;

/** The rules that need fault currents and time-current curves. */
public final class ProtectionRules {
    private ProtectionRules() {
    }

    static List<Rule> all() {
        return List.of(new OverloadBandRule(), new ShortWithstandRule(), new FaultClearsRule(), new BreakingCapacityRule(),
                new InrushMarginRule(), new SelectivityRule(), new BothEndsRule(), new ReturnProtectedRule(),
                new CaseEarthRule());
    }

    /** Their slugs. */
    public static List<String> slugs() {
        return all().stream().map(Rule::slug).toList();
    }
}
