// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Arrays;
import java.util.List;

/** Puts a settled solution into the form of the contract. */
final class Report {
    /** A source or rectifier that carries less than this share of the largest current is at rest. */
    private static final double AT_REST = 1e-9;

    private Report() {
    }

    static OperatingPoint of(Settling.Settled settled, OperatingPoint.Status status, List<Integer> trouble, double loadScale) {
        Solution at = settled.solution();
        Circuit circuit = at.circuit();
        int items = circuit.poleOf.length;
        double[] temperatureC = new double[items];
        boolean[] on = new boolean[items];
        boolean[] limiting = new boolean[items];
        Arrays.fill(temperatureC, Double.NaN);
        double rest = AT_REST * Arrays.stream(at.currentA()).map(Math::abs).max().orElse(0);
        for (int item = 0; item < items; item++) {
            Pole pole = circuit.poleOf[item];
            Network.Item it = circuit.network.items().get(item);
            if (pole instanceof WirePole wire) {
                temperatureC[item] = wire.temperatureC();
            } else if (it instanceof Network.Load load) {
                on[item] = pole.active && Math.abs(at.voltage(load.a(), load.b())) >= circuit.options.floorV();
            } else if (it instanceof Network.ConverterItem) {
                on[item] = pole.active;
                limiting[item] = limiting(circuit.outputOf[item]);
            } else if (it instanceof Network.Switch || it instanceof Network.Comparator) {
                on[item] = settled.states().on(item);
            } else if (it instanceof Network.Regulator) {
                on[item] = pole.active && -at.amps(item) > rest;
                limiting[item] = limiting(pole);
            } else if (it instanceof Network.Rectifier) {
                on[item] = pole.active && at.amps(item) > rest;
            }
        }
        return new OperatingPoint(circuit.network, status, at.potentialV(), at.currentA(), at.outputA(), temperatureC, on,
                limiting, trouble, loadScale, PowerBalance.kirchhoff(at), PowerBalance.residual(at));
    }

    static OperatingPoint withTrouble(OperatingPoint p, List<Integer> trouble) {
        return new OperatingPoint(p.network(), p.status(), p.potentialV(), p.currentA(), p.outputA(), p.temperatureC(), p.on(),
                p.limiting(), trouble, p.loadScale(), p.residual(), p.powerResidual());
    }

    private static boolean limiting(Pole pole) {
        return pole.active && pole.segment == RegulatedPole.LIMIT;
    }
}
