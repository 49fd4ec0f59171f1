// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Breaking capacity, inrush, selectivity, both ends, cases. */
class DeviceProtectionRulesTest {

    private static List<Finding> breaking(PlanFixture fixture) {
        return CheckFixture.findings(new BreakingCapacityRule(), fixture);
    }

    @Test
    void aFuseBreaksUpToItsCapacity() {
        Finding finding = breaking(ProtectionRulesTest.fused(30, 2.5, 3).set("F1#1", "breakingA", 1000.0)).get(0);
        assertEquals("F1.1", finding.element());
        double faultA = finding.is().value();
        assertTrue(faultA > 1000 && faultA < 13 / 0.004, finding.title());
        assertEquals(List.of(), breaking(ProtectionRulesTest.fused(30, 2.5, 3).set("F1#1", "breakingA", faultA)));
        assertEquals(1, breaking(ProtectionRulesTest.fused(30, 2.5, 3).set("F1#1", "breakingA", faultA - 1)).size());
        assertEquals("G1", finding.causes().get(0).element());
    }

    @Test
    void aFuseIsRatedForTheVoltage() {
        assertEquals(List.of(), breaking(ProtectionRulesTest.fused(30, 2.5, 3).set("F1#1", "ratedV", 12.8)));
        Finding finding = breaking(ProtectionRulesTest.fused(30, 2.5, 3).set("F1#1", "ratedV", 12.0)).get(0);
        assertEquals("V", finding.is().unit());
        assertEquals(12, finding.wanted().value());
    }

    /** A second fuse behind the first one. */
    private static PlanFixture twoFuses(double upstreamA, double downstreamA) {
        return new PlanFixture().domain("12V", 12, "G1.30").zone("dry", 25, 25).place("here", 0, 0, 0, "dry")
                .battery("G1", 12, 0.004, 0.012, 100).box("F1", 1).at("F1", "here").fuse("F1", "1", upstreamA)
                .set("F1#1", "breakingA", 10000.0).box("F2", 1).at("F2", "here").fuse("F2", "1", downstreamA)
                .load("E1", "current", 5, 12).cable("W1", 35, 0.15, "G1.30", "F1.30").cable("W4", 16, 1, "F1.1", "F2.30")
                .cable("W2", 2.5, 3, "F2.1", "E1.L+").cable("W3", 2.5, 3, "E1.L-", "G1.31")
                .state("on", c -> c.on("E1").ambient(25));
    }

    @Test
    void behindADeviceThatBreaksItAllHalfIsEnough() {
        double faultA = breaking(twoFuses(100, 20).set("F2#1", "breakingA", 10.0)).get(0).is().value();
        assertEquals(List.of(), breaking(twoFuses(100, 20).set("F2#1", "breakingA", faultA)));
        assertEquals(1, breaking(twoFuses(100, 20).set("F2#1", "breakingA", faultA - 1)).size());
        assertEquals(2 * faultA, breaking(twoFuses(100, 20).set("F2#1", "breakingA", 10.0)
                .limit("breaking-capacity.branch", 1)).get(0).is().value(), 1e-6);
        assertTrue(breaking(twoFuses(100, 20).set("F2#1", "breakingA", faultA).set("F1#1", "breakingA", faultA)).stream()
                .anyMatch(finding -> finding.element().equals("F2.1")));
    }

    private static List<Finding> selectivity(PlanFixture fixture) {
        return CheckFixture.findings(new SelectivityRule(), fixture);
    }

    /** Upstream melts 4 x 100 A in 0.05 s at its fastest; downstream takes so long at 10 times its rating: 40 A. */
    @Test
    void aDeviceFarBelowTheOneUpstreamIsSelective() {
        assertEquals(List.of(), selectivity(twoFuses(100, 10)));
        assertEquals(List.of(), selectivity(twoFuses(100, 39.9)));
    }

    @Test
    void aDeviceNearTheOneUpstreamIsSelectiveUpToACurrent() {
        Finding finding = selectivity(twoFuses(100, 40)).get(0);
        assertEquals(400, finding.is().value(), 1e-6);
        assertEquals("F2.1", finding.element());
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals("F1.1", finding.causes().get(0).element());
        assertTrue(finding.is().value() < finding.wanted().value(), finding.title());
    }

    @Test
    void aDeviceLargerThanTheOneUpstreamIsNotSelectiveAtAll() {
        Finding finding = selectivity(twoFuses(30, 40)).get(0);
        assertTrue(finding.title().contains("or first"), finding.title());
    }

    private static List<Finding> inrush(double amps, double seconds) {
        return CheckFixture.findings(new InrushMarginRule(), twoFuses(100, 20).set("E1#load", "inrushA", amps)
                .set("E1#load", "inrushS", seconds));
    }

    /** The fastest curve melts 2 x 20 A in 1 s at 25 degrees Celsius; 0.8 of it are 32 A. */
    @Test
    void anInrushKeepsAMarginToTheFastestCurve() {
        assertEquals(List.of(), inrush(20, 1));
        assertEquals(List.of(), inrush(32, 1));
        Finding finding = inrush(32.1, 1).get(0);
        assertEquals("F2.1", finding.element());
        assertEquals(32, finding.wanted().value(), 1e-9);
        assertEquals("E1", finding.causes().get(0).element());
    }

    /** The smallest melting integral is (10 x 20 A)^2 x 0.01 s = 400 A2s; half of it are 200. */
    @Test
    void theChargeOfACapacitorKeepsAMarginToTheMeltingIntegral() {
        PlanFixture fixture = twoFuses(100, 20).set("E1#load", "inrushFarad", 10.0);
        Finding finding = CheckFixture.findings(new InrushMarginRule(), fixture).stream()
                .filter(f -> f.element().equals("F2.1")).findFirst().orElseThrow();
        assertEquals("A2s", finding.is().unit());
        assertEquals(200, finding.wanted().value(), 1e-6);
        double farad = 10 * 200 / finding.is().value();
        assertEquals(List.of(), CheckFixture.findings(new InrushMarginRule(),
                twoFuses(100, 20).set("E1#load", "inrushFarad", farad * 0.999)));
        assertEquals(1, CheckFixture.findings(new InrushMarginRule(),
                twoFuses(100, 20).set("E1#load", "inrushFarad", farad * 1.001)).size());
    }

    /** Two batteries, a fuse near the first one. */
    private static PlanFixture linked(double lengthM, double sectionMm2) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .battery("G2", 12, 0.004, 0.012, 100).box("F1", 1).fuse("F1", "1", 60)
                .cable("W1", 16, 0.1, "G1.30", "F1.30").cable("W2", sectionMm2, lengthM, "F1.1", "G2.30")
                .cable("W3", 16, 1, "G1.31", "G2.31").load("E1", "current", 2, 12)
                .state("on", c -> c.ambient(40));
    }

    private static List<Finding> bothEnds(PlanFixture fixture) {
        return CheckFixture.findings(new BothEndsRule(), fixture);
    }

    @Test
    void aConductorBetweenTwoBatteriesNeedsADeviceAtEachEnd() {
        Finding finding = bothEnds(linked(3, 16)).get(0);
        assertEquals("W2", finding.element());
        assertEquals(List.of("G2", "F1.1"), finding.causes().stream().map(c -> c.element()).toList());
        assertEquals(100, finding.wanted().value(), 1e-9);
    }

    @Test
    void withinTheFirstDistanceNoneIsNeeded() {
        assertEquals(List.of(), bothEnds(linked(0.178, 16)));
        assertEquals(1, bothEnds(linked(0.179, 16)).size());
    }

    @Test
    void aSourceThatCannotExceedTheRatingNeedsNone() {
        PlanFixture solar = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .alternator("G2", 14.4, 30).box("F1", 1).fuse("F1", "1", 60).cable("W1", 16, 0.1, "G1.30", "F1.30")
                .cable("W2", 10, 3, "F1.1", "G2.B+").cable("W3", 16, 1, "G1.31", "G2.B-").state("on", c -> c.ambient(40));
        assertEquals(List.of(), bothEnds(solar));
        assertEquals(1, bothEnds(solar.set("G2#source", "limitA", 400.0)).size());
    }

    /** A load with a metal case behind 4 mm2. */
    private static PlanFixture cased() {
        return ProtectionRulesTest.fused(30, 4, 3).device("X9", "busbar", "1:minus").device("T1", "load", "L+:plus", "L-:minus",
                "case:case").demand("T1", "load", "L+", "L-", "current", 2, 12).cable("W5", 4, 2, "F1.1", "T1.L+")
                .cable("W6", 4, 2, "T1.L-", "G1.31");
    }

    private static List<Finding> cases(PlanFixture fixture) {
        return CheckFixture.findings(new CaseEarthRule(), fixture);
    }

    @Test
    void aMetalCaseWithoutAConductorIsAnError() {
        Finding finding = cases(cased()).get(0);
        assertEquals("T1", finding.element());
        assertEquals("W5", finding.causes().get(0).element());
        assertTrue(finding.mends().get(0).text().contains("2.5 mm2"), finding.mends().get(0).text());
    }

    @Test
    void oneSizeBelowTheSupplyIsEnough() {
        assertEquals(List.of(), cases(cased().cable("W7", 2.5, 2, "T1.case", "G1.31")));
        Finding finding = cases(cased().cable("W7", 1.5, 2, "T1.case", "G1.31")).get(0);
        assertEquals("W7", finding.element());
        assertEquals(2.5, finding.wanted().value());
        assertEquals(List.of(), cases(cased().cable("W7", 1.5, 2, "T1.case", "G1.31").limit("case-earth.sizes-below", 2)));
    }

    @Test
    void aCaseBoltedToABodyIsEarthed() {
        assertEquals(List.of(), cases(cased().body("frame").bolted("T1", "frame")));
    }

    @Test
    void aCaseConductorBearsTheFault() {
        PlanFixture weak = cased().cable("W7", 2.5, 2, "T1.case", "G1.31").set("F1#1", "ratingA", 400.0);
        assertTrue(cases(weak).stream().anyMatch(f -> f.element().equals("W7") && "degC".equals(f.is().unit())),
                cases(weak).toString());
    }
}
