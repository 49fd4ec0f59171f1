// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.List;

/**
 * What assembly gives.
 *
 * @param plan      the plan
 * @param problems  what could not be assembled, in the order of the model
 * @param catalogue parts used, to be handed to the next assembly so that plans share them
 * @param emptyWays ways without a protector that a cable leads away from
 */
public record AssemblyResult(Plan plan, List<AssemblyProblem> problems, Catalogue catalogue, List<EmptyWay> emptyWays) {
    public AssemblyResult {
        emptyWays = List.copyOf(emptyWays);
        problems = List.copyOf(problems);
    }
}
