// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/** Bodies whose return current goes home through the return of a device. */
class MissingBondsTest {

    /** The engine without strap: what returns into it leaves by the case and the thin return of a gauge. */
    private static PlanFixture withoutStrap() {
        return EarthFixture.withGauge(new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .body("chassis").body("engine").earthPoint("XE1", "chassis").earthPoint("XE2", "chassis")
                .earthPoint("XE3", "engine").cable("W1", 35, 1, "G1.31", "XE1").load("E1", "current", 6, 12)
                .cable("W2", 4, 1, "G1.30", "E1.L+").cable("W3", 4, 1, "E1.L-", "XE3"));
    }

    private static List<Finding> found(PlanFixture fixture) {
        return EarthFixture.study(fixture).result().findings().stream().filter(each -> each.rule().equals("body-unbonded"))
                .toList();
    }

    @Test
    void theWayTheCurrentTakesIsNamed() {
        Finding finding = found(withoutStrap()).get(0);
        assertEquals("engine", finding.element());
        assertEquals(Severity.ERROR, finding.severity());
        assertTrue(finding.title().contains("6 A go home through the return of a device"), finding.title());
        assertEquals(List.of("B3", "W9"), finding.causes().stream().map(Cause::element).toList());
        assertTrue(finding.why().get(0).contains("the return -W9 of -B3"), finding.why().toString());
    }

    @Test
    void mendIsAStrapToTheBodyThatIsHomeThickEnoughForTheCurrent() {
        PlanFixture placed = withoutStrap().zone("bay", 0, 60).place("block", 0, 0, 0, "bay").place("rail", 400, 300, 0, "bay")
                .at("XE3", "block").at("XE2", "rail");
        Mend mend = found(placed).get(0).mends().get(0);
        // 500 mm apart; 0.1 V at 6 A allow 16.7 milliohm, 1 mm2 has 9
        assertEquals(List.of(new Mend.AddBond("engine", "chassis", 1, 500)), mend.changes());
        assertEquals(List.of(), found(withoutStrap()).get(0).mends().get(0).changes());
    }

    @Test
    void theCheckDoesNotSayItASecondTime() {
        CheckContext context = EarthFixture.context(withoutStrap());
        List<Finding> checked = Check.over(context, CheckOptions.all(), new BasicMonitor()).findings();
        assertTrue(checked.stream().noneMatch(each -> each.rule().equals("body-unbonded")), checked.toString());
    }

    @Test
    void aBodyWithoutAnyWayHomeIsLeftToTheCheck() {
        PlanFixture none = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).body("rack")
                .earthPoint("XE3", "rack").load("E1", "current", 6, 12).cable("W2", 4, 1, "G1.30", "E1.L+")
                .cable("W3", 4, 1, "E1.L-", "XE3");
        assertEquals(List.of(), found(none));
    }

    @Test
    void strapSeamOrMinusCableIsEnough() {
        assertEquals(List.of(), found(withoutStrap().bond("WE1", "XE2", "XE3", 0.2)));
        assertEquals(List.of(), found(withoutStrap().bodyLink("seam", "chassis", "engine", 0.4)));
        assertEquals(List.of(), found(withoutStrap().cable("W9b", 35, 1, "G1.31", "XE3")));
    }

    @Test
    void aBodyIntoWhichNothingReturnsNeedsNone() {
        PlanFixture quiet = EarthFixture.withGauge(new PlanFixture().domain("12V", 12, "G1.30")
                .battery("G1", 12, 0.004, 0.012, 100).body("engine"));
        assertEquals(List.of(), found(quiet));
    }
}
