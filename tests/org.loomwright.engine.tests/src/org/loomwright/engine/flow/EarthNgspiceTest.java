// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.assembly.NetworkBuilder;
import org.loomwright.engine.assembly.NetworkOptions;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.earth.CaseEarth;
import org.loomwright.engine.earth.EarthStudy;
import org.loomwright.engine.earth.EarthTable;
import org.loomwright.engine.earth.LossCase;
import org.loomwright.engine.earth.LossRow;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Vehicle;

/**
 * The earth study of the demo fleet against ngspice, a general-purpose circuit simulator: currents of the straps and potentials
 * of the bodies with every strap in place, and with one removed, each strap then having a poorer one beside it.
 */
class EarthNgspiceTest {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");
    private static final FlowOptions OPTIONS = FlowOptions.standard();

    private static Plan plan(String vehicle, String arrangement) {
        Vehicle read = new VehicleFiles().openVehicle(FLEET.resolve(vehicle + ".vehicle").toAbsolutePath().normalize()).root();
        return Assembly.assemble(read,
                read.getArrangements().stream().filter(each -> each.getName().equals(arrangement)).findFirst()
                .orElseThrow(), null).plan();
    }

    private static double volt(Map<String, Double> simulated, OperatingPoint point, int node, int k) {
        return node == point.network().reference() ? 0
                : simulated.getOrDefault(SpiceNetlist.node(point, node, Ngspice.prefix(k)), Double.NaN);
    }

    @ParameterizedTest
    @CsvSource({"heron,spread", "otter,as-found", "beaver,spread"})
    void strapsInPlace(String vehicle, String arrangement) {
        Plan plan = plan(vehicle, arrangement);
        CheckContext context = new CheckContext(plan, CaseSolver.solveAll(plan, new BasicMonitor()), NetFinder.find(plan));
        EarthTable table = EarthStudy.of(context, new BasicMonitor());
        List<SolvedCase> settled = context.settled();
        Map<String, Double> simulated = Ngspice.potentials(settled.stream().map(each -> each.running().point()).toList(),
                OPTIONS);
        int carrying = 0;
        for (int k = 0; k < settled.size(); k++) {
            SolvedCase.Solved running = settled.get(k).running();
            String name = settled.get(k).state().name();
            CaseEarth levels = table.cases().stream().filter(each -> each.caseName().equals(name)).findFirst().orElseThrow();
            double home = volt(simulated, running.point(), running.at().terminalNode()[table.minus()], k);
            for (int b = 0; b < plan.bonds().size(); b++) {
                Plan.Bond bond = plan.bonds().get(b);
                double drop = volt(simulated, running.point(), running.at().terminalNode()[bond.a()], k)
                        - volt(simulated, running.point(), running.at().terminalNode()[bond.b()], k);
                double amps = levels.bondA().get(b);
                if (Math.abs(amps) > 1) {
                    assertEquals(drop / bond.ohm(), amps, 1e-3 * Math.abs(amps), name + " " + bond.id());
                    carrying++;
                }
            }
            for (int body = 0; body < plan.bodies().size(); body++) {
                double there = volt(simulated, running.point(), running.at().bodyNode()[body], k) - home;
                if (!Double.isNaN(levels.bodyV().get(body))) {
                    assertEquals(there, levels.bodyV().get(body), 1e-6, name + " " + plan.bodies().get(body).id());
                }
            }
        }
        assertTrue(carrying > 5, "only " + carrying + " straps carried anything");
    }

    @ParameterizedTest
    @CsvSource({"heron,spread", "otter,mended", "beaver,spread"})
    void oneStrapRemoved(String vehicle, String arrangement) {
        Plan plan = doubled(plan(vehicle, arrangement));
        CheckContext context = new CheckContext(plan, CaseSolver.solveAll(plan, new BasicMonitor()), NetFinder.find(plan));
        EarthTable table = EarthStudy.of(context, new BasicMonitor());
        List<OperatingPoint> points = new ArrayList<>();
        List<CaseNetwork> networks = new ArrayList<>();
        List<LossCase> losses = new ArrayList<>();
        for (LossRow row : table.losses()) {
            for (LossCase loss : row.cases()) {
                assertEquals(OperatingPoint.Status.SOLVED, loss.status());
                CaseNetwork at = without(plan, solved(context, loss), row.bonds().get(0));
                points.add(FlowSolver.solve(at.network(), OPTIONS, new BasicMonitor()));
                networks.add(at);
                losses.add(loss);
            }
        }
        Map<String, Double> simulated = Ngspice.potentials(points, OPTIONS);
        int straps = 0;
        int bodies = 0;
        for (int k = 0; k < points.size(); k++) {
            CaseNetwork at = networks.get(k);
            double home = volt(simulated, points.get(k), at.terminalNode()[table.minus()], k);
            for (LossCase.BodyShift shift : losses.get(k).bodies()) {
                double there = volt(simulated, points.get(k), at.bodyNode()[shift.body()], k) - home;
                assertEquals(there, shift.afterV(), 1e-6, losses.get(k).caseName() + " " + plan.bodies().get(shift.body()).id());
                bodies++;
            }
            for (LossCase.Detour detour : losses.get(k).detours()) {
                if (detour.kind() == NetworkIndex.Kind.BOND && detour.afterA() > 1) {
                    Plan.Bond bond = plan.bonds().get(detour.index());
                    double drop = volt(simulated, points.get(k), at.terminalNode()[bond.a()], k)
                            - volt(simulated, points.get(k), at.terminalNode()[bond.b()], k);
                    assertEquals(Math.abs(drop / bond.ohm()), detour.afterA(), 1e-3 * detour.afterA(), detour.element());
                    straps++;
                }
            }
        }
        assertTrue(straps > 10 && bodies > 10, straps + " straps and " + bodies + " bodies only");
    }

    private static SolvedCase solved(CheckContext context, LossCase loss) {
        return context.cases().stream().filter(each -> each.state().name().equals(loss.caseName())).findFirst().orElseThrow();
    }

    /** The same plan with another strap of three times the resistance beside each. */
    private static Plan doubled(Plan plan) {
        List<Plan.Bond> bonds = new ArrayList<>(plan.bonds());
        for (Plan.Bond bond : plan.bonds()) {
            bonds.add(new Plan.Bond(bond.id() + "x", bond.a(), bond.b(), 3 * bond.ohm(), bond.sectionMm2(), bond.lengthMm(),
                    bond.currentMaxA(), bond.condition(), bond.existing(), bond.part()));
        }
        return new Plan(plan.vehicle(), plan.arrangement(), plan.practice(), plan.domains(), plan.zones(), plan.places(),
                plan.runs(), plan.bodies(), plan.bodyLinks(), bonds, plan.devices(), plan.terminals(), plan.elements(),
                plan.cables(), plan.conductors(), plan.cases(), plan.waivers());
    }

    private static CaseNetwork without(Plan plan, SolvedCase solved, int bond) {
        double[] heldC = new double[plan.conductors().size()];
        for (int c = 0; c < heldC.length; c++) {
            heldC[c] = solved.running().conductorC(c);
        }
        return NetworkBuilder.build(plan, solved.state(), NetworkOptions.running(null).heldAt(heldC)
                .without(plan.bonds().get(bond).id()));
    }
}
