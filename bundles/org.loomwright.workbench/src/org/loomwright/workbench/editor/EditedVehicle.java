// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import org.eclipse.core.resources.IFile;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.workbench.study.StudySource;

/**
 * The vehicle in an editor, for studies.
 *
 * @param document the open vehicle
 * @param file     its file
 */
record EditedVehicle(VehicleDocument document, IFile file) implements StudySource {
    @Override
    public String arrangement() {
        return document.arrangement() == null ? "" : document.arrangement().getName();
    }

    @Override
    public AssemblyResult snapshot() {
        return document.assembled();
    }
}
