// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.function.Supplier;

/** Refuses networks that no law describes; each message names the item, what is wrong and what was expected. */
final class NetworkCheck {
    private final Network network;
    private int index = -1;

    private NetworkCheck(Network network) {
        this.network = network;
    }

    /** Throws {@link IllegalArgumentException} for a malformed network. */
    static void check(Network network) {
        new NetworkCheck(network).run();
    }

    private void run() {
        require(network.nodes() > 0, () -> "has no node", () -> "at least one node");
        require(network.reference() >= 0 && network.reference() < network.nodes(),
                () -> "reference is node " + network.reference(),
                () -> "a node from 0 to " + (network.nodes() - 1));
        for (Network.Item it : network.items()) {
            index++;
            check(it);
        }
    }

    private void check(Network.Item it) {
        if (it instanceof Network.Wire wire) {
            nodes(wire.a(), wire.b());
            ohm("r20Ohm", wire.r20Ohm());
            ohm("jointsOhm", wire.jointsOhm());
            heat(wire.heat());
        } else if (it instanceof Network.Resistor resistor) {
            nodes(resistor.a(), resistor.b());
            ohm("ohm", resistor.ohm());
        } else if (it instanceof Network.Switch contact) {
            nodes(contact.a(), contact.b());
            ohm("ohm", contact.ohm());
            drive(contact.drive());
        } else if (it instanceof Network.Emf emf) {
            nodes(emf.a(), emf.b());
            finite("volt", emf.volt());
            ohm("ohm", emf.ohm());
            require(emf.chargeOhm() >= emf.ohm() && emf.chargeOhm() < Double.POSITIVE_INFINITY,
                    () -> "chargeOhm is " + emf.chargeOhm(), () -> "at least ohm, " + emf.ohm() + " ohm");
        } else if (it instanceof Network.Regulator regulator) {
            nodes(regulator.a(), regulator.b());
            nodes(regulator.senseA(), regulator.senseB());
            output(regulator.setV(), regulator.droopOhm(), regulator.limitA());
        } else if (it instanceof Network.Rectifier rectifier) {
            nodes(rectifier.a(), rectifier.b());
            atLeastZero("forwardV", rectifier.forwardV());
            ohm("ohm", rectifier.ohm());
        } else if (it instanceof Network.Load load) {
            nodes(load.a(), load.b());
            require(load.law() != null, () -> "law is missing", () -> "POWER, CURRENT or RESISTANCE");
            require(load.value() > 0 && load.value() < Double.POSITIVE_INFINITY, () -> "value is " + load.value(),
                    () -> "W, A or ohm above 0");
            thresholds(load.offV(), load.restartV());
        } else if (it instanceof Network.ConverterItem converter) {
            nodes(converter.inA(), converter.inB());
            nodes(converter.outA(), converter.outB());
            output(converter.setV(), converter.droopOhm(), converter.limitA());
            require(converter.efficiency() > 0 && converter.efficiency() <= 1, () -> "efficiency is " + converter.efficiency(),
                    () -> "above 0 and at most 1");
            atLeastZero("standbyW", converter.standbyW());
            thresholds(converter.offV(), converter.restartV());
        } else if (it instanceof Network.Comparator comparator) {
            if (comparator.sensed() >= 0) {
                require(comparator.sensed() < network.items().size(), () -> "senses item " + comparator.sensed(),
                        () -> "an item from 0 to " + (network.items().size() - 1));
            } else {
                nodes(comparator.plus(), comparator.minus());
            }
            finite("onAt", comparator.onAt());
            finite("offAt", comparator.offAt());
        }
    }

    private void output(double setV, double droopOhm, double limitA) {
        finite("setV", setV);
        ohm("droopOhm", droopOhm);
        require(limitA >= 0, () -> "limitA is " + limitA, () -> "0 A or above");
    }

    private void thresholds(double offV, double restartV) {
        if (!Double.isNaN(offV)) {
            finite("offV", offV);
            require(restartV >= offV, () -> "restartV is " + restartV, () -> "at least offV, " + offV + " V");
        }
    }

    private void heat(Network.WireHeat heat) {
        if (heat != null) {
            finite("ambientC", heat.ambientC());
            finite("referenceC", heat.referenceC());
            require(heat.ratedA() > 0, () -> "ratedA is " + heat.ratedA(), () -> "above 0 A");
            require(heat.maxC() > heat.referenceC() && heat.maxC() < Double.POSITIVE_INFINITY, () -> "maxC is " + heat.maxC(),
                    () -> "above the reference ambient, " + heat.referenceC() + " degrees Celsius");
            atLeastZero("alphaPerK", heat.alphaPerK());
            require(1 + heat.alphaPerK() * (heat.maxC() - 20) > 0 && 1 + heat.alphaPerK() * (heat.ambientC() - 20) > 0,
                    () -> "temperatures are " + heat.ambientC() + " and " + heat.maxC(),
                    () -> "temperatures at which copper resists");
        }
    }

    private void drive(Network.Drive drive) {
        require(drive != null, () -> "drive is missing", () -> "what holds the contact");
        if (drive instanceof Network.ByCoil coil) {
            require(coil.coil() >= 0 && coil.coil() < network.items().size()
                    && network.items().get(coil.coil()) instanceof Network.Resistor, () -> "coil is item " + coil.coil(),
                    () -> "the index of a resistor");
            require(coil.pickUpV() >= coil.dropOutV(), () -> "pickUpV is " + coil.pickUpV(),
                    () -> "at least dropOutV, " + coil.dropOutV() + " V");
        } else if (drive instanceof Network.ByComparator follower) {
            require(follower.comparator() >= 0 && follower.comparator() < network.items().size()
                    && network.items().get(follower.comparator()) instanceof Network.Comparator,
                    () -> "follows item " + follower.comparator(), () -> "the index of a comparator");
        }
    }

    private void nodes(int a, int b) {
        require(a >= 0 && a < network.nodes() && b >= 0 && b < network.nodes(), () -> "lies between nodes " + a + " and " + b,
                () -> "nodes from 0 to " + (network.nodes() - 1));
    }

    private void ohm(String name, double value) {
        require(value >= 0 && value < Double.POSITIVE_INFINITY, () -> name + " is " + value, () -> "0 ohm or above");
    }

    private void atLeastZero(String name, double value) {
        require(value >= 0 && value < Double.POSITIVE_INFINITY, () -> name + " is " + value, () -> "0 or above");
    }

    private void finite(String name, double value) {
        require(Math.abs(value) < Double.POSITIVE_INFINITY, () -> name + " is " + value, () -> "a finite number");
    }

    private String where() {
        return index < 0 ? "network" : "item " + index + " (" + network.items().get(index).id() + ")";
    }

    private void require(boolean met, Supplier<String> found, Supplier<String> expected) {
        if (!met) {
            throw new IllegalArgumentException(where() + ": " + found.get() + ", expected " + expected.get());
        }
    }
}
