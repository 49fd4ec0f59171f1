// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.cases;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.OperatingPoint;

/**
 * Finds the conductors that carry a load's current in a solved network: against the current from the load's plus side up to the
 * sources, with the current from its minus side down to them, over all parallel ways; through a converter on to what feeds
 * it, and through a battery on to one in series with it.
 */
final class LoadPaths {
    private final SolvedCase.Solved solved;
    private final int[] conductorOf;
    private final int[] start;
    private final int[] itemsAt;

    LoadPaths(SolvedCase.Solved solved) {
        this.solved = solved;
        Network network = solved.at().network();
        conductorOf = new int[network.items().size()];
        Arrays.fill(conductorOf, -1);
        int[] conductorItem = solved.at().conductorItem();
        for (int c = 0; c < conductorItem.length; c++) {
            if (conductorItem[c] >= 0) {
                conductorOf[conductorItem[c]] = c;
            }
        }
        start = new int[network.nodes() + 1];
        for (Network.Item item : network.items()) {
            for (int node : ends(item)) {
                start[node + 1]++;
            }
        }
        for (int n = 0; n < network.nodes(); n++) {
            start[n + 1] += start[n];
        }
        itemsAt = new int[start[network.nodes()]];
        int[] next = start.clone();
        for (int i = 0; i < network.items().size(); i++) {
            for (int node : ends(network.items().get(i))) {
                itemsAt[next[node]++] = i;
            }
        }
    }

    /** Marks the conductors that carry the current of a load's item. */
    boolean[] carriers(int item) {
        boolean[] carries = new boolean[solved.at().conductorItem().length];
        Network.Item load = solved.at().network().items().get(item);
        int[] ends = ends(load);
        boolean[][] seen = new boolean[2][solved.at().network().nodes()];
        byte[] series = new byte[solved.at().network().nodes()];
        Deque<int[]> open = new ArrayDeque<>();
        visit(open, seen, ends[0], 0);
        visit(open, seen, ends[1], 1);
        while (!open.isEmpty()) {
            int[] at = open.remove();
            follow(open, seen, at[0], at[1], carries);
            if (at[1] == 0) {
                series(at[0], series, carries);
            }
        }
        return carries;
    }

    private void follow(Deque<int[]> open, boolean[][] seen, int node, int side, boolean[] carries) {
        OperatingPoint point = solved.point();
        for (int k = start[node]; k < start[node + 1]; k++) {
            int i = itemsAt[k];
            Network.Item item = point.network().items().get(i);
            if (item instanceof Network.ConverterItem converter) {
                if (point.outputA()[i] > 0 && node == (side == 0 ? converter.outA() : converter.outB())) {
                    visit(open, seen, converter.inA(), 0);
                    visit(open, seen, converter.inB(), 1);
                }
            } else if (passes(item)) {
                int[] ends = ends(item);
                double into = ends[1] == node ? point.currentA()[i] : -point.currentA()[i];
                if (side == 0 ? into > 0 : into < 0) {
                    if (conductorOf[i] >= 0) {
                        carries[conductorOf[i]] = true;
                    }
                    visit(open, seen, ends[1] == node ? ends[0] : ends[1], side);
                }
            }
        }
    }

    /** Marks what lies between the minus of a battery that delivers into a node and the plus of one in series with it. */
    private void series(int plus, byte[] known, boolean[] carries) {
        for (int k = start[plus]; k < start[plus + 1]; k++) {
            int i = itemsAt[k];
            if (delivers(i, plus)) {
                reachesBattery(((Network.Emf) solved.at().network().items().get(i)).b(), known, carries);
            }
        }
    }

    /** Whether current comes into a node from a battery's plus, against the current; what it passes is marked. */
    private boolean reachesBattery(int node, byte[] known, boolean[] carries) {
        if (known[node] != 0) {
            return known[node] > 0;
        }
        known[node] = -1;
        boolean reaches = false;
        for (int k = start[node]; k < start[node + 1]; k++) {
            int i = itemsAt[k];
            Network.Item item = solved.at().network().items().get(i);
            if (delivers(i, node)) {
                reachesBattery(((Network.Emf) item).b(), known, carries);
                reaches = true;
            } else if (passes(item)) {
                int[] ends = ends(item);
                double into = ends[1] == node ? solved.point().currentA()[i] : -solved.point().currentA()[i];
                if (into > 0 && reachesBattery(ends[1] == node ? ends[0] : ends[1], known, carries)) {
                    reaches = true;
                    if (conductorOf[i] >= 0) {
                        carries[conductorOf[i]] = true;
                    }
                }
            }
        }
        known[node] = (byte) (reaches ? 1 : -1);
        return reaches;
    }

    /** Whether an item is a battery with its plus at the node, giving current. */
    private boolean delivers(int item, int node) {
        return solved.at().network().items().get(item) instanceof Network.Emf battery && battery.a() == node
                && solved.point().currentA()[item] < 0;
    }

    private static void visit(Deque<int[]> open, boolean[][] seen, int node, int side) {
        if (!seen[side][node]) {
            seen[side][node] = true;
            open.add(new int[] {node, side});
        }
    }

    private static boolean passes(Network.Item item) {
        return item instanceof Network.Wire || item instanceof Network.Resistor || item instanceof Network.Switch
                || item instanceof Network.Rectifier;
    }

    private static int[] ends(Network.Item item) {
        if (item instanceof Network.Wire wire) {
            return new int[] {wire.a(), wire.b()};
        } else if (item instanceof Network.Resistor resistor) {
            return new int[] {resistor.a(), resistor.b()};
        } else if (item instanceof Network.Switch contact) {
            return new int[] {contact.a(), contact.b()};
        } else if (item instanceof Network.Rectifier rectifier) {
            return new int[] {rectifier.a(), rectifier.b()};
        } else if (item instanceof Network.Load load) {
            return new int[] {load.a(), load.b()};
        } else if (item instanceof Network.ConverterItem converter) {
            return converter.outA() == converter.outB() ? new int[] {converter.outA()}
                    : new int[] {converter.outA(), converter.outB()};
        }
        return item instanceof Network.Emf battery ? new int[] {battery.a(), battery.b()} : new int[0];
    }
}
