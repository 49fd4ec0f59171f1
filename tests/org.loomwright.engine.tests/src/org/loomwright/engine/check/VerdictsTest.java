// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.LoadVerdict;

class VerdictsTest {

    private static LoadVerdict verdict(PlanFixture fixture) {
        return new Verdicts(CheckFixture.context(fixture)).all().get(0);
    }

    @Test
    void sharesSumToAHundredPercentAndComeLargestFirst() {
        LoadVerdict verdict = verdict(DropBreakdownTest.structureReturn());
        assertEquals(100, verdict.shares().stream().mapToDouble(cause -> cause.share().value()).sum(), 1e-9);
        for (int i = 1; i < verdict.shares().size(); i++) {
            assertTrue(verdict.shares().get(i - 1).share().value() >= verdict.shares().get(i).share().value());
        }
    }

    @Test
    void saysWhatTheStrapMakesWhenTheCableIsNotTheCause() {
        LoadVerdict verdict = verdict(DropBreakdownTest.structureReturn().set("WE1", "ohm", 0.06));
        Cause first = verdict.shares().get(0);
        assertEquals("WE1", first.element());
        assertTrue(verdict.sentence().contains("the return strap -WE1"), verdict.sentence());
        assertTrue(verdict.sentence().contains("own cable is not the cause"), verdict.sentence());
        assertTrue(verdict.sentence().contains(first.share().toString()), verdict.sentence());
    }

    @Test
    void worstCaseOfSeveralIsTold() {
        LoadVerdict verdict = verdict(DropBreakdownTest.structureReturn().load("E2", "current", 8, 12)
                .cable("W8", 2.5, 1, "F1.30", "E2.L+").cable("W9", 2.5, 1, "E2.L-", "XE1").state("alone", c -> c.on("E1"))
                .state("both", c -> c.on("E1", "E2")).state("again", c -> c.on("E1")));
        assertEquals("both", verdict.caseName());
    }

    @Test
    void aLoadThatIsNeverOnHasNone() {
        assertTrue(new Verdicts(CheckFixture.context(DropBreakdownTest.structureReturn().state("rest", c -> { }))).all()
                .isEmpty());
    }
}
