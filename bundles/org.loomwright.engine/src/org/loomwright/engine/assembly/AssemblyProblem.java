// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

/**
 * Something in the model that makes a figure impossible; the element is left out of the network, or a value of the practice
 * stands in where the message says so.
 *
 * @param element id of the element; {@code /} for the vehicle itself
 * @param message what is wrong and what was expected, one sentence
 */
public record AssemblyProblem(String element, String message) {
    public AssemblyProblem {
        if (element == null || element.isEmpty()) {
            throw new IllegalArgumentException("a problem needs its element");
        }
    }
}
