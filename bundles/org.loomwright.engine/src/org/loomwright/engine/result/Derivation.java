// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import java.util.List;

/**
 * How a figure came about.
 *
 * @param figure  name of the figure in plain words, for example {@code voltage drop}
 * @param value   the figure
 * @param formula formula in plain text with the names of the inputs, for example {@code I x (R1 + R2)}
 * @param inputs  what went in
 * @param source  where the formula comes from: a standard, a document, or {@code common practice}
 */
public record Derivation(String figure, Quantity value, String formula, List<Input> inputs, String source) {
    public Derivation {
        inputs = List.copyOf(inputs);
    }

    /**
     * One input of a formula.
     *
     * @param name    name as in the formula
     * @param value   its value
     * @param origin  where it comes from: an element id, a limit's name with its source, or a part's source
     */
    public record Input(String name, Quantity value, String origin) {
    }
}
