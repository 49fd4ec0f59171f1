// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.StockLengths;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;
import org.loomwright.engine.sizing.SizingResult.SizedCable;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

class SizingStudyTest {
    private static final Path FLEET = Path.of("../../bundles/org.loomwright.samples/fleet");

    private static Vehicle vehicle(String name) {
        return new VehicleFiles().openVehicle(FLEET.resolve(name + ".vehicle")).root();
    }

    private static AssemblyResult assembled(Vehicle vehicle, String arrangement) {
        Arrangement wanted = vehicle.getArrangements().stream().filter(a -> a.getName().equals(arrangement)).findFirst()
                .orElseThrow();
        return Assembly.assemble(vehicle, wanted, null);
    }

    private static SizingResult sized(AssemblyResult of, Vehicle vehicle, SizingObjective objective, boolean all) {
        return SizingStudy.run(of.plan(), of.problems(), new SizingOptions(objective, all, StockLengths.of(vehicle), false),
                new BasicMonitor());
    }

    /** Errors and warnings of the whole check on a plan that stand. */
    private static List<Finding> standing(Plan plan, AssemblyResult of) {
        CheckContext context = new CheckContext(plan, CaseSolver.solveAll(plan, new BasicMonitor()), NetFinder.find(plan),
                of.problems());
        return Check.over(context, CheckOptions.all(), new BasicMonitor()).findings().stream()
                .filter(finding -> finding.accepted() == null && finding.severity() != Severity.NOTE).toList();
    }

    @ParameterizedTest
    @CsvSource({"heron, spread, COPPER", "heron, central, SECTIONS", "beaver, central, PRICE"})
    void theFleetIsSizedWithProofAndPassesTheCheck(String name, String arrangement, SizingObjective objective) {
        Vehicle vehicle = vehicle(name);
        AssemblyResult as = assembled(vehicle, arrangement);
        SizingResult result = sized(as, vehicle, objective, true);
        assertEquals(0, result.gap());
        assertEquals(List.of(), result.troubles());
        assertEquals(List.of(), standing(result.plan(), as).stream().map(f -> f.rule() + " " + f.title()).toList());
        assertTrue(result.after().copperKg() < result.before().copperKg());
        assertNotNull(result.alone());
        assertTrue(result.after().copperKg() <= result.alone().copperKg() + 1e-9 || objective != SizingObjective.COPPER);
        assertTrue(result.cables().stream().filter(SizedCable::changed).allMatch(cable -> !cable.why().isEmpty()));
    }

    @Test
    void sizingWhatIsSizedChangesNothing() {
        Vehicle vehicle = vehicle("heron");
        AssemblyResult as = assembled(vehicle, "spread");
        SizingResult once = sized(as, vehicle, SizingObjective.COPPER, true);
        SizingResult twice = SizingStudy.run(once.plan(), as.problems(), SizingOptions.leastCopper(), new BasicMonitor());
        assertFalse(twice.cables().isEmpty());
        assertEquals(List.of(), twice.cables().stream().filter(SizedCable::changed).map(SizedCable::id).toList());
        assertEquals(List.of(), twice.protectors().stream().filter(SizingResult.SizedProtector::changed).toList());
    }

    @Test
    void whatAPersonChoseStays() {
        Vehicle vehicle = vehicle("heron");
        AssemblyResult as = assembled(vehicle, "spread");
        SizingResult result = sized(as, vehicle, SizingObjective.COPPER, false);
        assertEquals(List.of(), result.cables());
        assertEquals(as.plan().cables(), result.plan().cables());
    }

    @Test
    void existingWiringIsNeverOpened() {
        Vehicle vehicle = vehicle("beaver");
        AssemblyResult as = assembled(vehicle, "spread");
        SizingResult result = sized(as, vehicle, SizingObjective.COPPER, true);
        for (int w = 0; w < as.plan().cables().size(); w++) {
            if (as.plan().cables().get(w).existing()) {
                assertEquals(as.plan().cables().get(w), result.plan().cables().get(w));
            }
        }
    }

    @Test
    void endsWhenCancelled() {
        Vehicle vehicle = vehicle("beaver");
        AssemblyResult as = assembled(vehicle, "spread");
        BasicMonitor cancelled = new BasicMonitor();
        cancelled.setCanceled(true);
        assertThrows(CancellationException.class, () -> SizingStudy.run(as.plan(), as.problems(),
                new SizingOptions(SizingObjective.COPPER, true, List.of(), false), cancelled));
    }
}
