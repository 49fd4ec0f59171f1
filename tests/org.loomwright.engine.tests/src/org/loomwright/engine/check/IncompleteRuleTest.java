// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.AssemblyProblem;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** What could not be assembled is said. */
class IncompleteRuleTest {

    @Test
    void aProblemOfTheAssemblyIsAnErrorAtItsElement() {
        Plan plan = SoundVan.fixture().build();
        CheckContext context = new CheckContext(plan, List.of(), NetFinder.find(plan),
                List.of(new AssemblyProblem("E9", "the device has no part; it is left out"),
                        new AssemblyProblem("W9", "core 1 ends nowhere")));
        List<Finding> findings = new IncompleteRule().check(context);
        assertEquals(List.of("E9", "W9"), findings.stream().map(Finding::element).toList());
        assertEquals("the device has no part; it is left out", findings.get(0).title());
        assertEquals(Severity.ERROR, findings.get(0).severity());
    }

    @Test
    void aCompletePlanPasses() {
        assertEquals(List.of(), CheckFixture.findings(new IncompleteRule(), SoundVan.fixture()));
    }
}
