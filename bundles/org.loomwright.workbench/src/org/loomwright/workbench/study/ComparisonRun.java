// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.emf.common.util.Monitor;
import org.eclipse.osgi.util.NLS;
import org.loomwright.engine.assembly.AssemblyProblem;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.StockLengths;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.compare.ArrangementFigures;
import org.loomwright.engine.compare.FigureDerivations;
import org.loomwright.engine.compare.FigureStudy;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.engine.sizing.SizingOptions;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.engine.sizing.SizingStudy;
import org.loomwright.export.table.Table;
import org.loomwright.headless.compare.CompareTables;

/**
 * Arrangements side by side, as they stand or each sized first.
 *
 * @param file      the vehicle's file
 * @param sides     the arrangements, two or more
 * @param objective what sizing makes least first; null to compare them as they stand
 * @param stock     cable at hand
 */
public record ComparisonRun(IFile file, List<ComparedSide> sides, SizingObjective objective, List<StockLengths.Length> stock)
        implements Study {
    private static final int SIZING_ROUNDS = 8;

    @Override
    public StudyKind kind() {
        return StudyKind.COMPARISON;
    }

    @Override
    public int work() {
        return sides.size() * (RuleCatalogue.standard().rules().size() + (objective == null ? 0 : SIZING_ROUNDS)
                + sides.get(0).assembled().plan().cases().size());
    }

    @Override
    public StudyOutcome run(Monitor monitor) {
        List<ArrangementFigures> figures = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (ComparedSide side : sides) {
            figures.add(figures(side, findings, monitor));
        }
        ArrangementComparison comparison = new ArrangementComparison(figures);
        List<String> names = sides.stream().map(ComparedSide::name).toList();
        Plan plan = sides.get(0).assembled().plan();
        StudyResult result = new StudyResult("compare", plan.vehicle(), "", findings, List.of(), element -> List.of());
        String state = objective == null ? Messages.Comparison_asTheyStand
                : NLS.bind(Messages.Comparison_sized, SizingProposal.words(objective));
        CompareTables tables = new CompareTables(comparison, names);
        List<ElementFigures> origin = figures.stream()
                .map(each -> new ElementFigures(each.arrangement(), each.arrangement(), FigureDerivations.of(each))).toList();
        List<StudyTable> shown = List.of(table(Messages.Table_figures, Messages.Legend_figures, tables.figures(), origin),
                table(Messages.Table_copper, Messages.Legend_copper, tables.copper(), origin),
                table(Messages.Table_sections, Messages.Legend_sections, tables.sections(), origin),
                voltages(tables.voltages(), plan, origin));
        return new StudyOutcome(kind(), file, "", plan, result, List.of(state), shown,
                new ComparedArrangements(comparison, sides.stream().map(ComparedSide::label).toList(), state));
    }

    /** The arrangements as they stand, for a chart. */
    public static ComparedArrangements asTheyStand(List<ComparedSide> sides, Monitor monitor) {
        return (ComparedArrangements) new ComparisonRun(null, sides, null, List.of()).run(monitor).detail();
    }

    private ArrangementFigures figures(ComparedSide side, List<Finding> findings, Monitor monitor) {
        Plan plan = side.assembled().plan();
        List<AssemblyProblem> problems = side.assembled().problems();
        if (objective != null) {
            SizingResult sized = SizingStudy.run(side.assembled(), new SizingOptions(objective, true, stock, false),
                    monitor);
            plan = sized.plan();
            problems = problems.stream().filter(problem -> sized.cables().stream()
                    .noneMatch(cable -> cable.id().equals(problem.element()))).toList();
            findings.addAll(sized.troubles());
        }
        CheckContext context = new CheckContext(plan, Cases.solved(plan, monitor), NetFinder.find(plan), problems,
                new SharedStudies(monitor));
        return FigureStudy.of(context, side.sheets(), Check.over(context, CheckOptions.all(), monitor).findings());
    }

    private static StudyTable table(String name, String legend, Table table, List<ElementFigures> origin) {
        return new StudyTable(name, legend, table, java.util.Collections.nCopies(table.rows().size(), null), row -> origin);
    }

    private static StudyTable voltages(Table table, Plan plan, List<ElementFigures> origin) {
        return new StudyTable(Messages.Table_voltages, Messages.Legend_voltages, table, new RowElements(plan).of(table),
                row -> origin);
    }
}
