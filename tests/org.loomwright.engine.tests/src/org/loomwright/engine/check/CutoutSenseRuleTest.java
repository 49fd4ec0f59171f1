// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;

/** Cut-outs at the end of a feed. */
class CutoutSenseRuleTest {

    private static PlanFixture cut(double metres, double sectionMm2) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.005, 0.005, 100).cutOut("Q1", 12.0, 10.8)
                .load("E1", "current", 20, 12).cable("W1", sectionMm2, metres, "G1.30", "Q1.30")
                .cable("W2", 6, 1, "Q1.87", "E1.L+").cable("W3", 6, 1, "E1.L-", "G1.31").cable("W4", 1, 1, "Q1.31", "G1.31")
                .set("W1", "ampacity", null).state("on", c -> c.on("E1").ambient(20));
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new CutoutSenseRule(), fixture);
    }

    @Test
    void aCutOutNearTheBatteryPasses() {
        assertEquals(List.of(), findings(cut(0.5, 6)));
    }

    /** 20 A through 0.018 x L / 6 ohm and two ends of 0.2 milliohm lose 0.1 V at L = 1.5333 m. */
    @Test
    void theLimitIsATenthOfAVolt() {
        assertEquals(List.of(), findings(cut(1.533, 6)));
        Finding finding = findings(cut(1.534, 6)).get(0);
        assertEquals("Q1", finding.element());
        assertEquals(0.1, finding.is().value(), 1e-4);
        assertEquals("W1", finding.causes().get(0).element());
        assertEquals(List.of(new Mend.UseSection("W1", 10)), finding.mends().get(0).changes());
    }

    /** It comes back by 20 A x (5 milliohm + feed) once open. */
    @Test
    void itsVoltagesLieFurtherApartThanTheRise() {
        double riseV = 20 * (0.005 + 0.018 * 0.5 / 6 + 0.0004);
        assertEquals(List.of(), findings(cut(0.5, 6).set("Q1#threshold", "offAt", 12 - riseV - 0.001)));
        Finding finding = findings(cut(0.5, 6).set("Q1#threshold", "offAt", 12 - riseV + 0.001)).get(0);
        assertEquals(riseV, finding.wanted().value(), 1e-5);
        assertEquals("G1", finding.causes().get(0).element());
        assertTrue(finding.title().contains("once it has opened"), finding.title());
    }

    @Test
    void anOpenCutOutAndOneWithoutCurrentAreNotJudged() {
        assertEquals(List.of(), findings(cut(5, 6).state("off", c -> { }).set("Q1#threshold", "onAt", 14.0)
                .set("Q1#threshold", "offAt", 13.5)));
    }

    @Test
    void aChargingRelaySensesSomethingElse() {
        assertEquals(List.of(), findings(SoundVan.fixture()));
    }
}
