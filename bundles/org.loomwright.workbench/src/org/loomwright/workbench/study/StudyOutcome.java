// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.List;
import org.eclipse.core.resources.IFile;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.StudyResult;

/**
 * What came of a study.
 *
 * @param kind        the study
 * @param file        the vehicle's file
 * @param arrangement the arrangement studied; empty for several or none
 * @param plan        what was studied; the first arrangement's for a comparison
 * @param result      findings
 * @param summary     what came out, a sentence each
 * @param tables      its figures
 * @param detail      what can be done with it: a {@link SizingProposal}, a {@link ComparedArrangements}, or null
 */
public record StudyOutcome(StudyKind kind, IFile file, String arrangement, Plan plan, StudyResult result, List<String> summary,
        List<StudyTable> tables, Object detail) {
    public StudyOutcome {
        summary = List.copyOf(summary);
        tables = List.copyOf(tables);
    }
}
