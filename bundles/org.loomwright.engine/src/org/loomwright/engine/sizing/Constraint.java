// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import org.loomwright.engine.result.Quantity;

/**
 * A demand on the design.
 *
 * @param rule     slug of the rule that judges it in the check
 * @param element  id of the element it holds for
 * @param caseName case, or null when it holds whatever the case
 * @param limit    figure that must be kept
 */
public record Constraint(String rule, String element, String caseName, Quantity limit) {
}
