// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import org.eclipse.emf.ecore.EObject;

/**
 * Something in a model that cannot be meant.
 *
 * @param rule     slug of the structural rule, for example {@code name-grammar}
 * @param blocking the vehicle cannot be analysed sensibly with it; otherwise it is worth a look only
 * @param element  the object it is about
 * @param feature  name of the feature, or null when it is about the whole object
 * @param message  what is wrong
 * @param expected what was expected
 */
public record Violation(String rule, boolean blocking, EObject element, String feature, String message, String expected) {

    /** A violation that blocks the analysis. */
    static Violation blocking(String rule, EObject element, String feature, String message, String expected) {
        return new Violation(rule, true, element, feature, message, expected);
    }

    /** A violation that does not. */
    static Violation notice(String rule, EObject element, String feature, String message, String expected) {
        return new Violation(rule, false, element, feature, message, expected);
    }
}
