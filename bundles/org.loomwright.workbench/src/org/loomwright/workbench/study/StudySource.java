// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.List;
import org.eclipse.core.resources.IFile;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.StockLengths;
import org.loomwright.model.edits.SizingEdits;

/** What a study is made of: an editor with unsaved changes adapts to this. Called in the window's thread, which owns the model. */
public interface StudySource {
    /** The vehicle's file. */
    IFile file();

    /** The arrangement shown; empty for a vehicle without any. */
    String arrangement();

    /** The vehicle as it stands now. */
    AssemblyResult snapshot();

    /** The arrangements that can be compared, as they stand now. */
    List<ComparedSide> sides();

    /** Cable at hand. */
    List<StockLengths.Length> stock();

    /** Equal as long as the vehicle is the same, also when a change was taken back. */
    Object state();

    /**
     * Applies choices as one step that can be undone.
     *
     * @return number of elements that changed
     * @throws IllegalArgumentException when a choice cannot be applied; nothing is changed then
     */
    int apply(String label, List<SizingEdits.Choice> choices, boolean openPersonChoices);
}
