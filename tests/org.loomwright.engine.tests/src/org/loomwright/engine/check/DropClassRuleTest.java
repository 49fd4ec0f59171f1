// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.check.DropBreakdown.Part;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

class DropClassRuleTest {

    private static LoadDrops.LoadDrop drop(PlanFixture fixture) {
        CheckContext context = CheckFixture.context(fixture);
        return new LoadDrops(context).of(context.cases().get(0), PlanIndex.element(context.plan(), "E1#load"));
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new DropClassRule(), fixture);
    }

    @Test
    void withinTheShareOfOtherLoadsPasses() {
        assertEquals(List.of(), findings(DropBreakdownTest.structureReturn()));
    }

    @Test
    void aCriticalLoadBeyondItsShareIsAnErrorAndAnotherAWarning() {
        PlanFixture critical = DropBreakdownTest.structureReturn().set("E1#load", "critical", true);
        assertEquals(Severity.ERROR, findings(critical).get(0).severity());
        assertEquals(Severity.WARNING, findings(DropBreakdownTest.structureReturn().limit("drop-class.other", 0.03)).get(0)
                .severity());
    }

    @Test
    void theLimitItselfPasses() {
        double share = drop(DropBreakdownTest.structureReturn()).share();
        assertEquals(List.of(), findings(DropBreakdownTest.structureReturn().limit("drop-class.other", share)));
        assertEquals(1, findings(DropBreakdownTest.structureReturn().limit("drop-class.other", share * 0.999999)).size());
    }

    @Test
    void theBatteryItselfIsLeftOut() {
        double fresh = drop(DropBreakdownTest.structureReturn()).breakdown().dropV();
        double weak = drop(DropBreakdownTest.structureReturn().set("G1#cell", "rMaxOhm", 0.2).set("G1#cell", "rMinOhm", 0.2))
                .breakdown().dropV();
        assertEquals(fresh, weak, 0.01 * fresh);
    }

    @Test
    void theProposedSectionGivesTheDropThatItPromises() {
        PlanFixture fixture = DropBreakdownTest.structureReturn().set("E1#load", "critical", true);
        Finding finding = findings(fixture).get(0);
        Mend.UseSection use = (Mend.UseSection) finding.mends().get(0).changes().get(0);
        assertEquals("W2", use.cable());
        PlanFixture mended = DropBreakdownTest.structureReturn().set("E1#load", "critical", true)
                .set("W2", "sectionMm2", use.sectionMm2()).set("W2@1", "sectionMm2", use.sectionMm2())
                .set("W2@1", "r20MaxOhmPerM", 0.018 / use.sectionMm2());
        assertEquals(List.of(), findings(mended));
    }

    @Test
    void theStrapIsNamedWhenTheCableIsInnocent() {
        PlanFixture fixture = DropBreakdownTest.structureReturn().set("WE1", "ohm", 0.2);
        Finding finding = findings(fixture).get(0);
        assertEquals("WE1", finding.causes().get(0).element());
        assertTrue(finding.why().stream().anyMatch(line -> line.contains("that cable is not the cause")),
                finding.why().toString());
    }

    @Test
    void existingCablesAreNotResized() {
        PlanFixture fixture = DropBreakdownTest.structureReturn().set("E1#load", "critical", true);
        for (String cable : List.of("W1", "W2", "W3", "W4")) {
            fixture.set(cable, "existing", true);
        }
        assertTrue(findings(fixture).get(0).mends().stream().flatMap(mend -> mend.changes().stream())
                .noneMatch(Mend.UseSection.class::isInstance));
    }

    /** A cable alone between battery and load, without end joints and at 20 degrees Celsius. */
    private static PlanFixture bare(double amps, double lengthM, double ohmPerM) {
        PlanFixture fixture = new PlanFixture().domain("28V", 28, "G1.30").battery("G1", 24, 0.004, 0.012, 100)
                .load("E1", "current", amps, 28).cable("W1", 25, lengthM, "G1.30", "E1.L+").cable("W2", 120, 0.001, "E1.L-",
                        "G1.31")
                .state("on", c -> c.on("E1").ambient(20));
        for (String cable : List.of("W1", "W2")) {
            fixture.set(cable, "ampacity", null).set(cable + "@1", "jointsOhm", 0.0);
        }
        return fixture.set("W1@1", "r20MaxOhmPerM", ohmPerM);
    }

    /**
     * FAA AC 43.13-1B CHG 1, table 11-7: 20 A over 90 ft of AWG 4 at 0.00028 ohm/ft lose 0.504 V; over 107 ft of AWG 6 at
     * 0.00044, 0.942 V.
     */
    @Test
    void agreesWithPublishedExamples() {
        double foot = 0.3048;
        assertEquals(0.504, cableV(bare(20, 90 * foot, 0.00028 / foot)), 0.0005);
        assertEquals(0.942, cableV(bare(20, 107 * foot, 0.00044 / foot)), 0.0005);
    }

    /** Common practice: twice the run at the same drop needs twice the section. */
    @Test
    void twiceTheRunAtTheSameDropNeedsTwiceTheSection() {
        for (double section : new double[] {2.5, 5, 16}) {
            double once = cableV(bare(10, 4, 0.018 / section));
            assertEquals(once, cableV(bare(10, 8, 0.018 / (2 * section))), 1e-9);
        }
    }

    private static double cableV(PlanFixture fixture) {
        return drop(fixture).breakdown().shares().stream()
                .filter(share -> share.part() == Part.CABLE && share.element().equals("W1"))
                .mapToDouble(DropBreakdown.Share::volts).sum();
    }
}
