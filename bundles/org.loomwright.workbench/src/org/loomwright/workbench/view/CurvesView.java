// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.List;
import org.loomwright.diagram.chart.ChartSubject;
import org.loomwright.diagram.chart.ProtectionChart;
import org.loomwright.diagram.chart.TimeCurrentScene;
import org.loomwright.diagram.paint.Type;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.result.Finding;
import org.loomwright.workbench.diagram.Typeface;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.live.Analysis;

/** Time against current of the selected protective device, what lies before it, and the conductor that it protects. */
public final class CurvesView extends ChartView {

    /** One chart. */
    private record About(Analysis analysis, ChartSubject subject) {
    }

    @Override
    protected Task task(VehicleDocument shown) {
        String element = shown.selection().single();
        CheckContext context = shown.analysis().context();
        List<ChartSubject> subjects = element == null ? List.of() : ChartSubject.of(context, element);
        if (subjects.isEmpty()) {
            return null;
        }
        List<Finding> findings = shown.analysis().result().findings();
        Type type = Typeface.of(getSite().getShell().getDisplay()).type();
        ChartSubject subject = subjects.get(0);
        return new Task(new About(shown.analysis(), subject),
                monitor -> TimeCurrentScene.of(ProtectionChart.of(context, subject, findings), type));
    }

    @Override
    protected String nothing() {
        return "curves.none";
    }
}
