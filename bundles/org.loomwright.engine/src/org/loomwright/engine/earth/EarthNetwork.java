// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.Network;

/** A solved network of a plan, with potentials against a battery's minus and ways through what passes current on. */
final class EarthNetwork {
    private final SolvedCase.Solved solved;
    private final NetworkIndex index;
    private final int home;

    EarthNetwork(Plan plan, SolvedCase.Solved solved, int minus) {
        this.solved = solved;
        index = NetworkIndex.of(plan, solved.at());
        home = solved.at().terminalNode()[minus];
    }

    SolvedCase.Solved solved() {
        return solved;
    }

    NetworkIndex index() {
        return index;
    }

    /** Node of the battery's minus. */
    int home() {
        return home;
    }

    int nodes() {
        return index.network().nodes();
    }

    /** Potential of a node against the battery's minus, V; NaN where nothing ties it to a source. */
    double aboveMinusV(int node) {
        return node < 0 ? Double.NaN : solved.point().potentialV()[node] - solved.point().potentialV()[home];
    }

    double bodyV(int body) {
        return aboveMinusV(solved.at().bodyNode()[body]);
    }

    /** Whether an item passes current on just now: cables, joints, straps, closed contacts, conducting diodes. */
    boolean passes(int item) {
        Network.Item it = index.network().items().get(item);
        boolean switches = it instanceof Network.Switch || it instanceof Network.Rectifier;
        return index.passes(item) && (!switches || solved.point().on()[item]);
    }

    /** The two nodes of an item that may pass current on; null for others. */
    static int[] ends(Network.Item item) {
        return item instanceof Network.Wire i ? new int[] {i.a(), i.b()}
                : item instanceof Network.Resistor i ? new int[] {i.a(), i.b()}
                : item instanceof Network.Switch i ? new int[] {i.a(), i.b()}
                : item instanceof Network.Rectifier i ? new int[] {i.a(), i.b()} : null;
    }

    int[] ends(int item) {
        return ends(index.network().items().get(item));
    }

    /** Resistance of an item that passes current on, ohm: of a conductor at its temperature. */
    double ohm(int item) {
        Network.Item it = index.network().items().get(item);
        if (it instanceof Network.Wire wire) {
            double alpha = wire.heat() == null ? 0 : wire.heat().alphaPerK();
            return atLeast(wire.r20Ohm() * (1 + alpha * (solved.point().temperatureC()[item] - 20)) + wire.jointsOhm());
        }
        return atLeast(it instanceof Network.Resistor resistor ? resistor.ohm()
                : it instanceof Network.Switch contact ? contact.ohm() : ((Network.Rectifier) it).ohm());
    }

    /** The solver takes no smaller resistance. */
    private static double atLeast(double ohm) {
        return StrictMath.max(FlowOptions.standard().smallestOhm(), ohm);
    }

    /** Nodes that something that passes joins with one, itself included. */
    boolean[] reach(int from) {
        boolean[] seen = new boolean[nodes()];
        Deque<Integer> open = new ArrayDeque<>();
        seen[from] = true;
        open.add(from);
        while (!open.isEmpty()) {
            int node = open.remove();
            for (int item : index.itemsAt(node)) {
                int other = passes(item) ? other(item, node) : node;
                if (!seen[other]) {
                    seen[other] = true;
                    open.add(other);
                }
            }
        }
        return seen;
    }

    /** Items of the way of fewest steps between two nodes, in order, through what passes; null where there is none. */
    int[] way(int from, int to) {
        int[] by = new int[nodes()];
        Arrays.fill(by, -1);
        boolean[] seen = new boolean[nodes()];
        seen[from] = true;
        Deque<Integer> open = new ArrayDeque<>();
        open.add(from);
        while (!open.isEmpty() && !seen[to]) {
            int node = open.remove();
            for (int item : index.itemsAt(node)) {
                if (passes(item)) {
                    int other = other(item, node);
                    if (!seen[other]) {
                        seen[other] = true;
                        by[other] = item;
                        open.add(other);
                    }
                }
            }
        }
        return seen[to] ? back(by, from, to) : null;
    }

    private int[] back(int[] by, int from, int to) {
        int steps = 0;
        for (int node = to; node != from; node = other(by[node], node)) {
            steps++;
        }
        int[] way = new int[steps];
        for (int node = to; node != from; node = other(by[node], node)) {
            way[--steps] = by[node];
        }
        return way;
    }

    int other(int item, int node) {
        int[] ends = ends(item);
        return ends[0] == node ? ends[1] : ends[0];
    }
}
