// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.fixture.PlanIndex;

/** Results do not depend on the order of elements, nor on the thread. */
class OrderTest {
    private static ProtectionTable study(Plan plan) {
        List<SolvedCase> cases = CaseSolver.solveAll(plan, new BasicMonitor());
        return ProtectionStudy.of(plan, cases, new BasicMonitor());
    }

    @Test
    void anotherOrderOfElementsGivesTheSameRows() {
        int compared = 0;
        for (int seed = 200; seed < 215; seed++) {
            RandomVehicle vehicle = new RandomVehicle(seed);
            Plan plan = vehicle.plan();
            Plan other = vehicle.shuffled(seed);
            ProtectionTable one = study(plan);
            ProtectionTable two = study(other);
            for (ConductorProtection row : one.conductors()) {
                String id = plan.conductors().get(row.conductor()).id();
                ConductorProtection there = two.conductor(PlanIndex.conductor(other, id));
                String where = "vehicle " + seed + " " + id;
                assertEquals(row.conditions(), there.conditions(), where);
                assertEquals(row.feeds().size(), there.feeds().size(), where);
                same(row, there, where, r -> r.heat() == null ? 0 : r.heat().peakC());
                same(row, there, where, r -> r.smallestFar() == null ? 0 : r.smallestFar().throughA());
                same(row, there, where, r -> r.largestNear() == null ? 0 : r.largestNear().throughA());
                same(row, there, where, r -> r.overload() == null ? 0 : r.overload().inA());
                compared++;
            }
            for (DeviceProtection row : one.devices()) {
                String id = plan.elements().get(row.protector()).id();
                DeviceProtection there = two.device(PlanIndex.element(other, id)).orElseThrow();
                assertEquals(row.breakingA(), there.breakingA(), 1e-6 * row.breakingA() + 1e-6, id);
                assertEquals(row.selectivity().size(), there.selectivity().size(), id);
            }
        }
        assertTrue(compared > 200, "rows " + compared);
    }

    private static void same(ConductorProtection a, ConductorProtection b, String where,
            ToDoubleFunction<ConductorProtection> of) {
        double x = of.applyAsDouble(a);
        double y = of.applyAsDouble(b);
        boolean same = Double.compare(x, y) == 0 || Math.abs(x - y) <= 1e-6 * Math.max(1, Math.abs(x));
        assertTrue(same, where + ": " + x + " and " + y);
    }

    @Test
    void theSamePlanGivesTheSameBitsInEveryThread() {
        Plan plan = new RandomVehicle(300).plan();
        List<SolvedCase> cases = CaseSolver.solveAll(plan, new BasicMonitor());
        ProtectionTable alone = ProtectionStudy.of(plan, cases, new BasicMonitor());
        List<ProtectionTable> together = IntStream.range(0, 8).parallel()
                .mapToObj(k -> ProtectionStudy.of(plan, cases, new BasicMonitor())).toList();
        for (ProtectionTable table : together) {
            assertEquals(alone.conductors(), table.conductors());
            assertEquals(alone.devices(), table.devices());
            assertEquals(alone.uncleared(), table.uncleared());
        }
    }
}
