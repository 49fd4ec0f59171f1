// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.protection;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.ProtectionRules;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.headless.Console;
import org.loomwright.headless.Interrupt;
import org.loomwright.headless.Progress;
import org.loomwright.headless.check.CheckedVehicle;
import org.loomwright.headless.input.Arrangements;
import org.loomwright.headless.input.VehicleReader;
import org.loomwright.model.files.ReadFault;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Reads a vehicle file and studies the protection of its arrangements one after the other, on one catalogue. */
final class VehicleProtection {
    private final Console console;
    private final Interrupt interrupt;
    private Catalogue catalogue = Catalogue.EMPTY;

    VehicleProtection(Console console, Interrupt interrupt) {
        this.console = console;
        this.interrupt = interrupt;
    }

    /**
     * Studies the arrangements wanted.
     *
     * @param practiceFile practice to follow instead of the vehicle's own, or null
     * @param faults       takes what is wrong with the files; nothing is studied then
     */
    List<StudiedProtection> study(Path file, List<String> arrangements, Path practiceFile, List<ReadFault> faults) {
        VehicleReader reader = new VehicleReader();
        Practice practice = practiceFile == null ? null : reader.practice(practiceFile, faults);
        List<StudiedProtection> studied = new ArrayList<>();
        if (!faults.isEmpty()) {
            return studied;
        }
        VehicleReader.Read read = reader.vehicle(file);
        faults.addAll(read.faults());
        if (read.vehicle() == null) {
            return studied;
        }
        List<Arrangement> wanted = Arrangements.of(read.vehicle(), arrangements);
        try (Progress progress = new Progress(console, interrupt, wanted.size())) {
            for (Arrangement arrangement : wanted) {
                progress.at(file.toString());
                studied.add(study(file.toString(), read.vehicle(), arrangement, practice, progress));
            }
        }
        return studied;
    }

    private StudiedProtection study(String file, Vehicle vehicle, Arrangement arrangement, Practice practice,
            Progress progress) {
        AssemblyResult assembled = Assembly.assemble(vehicle, arrangement, practice, catalogue);
        catalogue = assembled.catalogue();
        Plan plan = assembled.plan();
        progress.doing(file, plan.cases().size() + ProtectionRules.count());
        List<SolvedCase> solved = new ArrayList<>();
        for (Plan.Case state : plan.cases()) {
            solved.add(CaseSolver.solve(plan, state, progress.monitor()));
            progress.monitor().worked(1);
        }
        CheckContext context = new CheckContext(plan, solved, NetFinder.find(plan), assembled.problems(),
                new SharedStudies(progress.monitor()));
        StudyResult result = ProtectionRules.judge(context, progress.monitor());
        boolean adopted = arrangement != null && vehicle.getAdopted() == arrangement;
        return new StudiedProtection(new CheckedVehicle(file, vehicle.getLabel() == null ? "" : vehicle.getLabel(), adopted,
                plan, result), context);
    }
}
