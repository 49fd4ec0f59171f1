// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.loomwright.engine.result.Finding;

/** One rule of the catalogue. A rule keeps no state; its limits come from the practice. */
public interface Rule {

    /** Slug of the rule, as in practice files, findings and waivers. */
    String slug();

    /** What must hold, one line for lists and help. */
    String says();

    /** Names of the practice's limits that the rule reads. */
    List<String> limits();

    /**
     * Looks at the whole plan.
     *
     * @return what does not hold, in the order of the plan's elements; switched-off rules, other severities and waivers are
     *         seen to by the caller
     */
    List<Finding> check(CheckContext context);
}
