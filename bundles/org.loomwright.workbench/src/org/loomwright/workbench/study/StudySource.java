// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.core.resources.IFile;
import org.loomwright.engine.assembly.AssemblyResult;

/** What a study is made of: an editor with unsaved changes adapts to this. */
public interface StudySource {
    /** The vehicle's file. */
    IFile file();

    /** The arrangement shown; empty for a vehicle without any. */
    String arrangement();

    /** The vehicle as it stands now. Called in the window's thread, which owns the model. */
    AssemblyResult snapshot();
}
