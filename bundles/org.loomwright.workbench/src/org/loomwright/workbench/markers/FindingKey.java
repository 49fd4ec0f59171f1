// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.markers;

import org.eclipse.core.resources.IMarker;
import org.loomwright.engine.result.Finding;

/**
 * Names one finding of one arrangement.
 *
 * @param arrangement name of the arrangement; empty for a vehicle without any
 * @param element     id of the element
 * @param rule        slug of the rule
 * @param caseName    case; empty when the finding holds in every case
 */
public record FindingKey(String arrangement, String element, String rule, String caseName) {
    /** The name of a finding. */
    public static FindingKey of(String arrangement, Finding finding) {
        return new FindingKey(arrangement, finding.element(), finding.rule(),
                finding.caseName() == null ? "" : finding.caseName());
    }

    /** The name of the finding that a marker stands for. */
    public static FindingKey of(IMarker marker) {
        return new FindingKey(marker.getAttribute(FindingMarkers.ARRANGEMENT, ""),
                marker.getAttribute(FindingMarkers.ELEMENT, ""), marker.getAttribute(FindingMarkers.RULE, ""),
                marker.getAttribute(FindingMarkers.CASE, ""));
    }
}
