// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/** Ratings, loading and places of protective devices. The test table rates 1 mm2 for 16 A, 2.5 mm2 for 30 A, 6 for 50 A. */
class ProtectorRulesTest {

    private static PlanFixture fused(double fuseA, double sectionMm2, double loadA) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).box("F1", 2)
                .fuse("F1", "1", fuseA).load("E1", "current", loadA, 12).cable("W1", 16, 0.15, "G1.30", "F1.30")
                .cable("W2", sectionMm2, 3, "F1.1", "E1.L+").cable("W3", sectionMm2, 3, "E1.L-", "G1.31")
                .state("on", c -> c.on("E1").ambient(40));
    }

    private static List<Finding> rating(PlanFixture fixture) {
        return CheckFixture.findings(new DeviceRatingRule(), fixture);
    }

    @Test
    void aFuseUpToTheRatingOfTheConductorPasses() {
        assertEquals(List.of(), rating(fused(25, 2.5, 10)));
        assertEquals(List.of(), rating(fused(30, 2.5, 10)));
    }

    @Test
    void aFuseBeyondTheRatingIsAnErrorAtTheConductor() {
        Finding finding = rating(fused(40, 2.5, 10)).get(0);
        assertEquals("W2", finding.element());
        assertEquals("F1.1", finding.causes().get(0).element());
        assertEquals(30, finding.wanted().value(), 1e-9);
        assertTrue(finding.mends().get(0).text().contains("at most 30 A"), finding.mends().get(0).text());
        assertEquals(List.of(new Mend.UseSection("W2", 4)), finding.mends().get(1).changes());
    }

    @Test
    void aThinnerTapIsJudgedByTheDeviceUpstream() {
        PlanFixture fixture = fused(30, 2.5, 10).device("X1", "splice", "1:plus", "2:plus")
                .element("X1#joint", n -> new Plan.Joint("X1#joint", n.device("X1"),
                        n.terminal("X1.1"), n.terminal("X1.2"), 0.0001, Double.NaN))
                .cable("W4", 6, 1, "F1.1", "X1.1").load("E2", "current", 2, 12).cable("W5", 1, 1, "X1.2", "E2.L+")
                .cable("W6", 1, 1, "E2.L-", "G1.31");
        List<Finding> findings = rating(fixture);
        assertEquals(List.of("W5"), findings.stream().map(Finding::element).toList());
        assertEquals(16, findings.get(0).wanted().value(), 1e-9);
    }

    @Test
    void coresInParallelCountTogether() {
        PlanFixture fixture = fused(50, 2.5, 10).cable("W4", 2.5, 3, "F1.1", "E1.L+").set("W2@1", "parallelGroup", "pair")
                .set("W4@1", "parallelGroup", "pair");
        assertEquals(List.of(), rating(fixture));
    }

    @Test
    void fixedLoadsMayHaveAnotherRatio() {
        assertEquals(List.of(), rating(fused(40, 2.5, 10).limit("device-rating.ratio-fixed", 1.5)));
        assertEquals(1, rating(fused(40, 2.5, 10).limit("device-rating.ratio-fixed", 1.5).set("E1#load", "canOverload", true))
                .size());
    }

    private static List<Finding> loading(PlanFixture fixture) {
        return CheckFixture.findings(new DeviceLoadingRule(), fixture);
    }

    /** At 25 degrees Celsius the test curve's factor is 1. */
    private static PlanFixture loaded(double fuseA, double loadA) {
        return fused(fuseA, 6, loadA).state("mild", c -> c.on("E1").ambient(25)).state("on2", c -> c.ambient(25));
    }

    private static List<Finding> mild(PlanFixture fixture) {
        CheckContext context = CheckFixture.context(fixture);
        return new DeviceLoadingRule().check(context.withCases(
                context.cases().stream().filter(solved -> "mild".equals(solved.state().name())).toList()));
    }

    @Test
    void threeQuartersOfTheRatingPass() {
        assertEquals(List.of(), mild(loaded(20, 15)));
        assertEquals(Severity.WARNING, mild(loaded(20, 15.01)).get(0).severity());
    }

    @Test
    void theWholeRatingIsTheEnd() {
        assertEquals(Severity.WARNING, mild(loaded(20, 20)).get(0).severity());
        Finding finding = mild(loaded(20, 20.1)).get(0);
        assertEquals(Severity.ERROR, finding.severity());
        assertEquals("F1.1", finding.element());
        assertEquals("E1", finding.causes().get(0).element());
    }

    @Test
    void heatTakesFromTheRating() {
        Finding finding = loading(fused(20, 6, 14.5)).get(0);
        assertEquals(20 * 0.75 * (1 - 0.1 * 15 / 40), finding.wanted().value(), 1e-9);
    }

    @Test
    void rippleAddsHeat() {
        assertEquals(List.of(), mild(loaded(20, 14)));
        Finding finding = mild(loaded(20, 14).set("E1#load", "formFactor", 1.11)).get(0);
        assertEquals(14 * 1.11, finding.is().value(), 1e-9);
    }

    @Test
    void aDutyDoesNotRelieveAFuse() {
        PlanFixture fixture = fused(20, 6, 16).state("mild", c -> c.duty("E1", 60, 600).ambient(25));
        assertEquals(1, mild(fixture).size());
    }

    private static List<Finding> distance(PlanFixture fixture) {
        return CheckFixture.findings(new FirstDeviceDistanceRule(), fixture);
    }

    private static PlanFixture distant(double metres) {
        return fused(20, 6, 10).cable("W9", 10, metres, "G1.30", "F1.30").set("W1", "lengthMm", metres * 1000);
    }

    @Test
    void aBareConductorMeetsItsDeviceWithinSevenInches() {
        assertEquals(List.of(), distance(distant(0.170)));
        assertEquals(List.of(), distance(distant(0.178)));
        List<Finding> findings = distance(distant(0.179));
        assertEquals(List.of("W1", "W9"), findings.stream().map(Finding::element).sorted().toList());
        assertEquals("G1", findings.get(0).causes().get(0).element());
    }

    @Test
    void aSheathAtTheBatteryPermitsMore() {
        assertEquals(List.of(), distance(distant(1.829).set("W1", "sheathed", true).set("W9", "sheathed", true)));
        assertEquals(2, distance(distant(1.84).set("W1", "sheathed", true).set("W9", "sheathed", true)).size());
    }

    @Test
    void aDuctPermitsMoreWhereItGoesAllTheWay() {
        PlanFixture fixture = distant(1.2).place("a", 0, 0, 0, null).place("b", 600, 0, 0, null).place("c", 1200, 0, 0, null)
                .run("R1", "a", "b", 600, null, null).run("R2", "b", "c", 600, null, null);
        for (String open : List.of("R1 R2", "R1/D1 R2", "R1 R2/D2")) {
            List<Finding> findings = distance(fixture.lay("W1", open.split(" ")).lay("W9", open.split(" ")));
            assertEquals(List.of(178.0, 178.0), findings.stream().map(f -> f.wanted().value()).toList(), open);
        }
        assertEquals(List.of(), distance(fixture.lay("W1", "R1/D1", "R2/D2").lay("W9", "R1/D1", "R2/D2")));
    }

    @Test
    void aSheathElsewherePermitsLess() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).body("engine")
                .starter("M1", 0.03, "engine").earthPoint("XE1", "engine").cable("W1", 50, 1.2, "G1.30", "M1.30")
                .cable("W2", 50, 0.5, "G1.31", "XE1").box("F1", 1).fuse("F1", "1", 20).load("E1", "current", 5, 12)
                .cable("W5", 2.5, 1, "F1.1", "E1.L+").cable("W6", 2.5, 1, "E1.L-", "G1.31")
                .cable("W4", 16, 1.0, "M1.30", "F1.30").set("W4", "sheathed", true).state("on", c -> c.on("E1"));
        assertEquals(List.of(), distance(fixture));
        Finding finding = distance(fixture.set("W4", "lengthMm", 1100.0)).get(0);
        assertEquals("W4", finding.element());
        assertEquals(1016, finding.wanted().value());
        assertEquals(1100, finding.is().value());
    }

    @Test
    void aConductorThatNeverMeetsADeviceIsFoundHoweverShort() {
        Finding finding = distance(fused(20, 6, 10).load("E2", "current", 1, 12).cable("W7", 1, 0.1, "G1.30", "E2.L+")
                .cable("W8", 1, 0.1, "E2.L-", "G1.31")).get(0);
        assertEquals("W7", finding.element());
        assertTrue(finding.title().contains("without any protective device"), finding.title());
    }

    @Test
    void aSourceThatLimitsItsCurrentNeedsNoDeviceForAConductorThatBearsIt() {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "T1.OUT+").battery("G1", 24, 0.004, 0.012, 100)
                .domain("24V", 24, "G1.30").box("F1", 1).fuse("F1", "1", 20).converter("T1", 13.6, 20)
                .cable("W1", 6, 0.1, "G1.30", "F1.30").cable("W2", 6, 1, "F1.1", "T1.IN+").cable("W3", 6, 1, "T1.IN-", "G1.31")
                .cable("W4", 6, 1, "T1.OUT-", "G1.31").load("E1", "current", 5, 12).cable("W5", 2.5, 2, "T1.OUT+", "E1.L+")
                .cable("W6", 2.5, 2, "E1.L-", "T1.OUT-").state("on", c -> c.on("E1").ambient(40));
        assertEquals(List.of(), distance(fixture));
        assertEquals(1, distance(fixture.set("T1#converter", "limitA", 31.0)).size());
    }

    @Test
    void anAlternatorLimitsItsCurrentByTheLargestOfItsPoints() {
        PlanFixture fixture = fused(20, 6, 10).alternator("G2", 14.4, 60).cable("W7", 16, 3, "G2.B+", "F2.1")
                .cable("W8", 16, 3, "G2.B-", "G1.31").box("F2", 1).fuse("F2", "1", 80)
                .cable("W9", 16, 0.1, "F2.30", "G1.30").set("G2#source", "limitA", Double.NaN)
                .set("G2#source", "limits", List.of(new Plan.LimitPoint(1000, Double.NaN, 40),
                        new Plan.LimitPoint(5000, Double.NaN, 90)));
        assertEquals(List.of(), distance(fixture));
        assertEquals("W7", distance(fixture.set("G2#source", "limits", List.of(new Plan.LimitPoint(5000, Double.NaN, 101))))
                .get(0).element());
    }

    @Test
    void circuitsNameWhatIsUpstreamAndBelow() {
        CheckContext context = CheckFixture.context(fused(20, 6, 10));
        int fuse = PlanIndex.element(context.plan(), "F1#1");
        assertEquals(List.of(fuse), context.circuits().upstreamOf(PlanIndex.conductor(context.plan(), "W2@1")));
        assertEquals(List.of(), context.circuits().upstreamOf(PlanIndex.conductor(context.plan(), "W1@1")));
        assertEquals(List.of(), context.circuits().upstreamOf(PlanIndex.conductor(context.plan(), "W3@1")));
        assertEquals(List.of(PlanIndex.element(context.plan(), "E1#load")), context.circuits().consumersBelow(fuse));
    }
}
