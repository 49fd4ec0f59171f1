// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * What every operating point must meet, computed anew from its potentials, currents and states alone: Kirchhoff's current law
 * and the balance of power within 1e-9, and the law of every item.
 */
final class FlowAssert {
    static final double BALANCE = 1e-9;

    private final OperatingPoint point;
    private final FlowOptions options;
    private final double largestA;
    private final double largestV;

    private FlowAssert(OperatingPoint point, FlowOptions options) {
        this.point = point;
        this.options = options;
        double amps = 0;
        for (int item = 0; item < point.currentA().length; item++) {
            amps = Math.max(amps, Math.max(Math.abs(point.currentA()[item]), Math.abs(point.outputA()[item])));
        }
        double volts = 0;
        for (double v : point.potentialV()) {
            volts = Double.isNaN(v) ? volts : Math.max(volts, Math.abs(v));
        }
        largestA = amps;
        largestV = volts;
    }

    /** Checks an operating point and hands it on. */
    static OperatingPoint checked(OperatingPoint point, FlowOptions options) {
        FlowAssert all = new FlowAssert(point, options);
        all.kirchhoff();
        // where nothing works even without loads the figures are said to be no operating point
        for (int item = 0; item < point.currentA().length && point.loadScale() != 0; item++) {
            all.law(item);
        }
        assertTrue(point.residual() <= BALANCE, () -> "Kirchhoff residual " + point.residual());
        // what has collapsed without any load rests where laws and their continuations meet at very small powers
        double within = point.loadScale() == 0 ? 1e-6 : BALANCE;
        assertTrue(point.powerResidual() <= within, () -> "power balance " + point.powerResidual());
        return point;
    }

    private void kirchhoff() {
        double[] sum = new double[point.network().nodes()];
        for (int item = 0; item < point.currentA().length; item++) {
            int[] ends = ends(point.network().items().get(item));
            if (ends.length == 0) {
                continue;
            }
            sum[ends[0]] += point.currentA()[item];
            sum[ends[1]] -= point.currentA()[item];
            if (ends.length == 4) {
                sum[ends[2]] -= point.outputA()[item];
                sum[ends[3]] += point.outputA()[item];
            }
        }
        for (int node = 0; node < sum.length; node++) {
            assertEquals(0, sum[node], BALANCE * largestA, "currents at node " + point.network().nodeIds().get(node));
        }
    }

    static int[] ends(Network.Item it) {
        if (it instanceof Network.Wire w) {
            return new int[] {w.a(), w.b()};
        } else if (it instanceof Network.Resistor r) {
            return new int[] {r.a(), r.b()};
        } else if (it instanceof Network.Switch s) {
            return new int[] {s.a(), s.b()};
        } else if (it instanceof Network.Emf e) {
            return new int[] {e.a(), e.b()};
        } else if (it instanceof Network.Regulator r) {
            return new int[] {r.a(), r.b()};
        } else if (it instanceof Network.Rectifier r) {
            return new int[] {r.a(), r.b()};
        } else if (it instanceof Network.Load l) {
            return new int[] {l.a(), l.b()};
        } else if (it instanceof Network.ConverterItem c) {
            return new int[] {c.inA(), c.inB(), c.outA(), c.outB()};
        }
        return new int[0];
    }

    private void law(int item) {
        Network.Item it = point.network().items().get(item);
        double amps = point.currentA()[item];
        int[] ends = ends(it);
        if (ends.length == 0) {
            assertEquals(0, amps, it.id());
            return;
        }
        double volt = point.voltage(ends[0], ends[1]);
        if (Double.isNaN(volt)) {
            assertEquals(0, amps, it.id() + " without potential carries nothing");
            return;
        }
        if (it instanceof Network.Wire w) {
            wire(item, w, volt, amps);
        } else if (it instanceof Network.Resistor r) {
            ohm(it, volt, amps, r.ohm());
        } else if (it instanceof Network.Switch s) {
            if (point.on()[item]) {
                ohm(it, volt, amps, s.ohm());
            } else {
                assertEquals(0, amps, it.id() + " is open");
            }
        } else if (it instanceof Network.Emf e) {
            ohm(it, volt - e.volt(), amps, e.ohmAt(amps));
        } else if (it instanceof Network.Regulator r) {
            double sensed = point.voltage(r.senseA(), r.senseB());
            regulated(item, it, Double.isNaN(sensed) ? volt : sensed, -amps, r.setV(), r.droopOhm(), r.limitA());
        } else if (it instanceof Network.Rectifier r) {
            assertTrue(amps >= -BALANCE * largestA, it.id() + " takes nothing backwards: " + amps);
            assertEquals(Math.max(0, volt - r.forwardV()), amps * r.ohm(), voltTolerance(), it.id());
        } else if (it instanceof Network.Load l) {
            load(item, l, volt, amps);
        } else if (it instanceof Network.ConverterItem c) {
            converter(item, c, volt, amps);
        }
    }

    private double voltTolerance() {
        return 1e-9 * Math.max(1, largestV);
    }

    private void ohm(Network.Item it, double volt, double amps, double ohm) {
        assertEquals(volt, amps * Math.max(options.smallestOhm(), ohm), voltTolerance(), () -> "Ohm's law of " + it.id());
    }

    private void wire(int item, Network.Wire w, double volt, double amps) {
        double celsius = point.temperatureC()[item];
        Network.WireHeat heat = options.temperatureFeedback() ? w.heat() : null;
        double alpha = heat == null ? 0 : heat.alphaPerK();
        ohm(w, volt, amps, w.r20Ohm() * (1 + alpha * (celsius - 20)) + w.jointsOhm());
        if (heat == null) {
            assertEquals(20, celsius, w.id());
        } else if (celsius < options.highestC()) {
            // the steady thermal equation, written out
            double share = amps / heat.ratedA();
            double steady = heat.ambientC() + (heat.maxC() - heat.referenceC()) * share * share
                    * (1 + alpha * (celsius - 20)) / (1 + alpha * (heat.maxC() - 20));
            // at the edge of collapse temperatures are found less sharply
            double within = point.status() == OperatingPoint.Status.COLLAPSED ? 1e-3 : 1e-6;
            assertEquals(steady, celsius, within * Math.max(1, celsius - heat.ambientC()), w.id() + " degrees Celsius");
        }
    }

    private void regulated(int item, Network.Item it, double sensed, double delivered, double setV, double droop, double limit) {
        double rest = BALANCE * Math.max(1, largestA);
        assertTrue(delivered >= -rest, it.id() + " never takes current: " + delivered);
        assertTrue(delivered <= limit + rest, it.id() + " keeps its limit: " + delivered);
        double law = setV - Math.max(options.smallestOhm(), droop) * delivered;
        if (delivered <= rest) {
            assertTrue(limit == 0 || sensed >= law - voltTolerance(), it.id() + " rests only above its voltage");
        } else if (delivered >= limit - rest) {
            assertTrue(sensed <= law + voltTolerance(), it.id() + " limits only below its voltage");
        } else {
            assertEquals(law, sensed, voltTolerance(), it.id() + " holds its voltage");
        }
    }

    private void load(int item, Network.Load l, double volt, double amps) {
        double magnitude = Math.abs(volt);
        if (!point.on()[item]) {
            assertEquals(0, magnitude < options.floorV() ? 0 : amps, it(l));
            return;
        }
        double scale = Double.isNaN(point.loadScale()) ? options.loadScale() : point.loadScale();
        double law = switch (l.law()) {
            case POWER -> scale * l.value() / magnitude;
            case CURRENT -> scale * l.value();
            case RESISTANCE -> scale * magnitude / l.value();
        };
        assertEquals(Math.copySign(law, volt), amps, BALANCE * Math.max(1, largestA), it(l));
    }

    private static String it(Network.Load l) {
        return "load " + l.id();
    }

    private void converter(int item, Network.ConverterItem c, double volt, double amps) {
        double out = point.outputA()[item];
        if (!point.on()[item]) {
            assertEquals(0, out, c.id() + " is off");
            assertEquals(0, amps, c.id() + " is off");
            return;
        }
        double outV = point.voltage(c.outA(), c.outB());
        regulated(item, c, outV, out, c.setV(), c.droopOhm(), c.limitA());
        assertEquals(outV * out / c.efficiency() + c.standbyW(), volt * amps, BALANCE * Math.max(1, volt * amps), c.id());
    }
}
