// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import java.util.List;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.engine.result.Finding;

/**
 * The one mark an element bears for all its findings.
 *
 * @param badge    the worst of them
 * @param count    how many findings of that severity
 * @param findings all of them, the worst first; those elsewhere that it causes, for a mark of a cause
 */
public record FindingMark(Badge badge, int count, List<Finding> findings) {
    public FindingMark {
        findings = List.copyOf(findings);
    }
}
