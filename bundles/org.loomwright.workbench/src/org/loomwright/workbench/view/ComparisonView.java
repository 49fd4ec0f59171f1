// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.diagram.chart.ComparisonScene;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.compare.ArrangementFigures;
import org.loomwright.engine.compare.DeviceSheet;
import org.loomwright.engine.compare.FigureStudy;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.workbench.diagram.Typeface;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;

/** The arrangements of the vehicle in the active editor beside one another: copper, price, voltages, findings. */
public final class ComparisonView extends ChartView {

    /** One arrangement as it stands. */
    private record Side(String label, AssemblyResult assembled, DeviceSheet.Sheets sheets) {
    }

    @Override
    protected Task task(VehicleDocument shown) {
        List<Arrangement> arrangements = shown.vehicle().getArrangements();
        if (arrangements.isEmpty() || !shown.fresh()) {
            return arrangements.isEmpty() ? null : new Task(shown.vehicle(), monitor -> new Scene("", 1, 1, List.of()));
        }
        List<Arrangement> compared = arrangements.subList(0, StrictMath.min(arrangements.size(), ComparisonScene.most()));
        Type type = Typeface.of(getSite().getShell().getDisplay()).type();
        List<Side> sides = new ArrayList<>();
        for (Arrangement each : compared) {
            String label = each.getLabel() == null || each.getLabel().isBlank() ? each.getName() : each.getLabel().strip();
            sides.add(new Side(label, Assembly.assemble(shown.vehicle(), each, null), DeviceSheet.of(shown.vehicle(), each)));
        }
        return new Task(shown.analysis(), monitor -> compare(sides, type, monitor));
    }

    private static Scene compare(List<Side> sides, Type type, Monitor monitor) {
        List<ArrangementFigures> figures = new ArrayList<>();
        for (Side side : sides) {
            var plan = side.assembled().plan();
            List<SolvedCase> solved = CaseSolver.solveAll(plan, monitor);
            CheckContext context = new CheckContext(plan, solved, NetFinder.find(plan), side.assembled().problems(),
                    new SharedStudies(monitor));
            figures.add(FigureStudy.of(context, side.sheets(), Check.over(context, CheckOptions.all(), monitor).findings()));
        }
        return ComparisonScene.of(new ArrangementComparison(figures), sides.stream().map(Side::label).toList(),
                Words.of("comparison.state"), type);
    }

    @Override
    protected String nothing() {
        return "comparison.none";
    }
}
