// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.result;

import java.util.List;

/**
 * One thing a study has to say about one element.
 *
 * @param rule        slug of the rule
 * @param severity    how much it matters
 * @param element     id of the element
 * @param caseName    case in which it holds; null when it holds in every case
 * @param title       one line: what is wrong, with the figure that matters
 * @param is          the figure found; null when there is none
 * @param wanted      the limit; null when there is none
 * @param why         how it comes about, one sentence each
 * @param causes      elements elsewhere that bring it about
 * @param mends       proposals, the best first
 * @param derivations how the figures came about
 * @param accepted    reason given by the person who accepted the finding; null when it stands
 */
public record Finding(String rule, Severity severity, String element, String caseName, String title, Quantity is,
        Quantity wanted, List<String> why, List<Cause> causes, List<Mend> mends, List<Derivation> derivations,
        String accepted) {
    public Finding {
        if (element == null || element.isEmpty()) {
            throw new IllegalArgumentException("a finding needs its element");
        }
        why = List.copyOf(why);
        causes = List.copyOf(causes);
        mends = List.copyOf(mends);
        derivations = List.copyOf(derivations);
    }

    /** The same finding, accepted with a reason. */
    public Finding acceptedWith(String reason) {
        return new Finding(rule, severity, element, caseName, title, is, wanted, why, causes, mends, derivations, reason);
    }

    /** The same finding with another severity. */
    public Finding withSeverity(Severity other) {
        return new Finding(rule, other, element, caseName, title, is, wanted, why, causes, mends, derivations, accepted);
    }

    /** Starts a finding; see {@link FindingBuilder}. */
    public static FindingBuilder of(String rule, Severity severity, String element, String title) {
        return new FindingBuilder(rule, severity, element, title);
    }
}
