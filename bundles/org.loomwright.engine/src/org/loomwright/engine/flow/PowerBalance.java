// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/**
 * Power given by sources against power taken and lost, each by the law of its item: what a power load is meant to take, what a
 * converter is meant to lose, what heats a resistance. It closes only when both Kirchhoff's laws and every law of an item hold.
 */
final class PowerBalance {
    private final Solution at;
    private double given;
    private double largest;

    private PowerBalance(Solution at) {
        this.at = at;
    }

    /** Power left over, over the largest power of an item. */
    static double residual(Solution at) {
        PowerBalance balance = new PowerBalance(at);
        int items = at.currentA().length;
        for (int item = 0; item < items; item++) {
            balance.add(item);
        }
        return balance.largest == 0 ? 0 : Math.abs(balance.given) / balance.largest;
    }

    /** Largest sum of currents at a node over the largest current. */
    static double kirchhoff(Solution at) {
        double[] sum = new double[at.potentialV().length];
        double largest = 0;
        for (int item = 0; item < at.currentA().length; item++) {
            Pole pole = at.circuit().poleOf[item];
            if (pole == null) {
                continue;
            }
            sum[pole.a] += at.currentA()[item];
            sum[pole.b] -= at.currentA()[item];
            largest = Math.max(largest, Math.abs(at.currentA()[item]));
            Pole output = at.circuit().outputOf[item];
            if (output != null) {
                sum[output.a] -= at.outputA()[item];
                sum[output.b] += at.outputA()[item];
                largest = Math.max(largest, Math.abs(at.outputA()[item]));
            }
        }
        double worst = 0;
        for (double left : sum) {
            worst = Math.max(worst, Math.abs(left));
        }
        return largest == 0 ? 0 : worst / largest;
    }

    private void count(double watt) {
        given += watt;
        largest = Math.max(largest, Math.abs(watt));
    }

    private void add(int item) {
        Pole pole = at.circuit().poleOf[item];
        if (pole == null || !pole.active) {
            return;
        }
        double amps = at.currentA()[item];
        double volt = at.voltage(pole.a, pole.b);
        Network.Item it = at.circuit().network.items().get(item);
        if (it instanceof Network.Emf emf) {
            count(-emf.volt() * amps);
            count(-amps * amps / pole.slope(pole.segment, 0));
        } else if (it instanceof Network.Regulator) {
            count(-volt * amps);
        } else if (it instanceof Network.ConverterItem converter) {
            Pole output = at.circuit().outputOf[item];
            double outW = at.outputA()[item] * at.voltage(output.a, output.b);
            count(outW);
            count(((DemandPole) pole).atWork(volt) ? -outW / converter.efficiency() - converter.standbyW() : -volt * amps);
        } else if (pole instanceof DemandPole demand) {
            Network.Load load = (Network.Load) it;
            boolean nominal = load.law() == Network.LoadLaw.POWER && demand.atWork(volt);
            count(nominal ? -load.value() * at.circuit().loadScale() : -volt * amps);
        } else if (pole instanceof OhmicPole ohmic) {
            count(ohmic.siemens == 0 ? 0 : -amps * amps / ohmic.siemens);
        } else {
            count(-volt * amps);
        }
    }
}
