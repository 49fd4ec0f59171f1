// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.fixture.Names;
import org.loomwright.engine.fixture.PlanFixture;

/** Resistances of returns against closed forms, and what holds for any network of straps. */
class ReturnImpedanceTest {

    private static ReturnImpedance of(PlanFixture fixture) {
        CheckContext context = EarthFixture.context(fixture);
        Plan plan = context.plan();
        return new ReturnImpedance(new EarthNetwork(plan, context.cases().get(0).running(),
                BatteryMinus.terminal(plan, context.cases().get(0).running())));
    }

    /**
     * A ladder of bodies: a seam of 1 milliohm from each to the next and 20 milliohm from each to the battery's minus, the last
     * one closed by the ladder's own characteristic resistance. However long, it then looks like that resistance from its start,
     * Z = r + R parallel Z, so Z^2 - r Z - r R = 0, and each section lowers the voltage by the same share, (Z - r) / Z.
     */
    @Test
    void ladderOfBodiesHasTheClosedForm() {
        double r = 0.001;
        double shunt = 0.020;
        double z = (r + Math.sqrt(r * r + 4 * r * shunt)) / 2;
        int sections = 9;
        PlanFixture ladder = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).negativeBar("X1",
                2)
                .element("X1#minus", n -> new Plan.Joint("X1#minus", n.device("X1"), n.terminal("G1.31"), n.terminal("X1.31"),
                        1e-6, Double.NaN));
        for (int k = 0; k <= sections; k++) {
            ladder.body("b" + k);
        }
        for (int k = 0; k < sections; k++) {
            double ohm = k == sections - 1 ? shunt * z / (shunt + z) : shunt;
            String body = "b" + (k + 1);
            ladder.bodyLink("s" + k, "b" + k, body, 1000 * r).device("R" + k, "resistor", "1:minus", "case:case")
                    .bolted("R" + k, body).element("R" + k + "#joint", joint(k, ohm - 0.0005));
        }
        ReturnImpedance impedance = of(ladder);
        int[] bodyNode = impedance.network().solved().at().bodyNode();
        double[] column = impedance.column(bodyNode[0], impedance.network().home());
        assertEquals(z, column[bodyNode[0]], 1e-6 + 1e-4 * z);
        for (int k = 1; k <= sections; k++) {
            assertEquals(column[bodyNode[k - 1]] * (z - r) / z, column[bodyNode[k]], 2e-6, "section " + k);
        }
    }

    /** A resistance from the minus bar to the device's case; the case's contact adds 0.5 milliohm. */
    private static Function<Names, Plan.Element> joint(int k, double ohm) {
        return n -> new Plan.Joint("R" + k + "#joint", n.device("R" + k), n.terminal("X1.31"), n.terminal("R" + k + ".case"), ohm,
                Double.NaN);
    }

    @Test
    void removingABondNeverLowersAResistanceNorRaisesItByAddingOne() {
        Random random = new Random(20240607);
        int grew = 0;
        for (int run = 0; run < 120; run++) {
            int bodies = 3 + random.nextInt(5);
            List<double[]> bonds = new ArrayList<>();
            for (int b = 1; b < bodies; b++) {
                bonds.add(new double[] {random.nextInt(b), b, 0.1 + random.nextDouble()});
            }
            for (int extra = 1 + random.nextInt(4); extra > 0; extra--) {
                bonds.add(new double[] {random.nextInt(bodies), random.nextInt(bodies), 0.1 + random.nextDouble()});
            }
            int lost = random.nextInt(bonds.size());
            double[][] with = resistances(bodies, bonds, -1);
            double[][] without = resistances(bodies, bonds, lost);
            for (int a = 0; a < bodies; a++) {
                for (int b = 0; b < bodies; b++) {
                    double before = with[a][b];
                    double after = without[a][b];
                    assertTrue(!(after < before * (1 - 1e-9)), "run " + run + ": " + before + " ohm became " + after);
                    assertEquals(with[a][b], with[b][a], 1e-12 + 1e-9 * before);
                    grew += after > before * (1 + 1e-6) ? 1 : 0;
                }
            }
        }
        assertTrue(grew > 200, "resistances grew in " + grew + " places only");
    }

    /** Resistances between any two bodies; infinite where nothing joins them. */
    private static double[][] resistances(int bodies, List<double[]> bonds, int lost) {
        PlanFixture fixture = new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100);
        for (int b = 0; b < bodies; b++) {
            fixture.body("b" + b);
        }
        for (int k = 0; k < bonds.size(); k++) {
            int a = (int) bonds.get(k)[0];
            int b = (int) bonds.get(k)[1];
            if (k != lost && a != b) {
                fixture.earthPoint("XA" + k, "b" + a).earthPoint("XB" + k, "b" + b).bond("WE" + k, "XA" + k, "XB" + k,
                        bonds.get(k)[2]);
            }
        }
        ReturnImpedance impedance = of(fixture);
        int[] node = impedance.network().solved().at().bodyNode();
        double[][] ohm = new double[bodies][bodies];
        for (int a = 0; a < bodies; a++) {
            for (int b = 0; b < bodies; b++) {
                ohm[a][b] = a == b ? 0 : impedance.joined(node[a], node[b]) ? impedance.column(node[a], node[b])[node[a]]
                        : Double.POSITIVE_INFINITY;
            }
        }
        return ohm;
    }
}
