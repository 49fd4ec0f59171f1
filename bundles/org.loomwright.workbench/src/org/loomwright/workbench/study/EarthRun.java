// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.emf.common.util.Monitor;
import org.eclipse.osgi.util.NLS;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.earth.EarthStudy;
import org.loomwright.engine.earth.EarthTable;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.headless.earth.EarthTables;

/**
 * The structure as a return, and lost straps.
 *
 * @param file        the vehicle's file
 * @param arrangement the arrangement
 * @param assembled   the vehicle
 */
record EarthRun(IFile file, String arrangement, AssemblyResult assembled) implements Study {
    @Override
    public StudyKind kind() {
        return StudyKind.EARTH;
    }

    @Override
    public int work() {
        return assembled.plan().cases().size() + assembled.plan().bonds().size();
    }

    @Override
    public StudyOutcome run(Monitor monitor) {
        Plan plan = assembled.plan();
        CheckContext context = new CheckContext(plan, Cases.solved(plan, monitor), NetFinder.find(plan), assembled.problems());
        EarthTable earth = EarthStudy.of(context, monitor);
        EarthTables tables = new EarthTables(earth);
        RowElements rows = new RowElements(plan);
        List<StudyTable> shown = new ArrayList<>();
        ProtectionRun.add(shown, Messages.Table_straps, Messages.Legend_straps, tables.straps(), rows, earth.result());
        ProtectionRun.add(shown, Messages.Table_bodies, Messages.Legend_bodies, tables.bodies(), rows, earth.result());
        ProtectionRun.add(shown, Messages.Table_currents, Messages.Legend_currents, tables.currents(), rows, earth.result());
        ProtectionRun.add(shown, Messages.Table_contacts, Messages.Legend_contacts, tables.contacts(), rows, earth.result());
        ProtectionRun.add(shown, Messages.Table_returns, Messages.Legend_returns, tables.returns(), rows, earth.result());
        List<String> summary = List.of(NLS.bind(Messages.Summary_earth, new Object[] {plan.bodies().size(), plan.bonds().size(),
            earth.cases().size()}));
        return new StudyOutcome(kind(), file, arrangement, plan, earth.result(), summary, shown, null);
    }
}
