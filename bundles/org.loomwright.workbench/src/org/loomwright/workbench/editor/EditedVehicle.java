// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.List;
import org.eclipse.core.resources.IFile;
import org.loomwright.diagram.chart.ComparisonScene;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.StockLengths;
import org.loomwright.model.edits.SizingEdits;
import org.loomwright.workbench.study.ComparedSide;
import org.loomwright.workbench.study.StudySource;

/**
 * The vehicle in an editor, for studies.
 *
 * @param document the open vehicle
 * @param file     its file
 */
record EditedVehicle(VehicleDocument document, IFile file) implements StudySource {
    /** The vehicle, and what would be undone next; null when nothing can be. The same after an undo as before the change. */
    private record State(Object vehicle, Object undo, String arrangement) {
    }

    /** Nothing would change: the step is given up, so that there is nothing to undo and nothing to save. */
    private static final class Unchanged extends RuntimeException {
    }

    @Override
    public String arrangement() {
        return document.arrangement() == null ? "" : document.arrangement().getName();
    }

    @Override
    public AssemblyResult snapshot() {
        return document.assembled();
    }

    @Override
    public List<ComparedSide> sides() {
        return ComparedSide.of(document.vehicle(), ComparisonScene.most());
    }

    @Override
    public List<StockLengths.Length> stock() {
        return StockLengths.of(document.vehicle());
    }

    @Override
    public Object state() {
        return new State(document.vehicle(), document.domain().getCommandStack().getUndoCommand(), arrangement());
    }

    @Override
    public int apply(String label, List<SizingEdits.Choice> choices, boolean openPersonChoices) {
        int[] changed = {0};
        try {
            document.run(label, () -> {
                changed[0] = SizingEdits.apply(document.vehicle(), choices, openPersonChoices);
                if (changed[0] == 0) {
                    throw new Unchanged();
                }
            });
        } catch (Unchanged nothing) {
            return 0;
        }
        return changed[0];
    }
}
