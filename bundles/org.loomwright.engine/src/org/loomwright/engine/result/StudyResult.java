// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import java.util.List;

/**
 * What a study returns. It never changes the model.
 *
 * @param study       name of the study
 * @param vehicle     name of the vehicle
 * @param arrangement name of the arrangement; empty when the vehicle has none
 * @param findings    sorted by severity, then rule, element and case; accepted ones included
 * @param verdicts    one a load, in the order of the plan
 * @param explainer   answers how the figures of an element came about
 */
public record StudyResult(String study, String vehicle, String arrangement, List<Finding> findings,
        List<LoadVerdict> verdicts, Explainer explainer) {
    public StudyResult {
        findings = List.copyOf(findings);
        verdicts = List.copyOf(verdicts);
    }

    /** Derives figures when asked, so that nothing is spent on the ones nobody looks at. */
    @FunctionalInterface
    public interface Explainer {
        /**
         * The figures of one element.
         *
         * @param element id of an element of the plan
         * @return one entry a case, the case name null for figures that hold in every case; empty for an element without figures
         */
        List<ElementFigures> explain(String element);
    }

    /**
     * The figures of one element.
     *
     * @param element     id of the element
     * @param caseName    case the figures belong to; null when they hold in every case
     * @param derivations how they came about
     */
    public record ElementFigures(String element, String caseName, List<Derivation> derivations) {
        public ElementFigures {
            derivations = List.copyOf(derivations);
        }
    }
}
