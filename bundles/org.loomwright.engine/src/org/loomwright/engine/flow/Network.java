// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.List;

/**
 * An electrical network in one operating state: nodes, and items between them. Immutable. Currents of an item are
 * counted positive from {@code a} to {@code b} through the item; {@code a} is the plus side where there is one. A resistance of
 * 0 ohm is allowed and raised to the smallest of {@link FlowOptions}; a negative one is refused.
 *
 * @param nodeIds   an id for each node, for messages and netlists
 * @param reference node whose potential is zero; in an island without it the solver takes the island's lowest node index
 * @param items     items, in a fixed order; results are given by index in this list
 */
public record Network(List<String> nodeIds, int reference, List<Item> items) {
    public Network {
        nodeIds = List.copyOf(nodeIds);
        items = List.copyOf(items);
    }

    /** Number of nodes. */
    public int nodes() {
        return nodeIds.size();
    }

    /** Something between nodes. */
    public sealed interface Item permits Wire, Resistor, Switch, Emf, Regulator, Rectifier, Load, ConverterItem, Comparator {
        /** Id of the plan's element behind it. */
        String id();
    }

    /**
     * A conductor whose resistance follows its temperature.
     *
     * @param r20Ohm    conductor resistance at 20 degrees Celsius, above 0 ohm
     * @param jointsOhm end joints, not heated, ohm
     * @param heat      how it warms; null for a conductor that stays at 20 degrees Celsius
     */
    public record Wire(String id, int a, int b, double r20Ohm, double jointsOhm, WireHeat heat) implements Item {
    }

    /**
     * How a conductor warms in steady state: T = Ta + (Tmax - Tref) (I / Iz)^2 R(T) / R(Tmax), the steady form of the
     * thermal equation.
     *
     * @param ambientC   ambient, degrees Celsius
     * @param ratedA     rating Iz at reference ambient, grouping included, A
     * @param referenceC ambient of the rating, degrees Celsius
     * @param maxC       conductor temperature of the rating, degrees Celsius
     * @param alphaPerK  temperature coefficient at 20 degrees Celsius, 1/K
     */
    public record WireHeat(double ambientC, double ratedA, double referenceC, double maxC, double alphaPerK) {
    }

    /** A fixed resistance above 0 ohm: joints, fuses, coils, shunts, bonds, earth contacts. */
    public record Resistor(String id, int a, int b, double ohm) implements Item {
    }

    /** A contact: {@code ohm} when closed, no path when open. */
    public record Switch(String id, int a, int b, double ohm, Drive drive) implements Item {
    }

    /** What holds a contact. */
    public sealed interface Drive permits Fixed, ByCoil, ByComparator {
    }

    /** Stays as it is in this state. */
    public record Fixed(boolean closed) implements Drive {
    }

    /**
     * Follows the magnitude of the voltage over a coil (index of its {@link Resistor}): pulled in at {@code pickUpV} and above,
     * released below {@code dropOutV}, else as it was; at the start released.
     *
     * @param restClosed the contact is closed while the coil is released
     */
    public record ByCoil(int coil, double pickUpV, double dropOutV, boolean restClosed) implements Drive {
    }

    /** Follows a comparator (index in items); closed while it is on, or the other way round. */
    public record ByComparator(int comparator, boolean restClosed) implements Drive {
    }

    /**
     * An EMF behind a resistance above 0 ohm: volt between a (plus) and b at no current.
     *
     * @param ohm       resistance to current that it gives
     * @param chargeOhm resistance to current that it takes, not below {@code ohm}
     */
    public record Emf(String id, int a, int b, double volt, double ohm, double chargeOhm) implements Item {

        /** With one resistance for both directions. */
        public Emf(String id, int a, int b, double volt, double ohm) {
            this(id, a, b, volt, ohm, ohm);
        }

        /** The resistance to a current from a to b, A. */
        public double ohmAt(double amps) {
            return amps > 0 ? chargeOhm : ohm;
        }
    }

    /**
     * A source that holds {@code setV} between its sense nodes, less {@code droopOhm} times its current, up to
     * {@code limitA}, and never takes current. With sense nodes other than a and b it holds the voltage there.
     *
     * @param droopOhm slope, above 0 ohm
     * @param limitA   current limit, 0 or above, A
     */
    public record Regulator(String id, int a, int b, double setV, double droopOhm, double limitA, int senseA, int senseB)
            implements Item {
    }

    /** Conducts from a to b once the voltage exceeds {@code forwardV}; {@code ohm} is its slope, above 0. */
    public record Rectifier(String id, int a, int b, double forwardV, double ohm) implements Item {
    }

    /** What a load keeps constant. */
    public enum LoadLaw { POWER, CURRENT, RESISTANCE }

    /**
     * A load.
     *
     * @param value    W, A or ohm as {@code law} says, above 0
     * @param offV     voltage below which it is off, NaN for never
     * @param restartV voltage at and above which it is on again, at least offV; NaN when offV is
     */
    public record Load(String id, int a, int b, LoadLaw law, double value, double offV, double restartV) implements Item {
    }

    /**
     * Holds a voltage at its output and takes at its input the output's power over the efficiency, plus standby.
     * Output as a {@link Regulator} sensing its own terminals; input at constant power. Off below {@code offV} at the input,
     * on again at {@code restartV}.
     */
    public record ConverterItem(String id, int inA, int inB, int outA, int outB, double setV, double droopOhm, double limitA,
            double efficiency, double standbyW, double offV, double restartV) implements Item {
    }

    /**
     * Compares a voltage (between two nodes) or the current of an item, with hysteresis: with onAt above offAt on at or above
     * onAt, off below offAt; with onAt below offAt on at or below onAt, off above offAt; between them as it was.
     * It takes no current.
     *
     * @param plus     node, or -1 when a current is sensed
     * @param minus    node, or -1 when a current is sensed
     * @param sensed   index of the item whose current is sensed, or -1
     * @param startsOn what it was before: on for a cut-out that was closed while the battery was full, else off
     */
    public record Comparator(String id, int plus, int minus, int sensed, double onAt, double offAt, boolean startsOn)
            implements Item {
        /** A comparator that was off before. */
        public Comparator(String id, int plus, int minus, int sensed, double onAt, double offAt) {
            this(id, plus, minus, sensed, onAt, offAt, false);
        }
    }
}
