// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.core.resources.IFile;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.StudyResult;

/**
 * What came of a study.
 *
 * @param kind        the study
 * @param file        the vehicle's file
 * @param arrangement the arrangement studied
 * @param plan        what was studied
 * @param result      findings
 * @param detail      the study's own table ({@code EarthTable}), or null
 */
public record StudyOutcome(StudyKind kind, IFile file, String arrangement, Plan plan, StudyResult result, Object detail) {
}
