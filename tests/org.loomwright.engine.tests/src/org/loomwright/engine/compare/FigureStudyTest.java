// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.compare.ArrangementFigures.Priced;
import org.loomwright.engine.compare.DeviceSheet.EndSize;
import org.loomwright.engine.compare.DeviceSheet.NamedEnd;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** A small arrangement counted and measured by hand: a battery, a holder, a box with two loads, a cable of the base vehicle. */
class FigureStudyTest {
    private static final String A = "near/";
    private ArrangementFigures figures;

    @BeforeEach
    void study() {
        Plan plan = new PlanFixture().domain("12V", 12, "G1.30").zone("bay", -10, 40).battery("G1", 12, 0.004, 0.012, 100)
                .box(A + "F1", 1).fuse(A + "F1", "1", 60).box(A + "X1", 3).fuse(A + "X1", "1", 15).fuse(A + "X1", "2", 10)
                .negativeBar(A + "N1", 3).load("E1", "current", 8, 12).load("E2", "current", 4, 12)
                .cable("W0", 25, 3, "G1.30", A + "F1.30").set("W0", "existing", true)
                .cable(A + "W1", 16, 2, A + "F1.1", A + "X1.30").cable(A + "W2", 2.5, 4, A + "X1.1", "E1.L+")
                .cable(A + "W3", 1.5, 3, A + "X1.2", "E2.L+").cable(A + "W4", 2.5, 4, "E1.L-", A + "N1.N1")
                .cable(A + "W5", 1.5, 3, "E2.L-", A + "N1.N2").cable(A + "W6", 16, 1, A + "N1.31", "G1.31")
                .state("both", c -> c.on("E1").on("E2").ambient(40)).state("one", c -> c.on("E2").ambient(20)).build();
        plan = new Plan(plan.vehicle(), "near", plan.practice(), plan.domains(), plan.zones(), plan.places(), plan.runs(),
                plan.bodies(), plan.bodyLinks(), plan.bonds(), plan.devices(), plan.terminals(), priced(plan.elements()),
                plan.cables(), plan.conductors(), plan.cases(), plan.waivers());
        DeviceSheet.Sheets sheets = new DeviceSheet.Sheets(Map.of(
                A + "F1", new DeviceSheet(12, 0.1, 20, 1), A + "X1", new DeviceSheet(30, 0.4, 90, 3),
                A + "N1", new DeviceSheet(Double.NaN, 0.2, Double.NaN, 0), "G1", new DeviceSheet(200, 25, 500, 0)),
                Map.of(A + "W2", List.of(new NamedEnd(List.of(new EndSize(0.5, 1.5, 0.2), new EndSize(2.5, 6, 0.3)))),
                        A + "W3", List.of(new NamedEnd(List.of(new EndSize(0.5, 1.5, 0.2))))));
        CheckContext context = new CheckContext(plan, CaseSolver.solveAll(plan, new BasicMonitor()), NetFinder.find(plan));
        figures = FigureStudy.of(context, sheets, List.of(
                Finding.of("drop-class", Severity.WARNING, "E1", "one").build(),
                Finding.of("fault-clears", Severity.ERROR, "W1", "two").build(),
                Finding.of("drop-class", Severity.WARNING, "E2", "three").build().acceptedWith("known")));
    }

    /** Fuses with a price of 0.5 each. */
    private static List<Plan.Element> priced(List<Plan.Element> elements) {
        List<Plan.Element> all = new ArrayList<>();
        for (Plan.Element element : elements) {
            all.add(element instanceof Plan.Protector p ? new Plan.Protector(p.id(), p.device(), p.a(), p.b(), p.way(), p.part(),
                    p.kind(), p.form(), p.ratingA(), p.ratedV(), p.breakingA(), p.ohm(), p.seatOhm(), p.wayMaxA(), p.curve(), false,
                    List.of(new Plan.ProtectorOption(p.part(), p.ratingA(), 32, 1000, p.ohm(), p.curve(), 0.5))) : element);
        }
        return all;
    }

    @Test
    void copperByHand() {
        assertEquals(Map.of(1.5, 6.0, 2.5, 8.0, 16.0, 3.0), figures.metresBySection());
        assertEquals(17, figures.conductorM(), 1e-12);
        // 1.5 x 6 + 2.5 x 8 + 16 x 3 = 77 mm2 m, so 0.077 dm3 of 8.89 kg each
        assertEquals(0.077, figures.copperDm3(), 1e-12);
        assertEquals(0.077 * 8.89, figures.copperKg(), 1e-12);
        assertEquals(16, figures.largestMm2());
        assertEquals(2, figures.metresByDuty().get(CopperDuty.FEEDER), 1e-12);
        assertEquals(1, figures.metresByDuty().get(CopperDuty.FEEDER_RETURN), 1e-12);
        assertEquals(7, figures.metresByDuty().get(CopperDuty.BRANCH), 1e-12);
        assertEquals(7, figures.metresByDuty().get(CopperDuty.BRANCH_RETURN), 1e-12);
        assertEquals(0, figures.metresByDuty().get(CopperDuty.OTHER), 1e-12);
    }

    @Test
    void countsByHand() {
        assertEquals(6, figures.cables());
        assertEquals(12, figures.joints());
        assertEquals(3, figures.devices());
        assertEquals(2, figures.boxes());
        assertEquals(3, figures.protectors());
        assertEquals(1, figures.spareWays());
        assertEquals(Map.of(Severity.ERROR, 1, Severity.WARNING, 1, Severity.NOTE, 0), figures.findings());
        assertEquals(1, figures.accepted());
    }

    @Test
    void pricesMassesAndAreaByHandAndWhatIsNotStatedIsSaid() {
        // the test table: 0.5 money and 10 g for each mm2 and metre, so 38.5 and 0.77 kg of cable
        assertEquals(38.5, figures.price().get(Priced.CABLE).known(), 1e-9);
        assertEquals(42, figures.price().get(Priced.BOXES).known(), 1e-12);
        assertEquals(1.5, figures.price().get(Priced.PROTECTORS).known(), 1e-12);
        assertEquals(new Tally(0, 1), figures.price().get(Priced.DEVICES));
        // the end of W2 is named for 1.5 mm2; the one like it for 2.5 mm2 counts
        assertEquals(0.5, figures.price().get(Priced.ENDS).known(), 1e-12);
        assertEquals(82.5, figures.totalPrice().known(), 1e-9);
        assertEquals(1, figures.totalPrice().unknown());
        assertEquals(0.77 + 0.7, figures.massKg().known(), 1e-9);
        assertEquals(new Tally(110, 0), figures.areaCm2());
    }

    @Test
    void lowestVoltagesAndTheHottestConductor() {
        assertEquals(List.of("E1", "E2"), figures.voltages().stream().map(ArrangementFigures.LoadVoltage::load).toList());
        assertEquals(List.of("both", "both"), figures.voltages().stream().map(ArrangementFigures.LoadVoltage::caseName).toList());
        assertEquals("E1", figures.weakest().load());
        assertTrue(figures.weakest().volts() < figures.voltages().get(1).volts());
        // 8 A in 2.5 mm2 rated 30 A: (8/30)^2 of 50 K at most above 40 degrees; 4 A in 1.5 mm2, 20 A: less
        assertEquals("both", figures.hottest().caseName());
        assertEquals(90, figures.hottest().maxC());
        assertTrue(figures.hottest().conductor().equals(A + "W2") || figures.hottest().conductor().equals(A + "W4"),
                figures.hottest().conductor());
        assertEquals(40 + 50 * 64.0 / 900, figures.hottest().hotC(), 1.0);
    }

    @Test
    void everyFigureThatIsComparedIsDerived() {
        List<String> derived = FigureDerivations.of(figures).stream().map(Derivation::figure).toList();
        ArrangementComparison comparison = new ArrangementComparison(List.of(figures, figures));
        for (ComparedFigure figure : comparison.figures()) {
            String words = figure.key().startsWith("price.") ? "price" : figure.words().replace(" of boxes", "")
                    .replace(", share of nominal", "");
            assertTrue(derived.contains(words), figure.key() + " in " + derived);
            assertEquals(-1, figure.best());
        }
        assertTrue(derived.contains("lowest voltage of E1") && derived.contains("lowest voltage of E2"), derived.toString());
    }
}
