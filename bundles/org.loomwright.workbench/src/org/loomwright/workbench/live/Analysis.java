// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.live;

import java.util.List;
import org.loomwright.diagram.services.StudyView;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.StudyResult;

/**
 * What came of one analysis.
 *
 * @param revision revision of the model it belongs to
 * @param findings all findings; one only, about the analysis itself, when it failed
 * @param context  plan, solved cases and shared studies; null when it failed
 * @param result   result of the check; null when it failed
 * @param view     figures by element id; null when it failed
 * @param millis   from the snapshot to the last finding, ms
 */
public record Analysis(long revision, List<Finding> findings, CheckContext context, StudyResult result, StudyView view,
        long millis) {
    public Analysis {
        findings = List.copyOf(findings);
    }

    /** True when there are figures. */
    public boolean worked() {
        return view != null;
    }
}
