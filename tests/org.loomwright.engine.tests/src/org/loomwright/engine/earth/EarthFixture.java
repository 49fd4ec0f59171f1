// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Vehicles for tests of the earth study, and the demo fleet. */
final class EarthFixture {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");

    private EarthFixture() {
    }

    /**
     * Battery with its minus on the chassis, an engine on a strap of 0.2 milliohm and 300 mm, and a load E1 of 50 A that returns
     * into the engine. Earth points have 0.2 milliohm each.
     */
    static PlanFixture twoBodies() {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .body("chassis").body("engine").earthPoint("XE1", "chassis").earthPoint("XE2", "chassis")
                .earthPoint("XE3", "engine").earthPoint("XE4", "engine").cable("W1", 35, 1, "G1.31", "XE1")
                .bond("WE1", "XE2", "XE3", 0.2)
                .load("E1", "current", 50, 12).cable("W2", 25, 1, "G1.30", "E1.L+").cable("W3", 25, 1, "E1.L-", "XE4");
    }

    /** The same with a starter on the engine that is cranked in the state {@code start}. */
    static PlanFixture starting() {
        return twoBodies().starter("M1", 0.04, "engine").drivenSwitch("S1", "start").cable("W4", 70, 1, "G1.30", "M1.30")
                .cable("W5", 4, 1, "G1.30", "S1.30").cable("W6", 4, 1, "S1.15", "M1.50")
                .state("road", c -> c.on("E1").ambient(25))
                .state("start", c -> c.kind("cranking").ignition("start").duty("M1#motor", 10, 60).ambient(20));
    }

    /** A gauge on the engine whose minus sits in its case and is led to the battery by a wire of 1 mm2 as well. */
    static PlanFixture withGauge(PlanFixture fixture) {
        return fixture.device("B3", "gauge", "L+:plus", "L-:minus", "case:case").bolted("B3", "engine")
                .demand("B3", "load", "L+", "L-", "current", 0.1, 12)
                .element("B3#joint", n -> new Plan.Joint("B3#joint", n.device("B3"), n.terminal("B3.L-"), n.terminal("B3.case"),
                        0.001, Double.NaN))
                .cable("W8", 1, 2, "G1.30", "B3.L+").cable("W9", 1, 2, "B3.L-", "G1.31");
    }

    static CheckContext context(PlanFixture fixture) {
        return context(fixture.build());
    }

    static CheckContext context(Plan plan) {
        return new CheckContext(plan, CaseSolver.solveAll(plan, new BasicMonitor()), NetFinder.find(plan));
    }

    static EarthTable study(PlanFixture fixture) {
        return EarthStudy.of(context(fixture), new BasicMonitor());
    }

    /** An arrangement of a vehicle of the demo fleet. */
    static Plan fleet(String vehicle, String arrangement) {
        ReadFile<Vehicle> read = new VehicleFiles().openVehicle(FLEET.resolve(vehicle + ".vehicle").toAbsolutePath().normalize());
        if (read.root() == null || !read.faults().isEmpty()) {
            throw new IllegalStateException("demo fleet: " + read.faults());
        }
        Arrangement wanted = read.root().getArrangements().stream().filter(each -> each.getName().equals(arrangement)).findFirst()
                .orElseThrow();
        AssemblyResult assembled = Assembly.assemble(read.root(), wanted, null);
        return assembled.plan();
    }

    static int bond(Plan plan, String id) {
        for (int b = 0; b < plan.bonds().size(); b++) {
            if (plan.bonds().get(b).id().equals(id)) {
                return b;
            }
        }
        throw new IllegalArgumentException("no bond " + id);
    }

    static int body(Plan plan, String id) {
        for (int b = 0; b < plan.bodies().size(); b++) {
            if (plan.bodies().get(b).id().equals(id)) {
                return b;
            }
        }
        throw new IllegalArgumentException("no body " + id);
    }

    /** The row of the loss of one strap. */
    static LossRow loss(EarthTable table, String bond) {
        int index = bond(table.plan(), bond);
        return table.losses().stream().filter(row -> row.bonds().equals(List.of(index))).findFirst().orElseThrow();
    }
}
