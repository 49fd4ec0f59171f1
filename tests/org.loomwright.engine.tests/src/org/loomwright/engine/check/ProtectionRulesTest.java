// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/**
 * Overload, short circuit, clearing and returns. The test table rates 1 mm2 for 16 A, 1.5 for 20, 2.5 for 30, 4 for 40 and 6 for
 * 50 A at 40 degrees Celsius; the test fuse clears for certain from 1.35 times its rating and takes 600 s there.
 */
class ProtectionRulesTest {

    /** One load behind one fuse; neutral ambient so that the curve's factor at its coldest (25 degrees) is 1. */
    static PlanFixture fused(double fuseA, double sectionMm2, double metres) {
        return new PlanFixture().domain("12V", 12, "G1.30").zone("dry", 25, 40).place("here", 0, 0, 0, "dry")
                .battery("G1", 12, 0.004, 0.012, 100).box("F1", 2).at("F1", "here").fuse("F1", "1", fuseA)
                .set("F1#1", "breakingA", 10000.0).load("E1", "current", 5, 12).cable("W1", 16, 0.15, "G1.30", "F1.30")
                .cable("W2", sectionMm2, metres, "F1.1", "E1.L+").cable("W3", sectionMm2, metres, "E1.L-", "G1.31")
                .state("on", c -> c.on("E1").ambient(40));
    }

    private static List<Finding> overload(PlanFixture fixture) {
        return CheckFixture.findings(new OverloadBandRule(), fixture.set("E1#load", "canOverload", true));
    }

    @Test
    void anOverloadThatTheFuseClearsBelowTheBandPasses() {
        assertEquals(List.of(), overload(fused(20, 2.5, 3)));
    }

    /** 1.35 x 30 A = 40.5 A against 1.45 x 30 A = 43.5 A. */
    @Test
    void theBandIsAboveTheRating() {
        assertEquals(List.of(), overload(fused(30, 2.5, 3)));
        assertEquals(List.of(), overload(fused(30, 2.5, 3).limit("overload-band.factor", 1.35)));
    }

    @Test
    void anOverloadThatTheFuseLetsFlowIsAnErrorAtTheConductor() {
        List<Finding> findings = overload(fused(40, 2.5, 3));
        assertEquals(List.of("W2"), findings.stream().map(Finding::element).toList());
        assertEquals(54, findings.get(0).is().value(), 1e-9);
        assertEquals(43.5, findings.get(0).wanted().value(), 1e-9);
        assertEquals("F1.1", findings.get(0).causes().get(0).element());
        assertTrue(findings.get(0).mends().stream().anyMatch(m -> m.changes().equals(List.of(new Mend.UseSection("W2", 4)))));
    }

    @Test
    void aLoadThatCannotOverloadNeedsNoBand() {
        assertEquals(List.of(), CheckFixture.findings(new OverloadBandRule(), fused(40, 2.5, 3)));
    }

    private static List<Finding> shorted(PlanFixture fixture) {
        return CheckFixture.findings(new ShortWithstandRule(), fixture);
    }

    @Test
    void aConductorThatStaysBelowItsShortTimeLimitPasses() {
        assertEquals(List.of(), shorted(fused(30, 2.5, 3)));
    }

    @Test
    void aConductorThatGetsHotterIsAnErrorWithASectionThatBearsIt() {
        List<Finding> findings = shorted(fused(100, 1, 3));
        assertEquals(List.of("W2"), findings.stream().map(Finding::element).toList());
        Finding finding = findings.get(0);
        assertEquals(160, finding.wanted().value());
        assertTrue(finding.is().value() > 160, finding.title());
        Mend.UseSection mend = (Mend.UseSection) finding.mends().get(finding.mends().size() - 1).changes().get(0);
        assertEquals(List.of(), shorted(fused(100, mend.sectionMm2(), 3)));
    }

    @Test
    void theLimitIsTheTemperatureItself() {
        double peakC = shorted(fused(100, 1, 3)).get(0).is().value();
        assertEquals(List.of(), shorted(fused(100, 1, 3).set("W2", "shortTimeMaxC", peakC + 0.01)));
        assertEquals(1, shorted(fused(100, 1, 3).set("W2", "shortTimeMaxC", peakC - 0.01)).size());
    }

    private static List<Finding> clears(PlanFixture fixture) {
        return CheckFixture.findings(new FaultClearsRule(), fixture);
    }

    @Test
    void aShortLoopClears() {
        assertEquals(List.of(), clears(fused(30, 2.5, 3)));
    }

    @Test
    void aLoopOfTooMuchResistanceIsAnErrorWithWhatItWouldNeed() {
        List<Finding> findings = clears(fused(100, 1, 9));
        assertEquals(List.of("W2"), findings.stream().map(Finding::element).toList());
        Finding finding = findings.get(0);
        assertTrue(finding.is().value() < finding.wanted().value(), finding.title());
        assertTrue(finding.causes().stream().anyMatch(cause -> cause.element().equals("W2")), finding.causes().toString());
    }

    @Test
    void theTimeIsThePractices() {
        assertEquals(List.of(), clears(fused(15, 1, 9).limit("fault-clears.time", 1000)));
        assertEquals(1, clears(fused(15, 1, 9)).size());
    }

    /** The load returns through a body over a bad strap. */
    private static PlanFixture strapped(double milliohm) {
        return new PlanFixture().domain("12V", 12, "G1.30").zone("dry", 25, 40).place("here", 0, 0, 0, "dry")
                .body("frame").body("cabin").battery("G1", 12, 0.004, 0.012, 100).box("F1", 2).at("F1", "here")
                .fuse("F1", "1", 30).set("F1#1", "breakingA", 10000.0).load("E1", "current", 5, 12)
                .cable("W1", 16, 0.15, "G1.30", "F1.30").cable("W2", 2.5, 3, "F1.1", "E1.L+")
                .cable("W3", 2.5, 0.5, "E1.L-", "XE1").earthPoint("XE1", "cabin").earthPoint("XE2", "cabin")
                .earthPoint("XE3", "frame").earthPoint("XE4", "frame").bond("WE1", "XE2", "XE3", milliohm)
                .cable("W4", 16, 0.5, "G1.31", "XE4").state("on", c -> c.on("E1").ambient(40));
    }

    @Test
    void aStrapThatKeepsAFaultFromClearingIsNamedWithTheStrapThatWouldSuffice() {
        assertEquals(List.of(), clears(strapped(0.3)));
        Finding finding = clears(strapped(300)).get(0);
        assertEquals("W2", finding.element());
        assertEquals("WE1", finding.causes().get(0).element());
        assertTrue(finding.mends().get(0).text().startsWith("Make good the strap -WE1"), finding.mends().get(0).text());
        assertTrue(finding.mends().get(0).changes().get(0) instanceof Mend.AddBond, finding.mends().toString());
    }

    @Test
    void aFaultWithoutAWayBackIsSaidToHaveNone() {
        PlanFixture loose = new PlanFixture().domain("12V", 12, "G1.30").body("rack").battery("G1", 12, 0.004, 0.012, 100)
                .box("F1", 1).fuse("F1", "1", 30).load("E1", "current", 5, 12).cable("W1", 16, 0.15, "G1.30", "F1.30")
                .cable("W2", 2.5, 3, "F1.1", "E1.L+").cable("W3", 2.5, 0.5, "E1.L-", "XE1").earthPoint("XE1", "rack")
                .cable("W4", 16, 0.5, "G1.31", "X1.31").negativeBar("X1", 1).state("on", c -> c.on("E1").ambient(40));
        Finding finding = clears(loose).get(0);
        assertTrue(finding.title().contains("no way back"), finding.title());
    }

    private static List<Finding> returns(PlanFixture fixture) {
        return CheckFixture.findings(new ReturnProtectedRule(), fixture);
    }

    @Test
    void aReturnAsThickAsItsSupplyPasses() {
        assertEquals(List.of(), returns(fused(30, 2.5, 3)));
    }

    @Test
    void aThinReturnIsJudgedByTheDeviceInTheSupply() {
        PlanFixture thin = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).box("F1", 1)
                .fuse("F1", "1", 30).load("E1", "current", 5, 12).cable("W1", 16, 0.15, "G1.30", "F1.30")
                .cable("W2", 6, 3, "F1.1", "E1.L+").cable("W3", 1, 3, "E1.L-", "G1.31")
                .state("on", c -> c.on("E1").ambient(40));
        Finding finding = returns(thin).get(0);
        assertEquals("W3", finding.element());
        assertEquals("F1.1", finding.causes().get(0).element());
        assertEquals(30, finding.is().value(), 1e-9);
        assertEquals(16, finding.wanted().value(), 1e-9);
    }

    @Test
    void aReturnMayBeRatedJustForTheDevice() {
        assertEquals(List.of(), returns(fused(20, 1.5, 3)));
        assertEquals("W3", returns(fused(20.1, 1.5, 3)).get(0).element());
    }

    @Test
    void whatTheMakerBuiltIsTrustedUnlessThePracticeSaysOtherwise() {
        PlanFixture fixture = fused(40, 2.5, 3).set("E1#load", "canOverload", true).set("W2", "existing", true)
                .set("F1", "existing", true).set("E1", "existing", true);
        assertEquals(List.of(), CheckFixture.findings(new OverloadBandRule(), fixture));
        assertEquals(1, CheckFixture.findings(new OverloadBandRule(), fixture.choice("protection.existing", "judged")).size());
    }

    @Test
    void whatIsAddedToAnExistingCircuitIsJudgedWithIt() {
        PlanFixture fixture = fused(40, 2.5, 3).set("E1#load", "canOverload", true).set("W2", "existing", true)
                .set("F1", "existing", true);
        assertEquals(1, CheckFixture.findings(new OverloadBandRule(), fixture).size());
    }

    @Test
    void aSoundVehicleGivesNoErrorFromAnyOfTheRules() {
        PlanFixture van = SoundVan.fixture();
        for (String fuse : List.of("F1#1", "F1#2", "F1#3", "F2#1", "F2#2", "F2#3", "F3#1")) {
            van.set(fuse, "breakingA", 10000.0);
        }
        CheckContext context = CheckFixture.context(van);
        for (Rule rule : ProtectionRules.all()) {
            assertEquals(List.of(), rule.check(context).stream().filter(f -> f.severity() == Severity.ERROR)
                    .map(Finding::title).toList(), rule.slug());
        }
    }

    @Test
    void limitsThatTheRulesReadAreInTheCommonPractice() {
        Plan plan = fused(30, 2.5, 3).build();
        for (Rule rule : ProtectionRules.all()) {
            rule.limits().forEach(limit -> plan.practice().limit(limit));
        }
    }

    @Test
    void theTableIsWorkedOutOnceForOneContext() {
        CheckContext context = CheckFixture.context(fused(30, 2.5, 3));
        assertSame(context.protection(), context.protection());
        assertTrue(context.withCases(context.cases()).protection() != context.protection());
    }

    @Test
    void theRulesAloneGiveAResultOfTheirOwn() {
        CheckContext context = CheckFixture.context(fused(100, 1, 3));
        List<String> rules = ProtectionRules.judge(context, new BasicMonitor()).findings().stream().map(Finding::rule).distinct()
                .sorted().toList();
        assertTrue(rules.contains("short-withstand"), rules.toString());
        assertTrue(rules.stream().allMatch(slug -> ProtectionRules.all().stream().anyMatch(rule -> rule.slug().equals(slug))));
    }
}
