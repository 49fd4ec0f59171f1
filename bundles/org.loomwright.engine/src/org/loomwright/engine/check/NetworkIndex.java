// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.Arrays;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.Network.Item;

/** Looks up which items meet at a node of a network and which element of the plan an item stands for. */
public final class NetworkIndex {
    private final Network network;
    private final Owner[] owners;
    private final boolean[] coil;
    private final int[] start;
    private final int[] itemsAt;

    private NetworkIndex(Plan plan, CaseNetwork at, Network network) {
        this.network = network;
        owners = new Owner[network.items().size()];
        coil = new boolean[owners.length];
        own(Kind.CONDUCTOR, at.conductorItem());
        own(Kind.ELEMENT, at.standbyItem());
        own(Kind.ELEMENT, at.elementItem());
        own(Kind.BOND, at.bondItem());
        own(Kind.SEAM, at.linkItem());
        own(Kind.EARTH_CONTACT, at.earthItem());
        own(Kind.CASE_CONTACT, at.caseItem());
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Coil && at.elementItem()[e] >= 0) {
                coil[at.elementItem()[e]] = true;
            }
        }
        start = new int[network.nodes() + 1];
        for (Item item : network.items()) {
            for (int node : nodes(item)) {
                start[node + 1]++;
            }
        }
        for (int n = 0; n < network.nodes(); n++) {
            start[n + 1] += start[n];
        }
        itemsAt = new int[start[network.nodes()]];
        int[] next = start.clone();
        for (int i = 0; i < owners.length; i++) {
            for (int node : nodes(network.items().get(i))) {
                itemsAt[next[node]++] = i;
            }
        }
    }

    /** What an item of the network stands for in the plan. */
    public enum Kind { CONDUCTOR, ELEMENT, BOND, SEAM, EARTH_CONTACT, CASE_CONTACT }

    /**
     * The plan's side of an item.
     *
     * @param index index in the plan's list of that kind; for contacts of earth points and cases the terminal
     */
    public record Owner(Kind kind, int index) {
    }

    /** The index of a network of a plan. */
    public static NetworkIndex of(Plan plan, CaseNetwork at) {
        return new NetworkIndex(plan, at, at.network());
    }

    /** The index of a variant of a plan's network: the same items by index, some of them of another kind. */
    public static NetworkIndex ofVariant(Plan plan, CaseNetwork at, Network variant) {
        return new NetworkIndex(plan, at, variant);
    }

    /** What an item stands for; null for items without an element of the plan. */
    public Owner owner(int item) {
        return owners[item];
    }

    /** Items that meet at a node; the array is the caller's. */
    public int[] itemsAt(int node) {
        return Arrays.copyOfRange(itemsAt, start[node], start[node + 1]);
    }

    /** True for items through which current passes on: wires, contacts, joints, fuses, bonds; not coils, loads or sources. */
    public boolean passes(int item) {
        Item it = network.items().get(item);
        return (it instanceof Network.Wire || it instanceof Network.Resistor || it instanceof Network.Switch
                || it instanceof Network.Rectifier) && !coil[item];
    }

    /** True for sources, converters included. */
    public boolean source(int item) {
        Item it = network.items().get(item);
        return it instanceof Network.Emf || it instanceof Network.Regulator || it instanceof Network.ConverterItem;
    }

    /** The network. */
    public Network network() {
        return network;
    }

    /** Nodes of an item that carry current, a first; of a converter inA, inB, outA, outB. */
    static int[] nodes(Item item) {
        if (item instanceof Network.Wire i) {
            return new int[] {i.a(), i.b()};
        } else if (item instanceof Network.Resistor i) {
            return new int[] {i.a(), i.b()};
        } else if (item instanceof Network.Switch i) {
            return new int[] {i.a(), i.b()};
        } else if (item instanceof Network.Emf i) {
            return new int[] {i.a(), i.b()};
        } else if (item instanceof Network.Regulator i) {
            return new int[] {i.a(), i.b()};
        } else if (item instanceof Network.Rectifier i) {
            return new int[] {i.a(), i.b()};
        } else if (item instanceof Network.Load i) {
            return new int[] {i.a(), i.b()};
        } else if (item instanceof Network.ConverterItem i) {
            return new int[] {i.inA(), i.inB(), i.outA(), i.outB()};
        }
        return new int[0];
    }

    private void own(Kind kind, int[] items) {
        for (int i = 0; i < items.length; i++) {
            if (items[i] >= 0) {
                owners[items[i]] = new Owner(kind, i);
            }
        }
    }
}
