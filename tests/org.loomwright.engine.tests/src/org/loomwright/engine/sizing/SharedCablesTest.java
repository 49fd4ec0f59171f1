// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.sizing.SizingResult.SizedCable;

/** Two arrangements share the first cable; the one with the load far away wants more of it. */
class SharedCablesTest {
    private static AssemblyResult arrangement(String name, double branchM) {
        Plan plan = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).load("E1", "current", 10, 12)
                .set("E1#load", "critical", true).negativeBar("N1", 2).device("X1", "busbar", "1:plus:P", "2:plus:P")
                .cable("W1", 16, 3, "G1.30", "X1.1").cable(name + "/W2", 16, branchM, "X1.2", "E1.L+")
                .cable("W3", 16, 1, "E1.L-", "G1.31").state("on", c -> c.on("E1").ambient(20)).build();
        return new AssemblyResult(new Plan(plan.vehicle(), name, plan.practice(), plan.domains(), plan.zones(), plan.places(),
                plan.runs(), plan.bodies(), plan.bodyLinks(), plan.bonds(), plan.devices(), plan.terminals(), plan.elements(),
                plan.cables(), plan.conductors(), plan.cases(), plan.waivers()), List.of(), Catalogue.EMPTY, List.of());
    }

    private static SizingOptions options() {
        return new SizingOptions(SizingObjective.COPPER, true, List.of(), false);
    }

    private static Map<String, Double> sections(SizingResult result) {
        Map<String, Double> sections = new TreeMap<>();
        for (SizedCable cable : result.cables()) {
            sections.put(cable.id(), cable.afterMm2());
        }
        return sections;
    }

    @Test
    void theSharedCableTakesWhatTheMostDemandingWantsAndEachIsSizedAroundIt() {
        List<AssemblyResult> both = List.of(arrangement("near", 0.5), arrangement("far", 9));
        double near = sections(SizingStudy.run(both.get(0), options(), new BasicMonitor())).get("W1");
        double far = sections(SizingStudy.run(both.get(1), options(), new BasicMonitor())).get("W1");
        assertTrue(near < far, near + " and " + far);
        List<SizingResult> together = ArrangementsSizing.run(both, options(), new BasicMonitor());
        for (SizingResult result : together) {
            assertEquals(far, sections(result).get("W1"));
            assertEquals(0, result.gap());
            assertEquals(List.of(), result.troubles().stream().map(Finding::title).toList());
        }
        SizedCable shared = together.get(0).cables().stream().filter(cable -> cable.id().equals("W1")).findFirst().orElseThrow();
        assertTrue(shared.why().startsWith("shared; far wants it: "), shared.why());
        assertEquals("drop-class", shared.limiting().rule());
    }

    @Test
    void theOrderOfTheArrangementsDoesNotMatter() {
        List<Map<String, Double>> one = new ArrayList<>();
        ArrangementsSizing.run(List.of(arrangement("near", 0.5), arrangement("far", 9)), options(), new BasicMonitor())
                .forEach(result -> one.add(sections(result)));
        List<Map<String, Double>> other = new ArrayList<>();
        ArrangementsSizing.run(List.of(arrangement("far", 9), arrangement("near", 0.5)), options(), new BasicMonitor())
                .forEach(result -> other.add(0, sections(result)));
        assertEquals(one, other);
    }
}
