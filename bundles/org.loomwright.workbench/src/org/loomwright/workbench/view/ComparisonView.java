// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.common.util.Monitor;
import org.eclipse.jface.action.Action;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ide.ResourceUtil;
import org.loomwright.diagram.chart.ComparisonScene;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.workbench.app.Icons;
import org.loomwright.workbench.diagram.Typeface;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;
import org.loomwright.workbench.study.ComparedArrangements;
import org.loomwright.workbench.study.ComparedSide;
import org.loomwright.workbench.study.ComparisonRun;
import org.loomwright.workbench.study.StudyKind;
import org.loomwright.workbench.study.StudyOutcome;
import org.loomwright.workbench.study.StudyResults;

/**
 * The arrangements of the vehicle in the active editor beside one another: copper, price, voltages, findings. As they stand, kept
 * up to date; or as the last comparing study took them, which may have sized them first.
 */
public final class ComparisonView extends ChartView {
    private final Consumer<StudyOutcome> studies = this::studied;
    private final Action live = new Action(Words.of("comparison.live"), Action.AS_CHECK_BOX) {
        @Override
        public void run() {
            update(document());
        }
    };
    private StudyOutcome study;

    @Override
    protected void create(Composite parent) {
        super.create(parent);
        live.setToolTipText(Words.of("comparison.live.tip"));
        live.setImageDescriptor(Icons.of("vehicle"));
        live.setChecked(true);
        live.setEnabled(false);
        getViewSite().getActionBars().getToolBarManager().add(live);
        StudyResults.current().listen(studies);
        if (StudyResults.current().latest() != null) {
            studied(StudyResults.current().latest());
        }
    }

    private void studied(StudyOutcome outcome) {
        if (outcome.kind() == StudyKind.COMPARISON) {
            study = outcome;
            live.setEnabled(true);
            live.setChecked(false);
            update(document());
        }
    }

    @Override
    protected Task task(VehicleDocument shown) {
        Type type = Typeface.of(getSite().getShell().getDisplay()).type();
        if (!live.isChecked() && study != null && ofTheEditor(study)) {
            ComparedArrangements compared = (ComparedArrangements) study.detail();
            return new Task(study, monitor -> scene(compared, Words.of("comparison.study", compared.state()), type));
        }
        if (shown.vehicle().getArrangements().isEmpty()) {
            return null;
        }
        if (!shown.fresh()) {
            return new Task(shown.vehicle(), monitor -> new Scene("", 1, 1, List.of()));
        }
        List<ComparedSide> sides = ComparedSide.of(shown.vehicle(), ComparisonScene.most());
        return new Task(shown.analysis(), monitor -> live(sides, type, monitor));
    }

    private boolean ofTheEditor(StudyOutcome outcome) {
        var editor = getSite().getPage().getActiveEditor();
        return editor != null && outcome.file().equals(ResourceUtil.getFile(editor.getEditorInput()));
    }

    private static Scene live(List<ComparedSide> sides, Type type, Monitor monitor) {
        return scene(ComparisonRun.asTheyStand(sides, monitor), Words.of("comparison.state"), type);
    }

    private static Scene scene(ComparedArrangements compared, String state, Type type) {
        return ComparisonScene.of(compared.comparison(), compared.labels(), state, type);
    }

    @Override
    protected String nothing() {
        return "comparison.none";
    }

    @Override
    public void dispose() {
        StudyResults.current().forget(studies);
        super.dispose();
    }
}
