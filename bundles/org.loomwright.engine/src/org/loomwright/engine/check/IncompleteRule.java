// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Something that makes a figure impossible is said; the element is left out, so other figures may be too good. */
final class IncompleteRule implements Rule {
    @Override
    public String slug() {
        return "incomplete";
    }

    @Override
    public String says() {
        return "Everything that a figure needs is entered.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        return context.problems().stream()
                .map(problem -> Finding.of(slug(), Severity.ERROR, problem.element(), problem.message())
                        .because("The element is left out of the figures, which may be too good for that reason.").build())
                .toList();
    }
}
