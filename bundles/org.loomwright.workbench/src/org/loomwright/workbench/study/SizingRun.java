// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.core.resources.IFile;
import org.eclipse.emf.common.util.Monitor;
import org.eclipse.osgi.util.NLS;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.engine.sizing.SizingOptions;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.engine.sizing.SizingStudy;
import org.loomwright.headless.size.SizeTables;

/**
 * Sections and ratings, chosen together: a proposal that a person looks at before it is applied.
 *
 * @param file        the vehicle's file
 * @param arrangement the arrangement
 * @param assembled   the vehicle
 * @param options     what is to be least, and what is open
 * @param state       the state of the vehicle, see {@link StudySource#state()}
 */
record SizingRun(IFile file, String arrangement, AssemblyResult assembled, SizingOptions options, Object state)
        implements Study {
    private static final int ROUNDS = 8;

    @Override
    public StudyKind kind() {
        return StudyKind.SIZING;
    }

    @Override
    public int work() {
        return ROUNDS;
    }

    @Override
    public StudyOutcome run(Monitor monitor) {
        Plan plan = assembled.plan();
        SizingResult sized = SizingStudy.run(assembled, options, monitor);
        StudyResult result = new StudyResult("size", plan.vehicle(), plan.arrangement(), sized.troubles(), List.of(),
                element -> sized.cables().stream().filter(cable -> cable.id().equals(element))
                        .map(cable -> new ElementFigures(cable.id(), null, cable.derivations())).toList());
        SizeTables tables = new SizeTables(sized, plan);
        List<StudyTable> shown = new ArrayList<>();
        RowElements rows = new RowElements(plan);
        ProtectionRun.add(shown, Messages.Table_cables, Messages.Legend_cables, tables.cables(), rows, result);
        ProtectionRun.add(shown, Messages.Table_protectors, Messages.Legend_protectors, tables.protectors(), rows, result);
        ProtectionRun.add(shown, Messages.Table_limits, Messages.Legend_limits, tables.limits(), rows, result);
        return new StudyOutcome(kind(), file, arrangement, plan, result, summary(sized), shown,
                new SizingProposal(sized, options.openPersonChoices(), state));
    }

    private static List<String> summary(SizingResult sized) {
        if (sized.cables().isEmpty() && sized.protectors().isEmpty()) {
            return List.of(Messages.Summary_nothingOpen);
        }
        List<String> lines = new ArrayList<>();
        lines.add(NLS.bind(Messages.Summary_changed, new Object[] {sized.cables().size(),
            sized.cables().stream().filter(SizingResult.SizedCable::changed).count(), sized.protectors().size(),
            sized.protectors().stream().filter(SizingResult.SizedProtector::changed).count()}));
        lines.add(NLS.bind(Messages.Summary_totals, totals(sized.before()), totals(sized.after())));
        lines.add(NLS.bind(Messages.Summary_proof, new Object[] {SizingProposal.words(sized.objective()),
            Figures.three(sized.cost()) + unit(sized), Figures.three(sized.bound()) + unit(sized),
            Figures.three(100 * sized.gap())}));
        if (sized.alone() != null) {
            lines.add(NLS.bind(Messages.Summary_alone, Figures.three(sized.alone().copperKg() - sized.after().copperKg())));
        }
        return lines;
    }

    private static String unit(SizingResult sized) {
        return "kg".equals(sized.objective().unit()) ? " kg" : "";
    }

    private static String totals(SizingResult.Totals totals) {
        return NLS.bind(Messages.Summary_total, new Object[] {decimals(totals.copperKg()), decimals(totals.money()),
            totals.sections()});
    }

    private static String decimals(double value) {
        return Double.isNaN(value) ? Messages.Summary_unknown : String.format(Locale.ROOT, "%.2f", value);
    }
}
