// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;

/** Runs the study over plans made by hand and finds rows by name. */
final class ProtectionFixture {
    final Plan plan;
    final ProtectionTable table;

    private ProtectionFixture(Plan plan) {
        this.plan = plan;
        table = ProtectionStudy.of(plan, CaseSolver.solveAll(plan, new BasicMonitor()), new BasicMonitor());
    }

    static ProtectionFixture of(Plan plan) {
        return new ProtectionFixture(plan);
    }

    static ProtectionFixture of(PlanFixture fixture) {
        return new ProtectionFixture(fixture.build());
    }

    /** A battery of 4 to 12 mohm at a bay of -20 to 60 degC, a box with a fuse in way 1 and a lamp with own return. */
    static PlanFixture lamp(double fuseA, double sectionMm2, double metres) {
        return new PlanFixture().domain("12V", 12, "G1.30").zone("bay", -20, 60).place("p", 0, 0, 0, "bay").body("cab")
                .run("R1", "p", "p", 1000 * metres, "bay", "cab").battery("G1", 12, 0.004, 0.012, 100).box("F1", 2)
                .at("G1", "p").at("F1", "p").fuse("F1", "1", fuseA).load("E1", "power", 20, 12).at("E1", "p")
                .cable("W1", 25, 0.15, "G1.30", "F1.30").cable("W2", sectionMm2, metres, "F1.1", "E1.L+").lay("W2", "R1")
                .cable("W3", sectionMm2, metres, "E1.L-", "G1.31").lay("W3", "R1").earthPoint("XE1", "cab").at("XE1", "p")
                .cable("W4", 25, 0.5, "G1.31", "XE1");
    }

    ConductorProtection row(String cable) {
        return table.conductor(PlanIndex.conductor(plan, cable + "@1"));
    }

    Feed feed(String cable) {
        ConductorProtection row = row(cable);
        if (row.feeds().size() != 1) {
            throw new AssertionError(cable + " has " + row.feeds().size() + " feeds");
        }
        return row.feeds().get(0);
    }

    DeviceProtection device(String protector) {
        return table.device(element(protector)).orElseThrow();
    }

    int element(String id) {
        return PlanIndex.element(plan, id);
    }
}
