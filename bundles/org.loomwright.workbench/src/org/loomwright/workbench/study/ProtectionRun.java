// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.ProtectionRules;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.export.table.Table;
import org.loomwright.headless.protection.ProtectionTables;

/**
 * Fault currents, what clears them and when, selectivity.
 *
 * @param file        the vehicle's file
 * @param arrangement the arrangement
 * @param assembled   the vehicle
 */
record ProtectionRun(IFile file, String arrangement, AssemblyResult assembled) implements Study {
    @Override
    public StudyKind kind() {
        return StudyKind.PROTECTION;
    }

    @Override
    public int work() {
        return assembled.plan().cases().size() + ProtectionRules.count();
    }

    @Override
    public StudyOutcome run(Monitor monitor) {
        Plan plan = assembled.plan();
        CheckContext context = new CheckContext(plan, Cases.solved(plan, monitor), NetFinder.find(plan), assembled.problems(),
                new SharedStudies(monitor));
        StudyResult result = ProtectionRules.judge(context, monitor);
        ProtectionTables tables = new ProtectionTables(context.protection(), context.names());
        RowElements rows = new RowElements(plan);
        List<StudyTable> shown = new ArrayList<>();
        add(shown, Messages.Table_conductors, Messages.Legend_conductors, tables.supplies(), rows, result);
        add(shown, Messages.Table_faultReturns, Messages.Legend_faultReturns, tables.returns(), rows, result);
        add(shown, Messages.Table_devices, Messages.Legend_devices, tables.devices(), rows, result);
        return new StudyOutcome(kind(), file, arrangement, plan, result, List.of(), shown, null);
    }

    /** Adds a table that has rows. */
    static void add(List<StudyTable> tables, String name, String legend, Table table, RowElements rows, StudyResult result) {
        if (!table.rows().isEmpty()) {
            tables.add(StudyTable.of(name, legend, table, rows.of(table), result.explainer()));
        }
    }
}
