// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What in a network is on or off by itself: relays, comparators, loads and converters with a cut-out. It starts from relays
 * released, comparators as they say, loads and converters on, and all of them follow the voltages and currents found together,
 * so the sequence of sets does not depend on the order of the items. A part without potential shows 0 V, as a meter would; loads and
 * converters in it keep their state.
 */
final class States {
    private final Network network;
    private final double floorV;
    /** Relay pulled in, comparator on, load or converter not cut out. */
    private final BitSet set;
    /** Converters whose input has no voltage even without load. */
    private final BitSet unfed;

    private States(Network network, double floorV, BitSet set, BitSet unfed) {
        this.network = network;
        this.floorV = floorV;
        this.set = set;
        this.unfed = unfed;
    }

    /** The defined start. */
    static States start(Network network, FlowOptions options) {
        BitSet set = new BitSet();
        for (int item = 0; item < network.items().size(); item++) {
            Network.Item it = network.items().get(item);
            set.set(item, it instanceof Network.Load || it instanceof Network.ConverterItem
                    || it instanceof Network.Comparator comparator && comparator.startsOn());
        }
        return new States(network, options.floorV(), set, new BitSet());
    }

    /** Contact closed, comparator on, load or converter working; false for other items. */
    boolean on(int item) {
        if (network.items().get(item) instanceof Network.Switch contact) {
            Network.Drive drive = contact.drive();
            if (drive instanceof Network.Fixed fixed) {
                return fixed.closed();
            }
            if (drive instanceof Network.ByCoil coil) {
                return set.get(item) != coil.restClosed();
            }
            Network.ByComparator follower = (Network.ByComparator) drive;
            return set.get(follower.comparator()) != follower.restClosed();
        }
        return set.get(item) && !unfed.get(item);
    }

    /** The states that follow from a solution. */
    States next(Solution at) {
        BitSet nextSet = (BitSet) set.clone();
        BitSet nextUnfed = (BitSet) unfed.clone();
        for (int item = 0; item < network.items().size(); item++) {
            Network.Item it = network.items().get(item);
            if (it instanceof Network.Switch contact && contact.drive() instanceof Network.ByCoil relay) {
                Network.Resistor coil = (Network.Resistor) network.items().get(relay.coil());
                nextSet.set(item, above(Math.abs(at.voltage(coil.a(), coil.b())), relay.pickUpV(), relay.dropOutV(),
                        set.get(item)));
            } else if (it instanceof Network.Comparator comparator) {
                nextSet.set(item, compare(comparator, at, set.get(item)));
            } else if (it instanceof Network.Load load && !Double.isNaN(load.offV()) && at.live(load.a(), load.b())) {
                nextSet.set(item, above(Math.abs(at.voltage(load.a(), load.b())), load.restartV(), load.offV(),
                        set.get(item)));
            } else if (it instanceof Network.ConverterItem converter && at.live(converter.inA(), converter.inB())) {
                if (!Double.isNaN(converter.offV())) {
                    nextSet.set(item, above(at.voltage(converter.inA(), converter.inB()), converter.restartV(),
                            converter.offV(), set.get(item)));
                }
                double available = unfed.get(item) || !set.get(item) ? at.voltage(converter.inA(), converter.inB())
                        : at.unloaded(item);
                nextUnfed.set(item, available < floorV);
            }
        }
        return new States(network, floorV, nextSet, nextUnfed);
    }

    private static boolean compare(Network.Comparator comparator, Solution at, boolean was) {
        double value = comparator.sensed() >= 0 ? at.amps(comparator.sensed())
                : at.voltage(comparator.plus(), comparator.minus());
        if (comparator.onAt() >= comparator.offAt()) {
            return above(value, comparator.onAt(), comparator.offAt(), was);
        }
        return value <= comparator.onAt() || was && value <= comparator.offAt();
    }

    /** On at or above one value, off below another, else as it was. */
    private static boolean above(double value, double onAt, double offAt, boolean was) {
        return value >= onAt || was && value >= offAt;
    }

    /** Items whose state differs between this and any of the others. */
    List<Integer> differences(List<States> others) {
        List<Integer> items = new ArrayList<>();
        for (int item = 0; item < network.items().size(); item++) {
            int index = item;
            if (others.stream().anyMatch(other -> other.on(index) != on(index))) {
                items.add(item);
            }
        }
        return items;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof States that && set.equals(that.set) && unfed.equals(that.unfed);
    }

    @Override
    public int hashCode() {
        return 31 * set.hashCode() + unfed.hashCode();
    }
}
