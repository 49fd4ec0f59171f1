// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/**
 * Heat, surroundings, sections and parallel cores. The test table rates 1.5 mm2 for 20 A, 2.5 for 30 A, 4 for 40 A at 40
 * degrees Celsius.
 */
class ConductorRulesTest {

    private static PlanFixture one(double amps, double sectionMm2, double ambientC) {
        return new PlanFixture().domain("12V", 12, "G1.30").zone("bay", -20, 60).place("rear", 0, 0, 0, "bay")
                .place("front", 3000, 0, 0, "bay").run("R1", "rear", "front", 3000, "bay", null)
                .battery("G1", 12, 0.004, 0.012, 100).load("E1", "current", amps, 12)
                .cable("W1", sectionMm2, 3, "G1.30", "E1.L+").lay("W1", "R1").cable("W2", 50, 1, "E1.L-", "G1.31")
                .state("on", c -> c.on("E1").ambient(ambientC));
    }

    private static List<Finding> hot(PlanFixture fixture) {
        return CheckFixture.findings(new ConductorHotRule(), fixture);
    }

    @Test
    void withinTheRatingStaysBelowTheClass() {
        assertEquals(List.of(), hot(one(25, 2.5, 40)));
    }

    @Test
    void beyondTheRatingIsHotAndThickerIsProposed() {
        Finding finding = hot(one(36, 2.5, 40)).get(0);
        assertEquals("W1", finding.element());
        assertEquals(90, finding.wanted().value());
        assertTrue(finding.is().value() > 90);
        assertEquals(List.of(new Mend.UseSection("W1", 4)), finding.mends().get(0).changes());
        assertEquals("E1", finding.causes().get(0).element());
    }

    @Test
    void exactlyTheRatingPasses() {
        assertEquals(List.of(), hot(one(30, 2.5, 40)));
        assertEquals(1, hot(one(30.01, 2.5, 40)).size());
    }

    @Test
    void hotterSurroundingsNeedLessCurrent() {
        assertEquals(1, hot(one(29, 2.5, 50)).size());
        assertEquals(List.of(), hot(one(29, 2.5, 40)));
    }

    @Test
    void aShortDutyIsJudgedByItsPeak() {
        PlanFixture fixture = one(45, 2.5, 40).state("shortly", c -> c.duty("E1", 5, 600).ambient(40))
                .state("longer", c -> c.duty("E1", 900, 1800).ambient(40));
        CheckContext context = CheckFixture.context(fixture);
        List<Finding> each = context.cases().stream()
                .flatMap(one -> new ConductorHotRule().check(context.withCases(List.of(one))).stream()).toList();
        assertEquals(List.of("on", "longer"), each.stream().map(Finding::caseName).toList());
        assertTrue(each.get(1).is().value() > 90);
    }

    private static List<Finding> ambient(double maxC) {
        return CheckFixture.findings(new AmbientClassRule(), one(5, 2.5, 40).set("W1", "maxC", maxC));
    }

    @Test
    void hottestZoneMustStayAMarginBelowTheClass() {
        assertEquals(List.of(), ambient(90));
        assertEquals(List.of(), ambient(70));
        Finding finding = ambient(69.9).get(0);
        assertEquals("W1", finding.element());
        assertEquals("bay", finding.causes().get(0).element());
        assertEquals(Severity.ERROR, finding.severity());
    }

    private static List<Finding> section(double sectionMm2, boolean sheathed, boolean existing) {
        return CheckFixture.findings(new SectionMinRule(), one(5, 2.5, 40).set("W1", "sectionMm2", sectionMm2)
                .set("W1", "sheathed", sheathed).set("W1", "existing", existing));
    }

    @Test
    void smallestSectionDependsOnTheSheath() {
        assertEquals(List.of(), section(1.0, false, false));
        assertEquals(List.of(), section(0.75, true, false));
        Finding finding = section(0.75, false, false).get(0);
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals(List.of(new Mend.UseSection("W1", 1.0)), finding.mends().get(0).changes());
        assertEquals(1, section(0.5, true, false).size());
        assertEquals(List.of(), section(0.5, false, true));
    }

    private static PlanFixture parallel(double amps, double second) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .load("E1", "current", amps, 12).cable("W1", 2.5, 3, "G1.30", "E1.L+").cable("W2", second, 3, "G1.30", "E1.L+")
                .cable("W3", 50, 1, "E1.L-", "G1.31").set("W1@1", "parallelGroup", "pair").set("W2@1", "parallelGroup", "pair")
                .state("on", c -> c.on("E1").ambient(40));
    }

    private static List<Finding> share(PlanFixture fixture) {
        return CheckFixture.findings(new ParallelShareRule(), fixture);
    }

    @Test
    void eachOfAPairCarriesTheWholeWhenTheOtherIsLost() {
        assertEquals(List.of(), share(parallel(29, 2.5)));
        assertEquals(List.of(), share(parallel(30, 2.5)));
        List<Finding> findings = share(parallel(31, 2.5));
        assertEquals(List.of("W1", "W2"), findings.stream().map(Finding::element).toList());
        assertEquals(31, findings.get(0).is().value(), 1e-6);
        assertEquals("W2", findings.get(0).causes().get(0).element());
    }

    @Test
    void unlikeCoresInParallelAreAnError() {
        assertTrue(share(parallel(10, 4)).stream().anyMatch(finding -> finding.title().contains("must be alike")));
    }

    @Test
    void namesTheGroupingInTheReason() {
        PlanFixture fixture = one(29, 2.5, 40).load("E2", "current", 29, 12).cable("W5", 2.5, 3, "G1.30", "E2.L+")
                .lay("W5", "R1").cable("W6", 50, 1, "E2.L-", "G1.31").state("two", c -> c.on("E1", "E2").ambient(40));
        Finding finding = hot(fixture).get(0);
        assertEquals("two", finding.caseName());
        assertTrue(finding.why().get(0).contains("with 2 together"), finding.why().get(0));
    }
}
