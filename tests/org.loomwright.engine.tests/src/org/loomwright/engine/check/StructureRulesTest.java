// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.OperatingPoint;

/** The rules together: a sound vehicle gives no finding, and each rule names what it reads. */
class StructureRulesTest {

    @Test
    void aSoundVehicleGivesNoFinding() {
        CheckContext context = CheckFixture.context(SoundVan.fixture());
        for (SolvedCase solved : context.cases()) {
            assertEquals(OperatingPoint.Status.SOLVED, solved.running().point().status(), solved.state().name());
        }
        for (Rule rule : StructureRules.all()) {
            assertEquals(List.of(), rule.check(context), rule.slug());
        }
    }

    @Test
    void limitsThatARuleReadsAreInTheCommonPractice() {
        CheckContext context = CheckFixture.context(SoundVan.fixture());
        for (Rule rule : StructureRules.all()) {
            assertFalse(rule.says().isEmpty(), rule.slug());
            for (String limit : rule.limits()) {
                assertTrue(context.practice().limits().containsKey(limit) || context.practice().choices().containsKey(limit),
                        rule.slug() + " " + limit);
            }
        }
    }
}
