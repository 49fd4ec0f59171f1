// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.engine.assembly.NetworkBuilder;
import org.loomwright.engine.assembly.NetworkOptions;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** The demo fleet: its deliberate mistake found, nothing else, and losses as a network built anew without the strap has them. */
class EarthFleetTest {

    @Test
    void otterHasOneStrapForItsEngine() {
        EarthTable table = EarthStudy.of(EarthFixture.context(EarthFixture.fleet("otter", "as-found")), new BasicMonitor());
        LossRow first = table.losses().get(0);
        assertEquals(EarthFixture.bond(table.plan(), "WE1"), first.bonds().get(0));
        assertEquals(LossRank.STRANDS, first.rank());
        assertTrue(first.worst().cranking());
        List<Finding> warnings = table.result().findings().stream().filter(each -> each.severity().atLeast(Severity.WARNING))
                .toList();
        assertEquals(List.of("bond-loss WE1"), warnings.stream().map(each -> each.rule() + " " + each.element()).toList());
        StrapRow rusty = table.straps().get(EarthFixture.bond(table.plan(), "WE4"));
        assertEquals(StrapRow.Verdict.LOSSY, rusty.verdict());
    }

    @ParameterizedTest
    @CsvSource({"heron,central", "heron,spread", "beaver,central", "beaver,spread", "otter,mended"})
    void soundVehiclesHaveNothingButTheirOneEngineStrap(String vehicle, String arrangement) {
        EarthTable table = EarthStudy.of(EarthFixture.context(EarthFixture.fleet(vehicle, arrangement)), new BasicMonitor());
        for (Finding finding : table.result().findings()) {
            assertTrue(!finding.severity().atLeast(Severity.WARNING)
                    || finding.rule().equals("bond-loss") && finding.element().equals("WE1"), finding.title());
        }
        for (StrapRow row : table.straps()) {
            assertTrue(Set.of(StrapRow.Verdict.HOLDS, StrapRow.Verdict.IDLE).contains(row.verdict()), row.toString());
        }
        assertEquals(List.of(), table.pairs());
    }

    /**
     * The study opens the strap in place and gives conductors the resistance at their temperature; here the network is built anew
     * without the strap, conductors held at their temperatures.
     */
    @ParameterizedTest
    @CsvSource({"heron,spread", "otter,as-found", "beaver,central"})
    void lossesAgreeWithNetworksBuiltAnew(String vehicle, String arrangement) {
        Plan plan = EarthFixture.fleet(vehicle, arrangement);
        CheckContext context = EarthFixture.context(plan);
        LossSolver solver = new LossSolver(new BasicMonitor());
        int compared = 0;
        for (SolvedCase solved : context.settled()) {
            for (int bond = 0; bond < plan.bonds().size(); bond++) {
                SolvedCase.Solved here = solver.running(solved, List.of(bond));
                SolvedCase.Solved anew = anew(plan, solved, bond);
                assertEquals(anew.point().status(), here.point().status());
                if (anew.point().status() == OperatingPoint.Status.SOLVED) {
                    compare(anew.point(), here.point(), solved.state().name() + " without " + plan.bonds().get(bond).id());
                    compared++;
                }
            }
        }
        assertTrue(compared > 20, "only " + compared + " losses compared");
    }

    /** A charging source that is cut off and at rest may tell a potential or leave it open, as rounding has it. */
    private static void compare(OperatingPoint anew, OperatingPoint here, String what) {
        for (int node = 0; node < anew.potentialV().length; node++) {
            double there = anew.potentialV()[node];
            if (!Double.isNaN(there) && !Double.isNaN(here.potentialV()[node])) {
                assertEquals(there, here.potentialV()[node], 1e-6, what);
            }
        }
        for (int item = 0; item < anew.network().items().size(); item++) {
            String id = anew.network().items().get(item).id();
            for (int same = 0; same < here.network().items().size(); same++) {
                if (here.network().items().get(same).id().equals(id) && anew.network().items().get(item).getClass()
                        .equals(here.network().items().get(same).getClass())) {
                    assertEquals(anew.currentA()[item], here.currentA()[same], 1e-5, what + ": " + id);
                }
            }
        }
    }

    private static SolvedCase.Solved anew(Plan plan, SolvedCase solved, int bond) {
        double[] heldC = new double[plan.conductors().size()];
        for (int c = 0; c < heldC.length; c++) {
            heldC[c] = solved.running().conductorC(c);
        }
        var at = NetworkBuilder.build(plan, solved.state(), NetworkOptions.running(null).heldAt(heldC)
                .without(plan.bonds().get(bond).id()));
        return new SolvedCase.Solved(at, FlowSolver.solve(at.network(), FlowOptions.standard(), new BasicMonitor()));
    }

    @Test
    void takingOutWhatCarriesNothingChangesNothing() {
        Plan plan = EarthFixture.fleet("heron", "spread");
        CheckContext context = EarthFixture.context(plan);
        int idle = EarthFixture.bond(plan, "WE3");
        LossSolver solver = new LossSolver(new BasicMonitor());
        int cabin = EarthFixture.body(plan, "cabin");
        for (SolvedCase solved : context.settled()) {
            SolvedCase.Solved without = solver.running(solved, List.of(idle));
            for (int body = 0; body < plan.bodies().size(); body++) {
                if (body != cabin) {
                    assertEquals(solved.running().bodyV(body), without.bodyV(body), 1e-6);
                }
            }
        }
    }

    @Test
    void everyFigurePrintedHasADerivation() {
        EarthTable table = EarthStudy.of(EarthFixture.context(EarthFixture.fleet("heron", "spread")), new BasicMonitor());
        Plan plan = table.plan();
        plan.bodies().forEach(body -> assertTrue(!table.result().explainer().explain(body.id()).isEmpty(), body.id()));
        for (StrapRow row : table.straps()) {
            String id = plan.bonds().get(row.bond()).id();
            assertTrue(row.verdict() == StrapRow.Verdict.IDLE || table.result().explainer().explain(id).size() > 1, id);
        }
        for (ReturnRow row : table.returns()) {
            String id = plan.elements().get(row.demand()).id();
            assertTrue(!table.result().explainer().explain(id).isEmpty(), id);
        }
        table.cases().get(0).contacts().forEach(contact -> assertTrue(
                !table.result().explainer().explain(plan.terminals().get(contact.terminal()).id()).isEmpty()));
    }
}
