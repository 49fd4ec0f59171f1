// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.model.edits.MendEdits;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Vehicle;

/** What is proposed for vehicles of the fleet, done and checked again. */
class ParallelFleetTest {
    private static final Path HERON = Path.of("../../bundles/org.loomwright.samples/fleet/heron.vehicle");
    private static final Path OTTER = HERON.resolveSibling("otter.vehicle");

    private static List<Finding> check(Vehicle vehicle) {
        AssemblyResult as = Assembly.assemble(vehicle, vehicle.getAdopted(), null);
        CheckContext context = new CheckContext(as.plan(), CaseSolver.solveAll(as.plan(), new BasicMonitor()),
                NetFinder.find(as.plan()), as.problems());
        return Check.over(context, CheckOptions.all(), new BasicMonitor()).findings();
    }

    private static Set<String> keys(List<Finding> findings, Set<String> rules) {
        Set<String> keys = new TreeSet<>();
        findings.stream().filter(each -> rules.contains(each.rule())).forEach(each -> keys.add(each.rule() + " " + each.element()));
        return keys;
    }

    private static Vehicle opened(Path file) {
        return new VehicleFiles().openVehicle(file).root();
    }

    /** The survey truck with some cables too thin. */
    private static Vehicle thinned() {
        Vehicle vehicle = opened(HERON);
        MendEdits.useSection(vehicle, "W47", 25);
        MendEdits.useSection(vehicle, "W48", 25);
        MendEdits.useSection(vehicle, "W31", 35);
        MendEdits.useSection(vehicle, "W35", 16);
        return vehicle;
    }

    @Test
    void eachSecondCableMendsItsFindingAndBreaksNoRuleForParallelConductors() {
        List<Finding> before = check(thinned());
        Set<String> kept = Set.of("parallel-share", "terminal-fit", "drop-class", "wrong-net", "shunt-bypass");
        int tried = 0;
        for (Finding finding : before) {
            for (Mend mend : finding.mends()) {
                if (mend.changes().stream().anyMatch(Mend.AddParallel.class::isInstance)) {
                    tried++;
                    Vehicle vehicle = thinned();
                    mend.changes().forEach(change -> MendEdits.addParallel(vehicle, ((Mend.AddParallel) change).cable()));
                    List<Finding> after = check(vehicle);
                    assertTrue(after.stream().noneMatch(each -> each.rule().equals(finding.rule())
                            && each.element().equals(finding.element())), finding.title() + ": " + mend.text());
                    Set<String> more = keys(after, kept);
                    more.removeAll(keys(before, kept));
                    assertEquals(Set.of(), more, mend.text());
                }
            }
        }
        assertTrue(tried > 2, tried + " tried");
    }

    @Test
    void aThickerCableKeepsWhatItPromisesToASensingCutOut() {
        int tried = 0;
        for (Finding finding : check(opened(OTTER))) {
            for (Mend mend : finding.rule().equals("cutout-sense") ? finding.mends() : List.<Mend>of()) {
                if (!mend.changes().isEmpty() && mend.changes().stream().allMatch(Mend.UseSection.class::isInstance)) {
                    tried++;
                    Vehicle vehicle = opened(OTTER);
                    mend.changes().forEach(change -> MendEdits.useSection(vehicle, ((Mend.UseSection) change).cable(),
                            ((Mend.UseSection) change).sectionMm2()));
                    assertTrue(check(vehicle).stream().noneMatch(each -> each.rule().equals(finding.rule())
                            && each.element().equals(finding.element())), finding.title() + ": " + mend.text());
                }
            }
        }
        assertTrue(tried > 0);
    }
}
