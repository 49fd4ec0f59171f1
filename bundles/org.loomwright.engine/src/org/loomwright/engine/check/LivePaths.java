// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.Network.Item;

/**
 * Which nodes of a solved network are joined by closed paths: not through loads, coils or sources, open contacts or idle diodes.
 */
public final class LivePaths {
    private final NetworkIndex index;
    private final SolvedCase.Solved solved;
    private final int[] part;
    private final boolean[] plus;
    private final boolean[] minus;

    private LivePaths(NetworkIndex index, SolvedCase.Solved solved) {
        this.index = index;
        this.solved = solved;
        part = new int[index.network().nodes()];
        Arrays.fill(part, -1);
        int parts = 0;
        for (int node = 0; node < part.length; node++) {
            if (part[node] < 0) {
                spread(node, parts++);
            }
        }
        plus = new boolean[parts];
        minus = new boolean[parts];
        for (Item item : index.network().items()) {
            if (item instanceof Network.Emf || item instanceof Network.Regulator source && source.limitA() > 0) {
                int[] ends = NetworkIndex.nodes(item);
                plus[part[ends[0]]] = true;
                minus[part[ends[1]]] = true;
            } else if (item instanceof Network.ConverterItem converter) {
                plus[part[converter.outA()]] = true;
                minus[part[converter.outB()]] = true;
            }
        }
    }

    /** The closed paths of a solved network of a plan. */
    public static LivePaths of(Plan plan, SolvedCase.Solved solved) {
        return new LivePaths(NetworkIndex.of(plan, solved.at()), solved);
    }

    /** True when closed paths lead from a node to the plus side of a source. */
    public boolean atPlus(int node) {
        return node >= 0 && plus[part[node]];
    }

    /** True when closed paths lead from a node to the minus side of a source. */
    public boolean atMinus(int node) {
        return node >= 0 && minus[part[node]];
    }

    /**
     * True when closed paths lead from one node to the plus side of a source and from the other to a minus side, apart from
     * each other.
     */
    public boolean supplied(int plusNode, int minusNode) {
        return atPlus(plusNode) && atMinus(minusNode) && part[plusNode] != part[minusNode];
    }

    /** True when closed paths join two nodes. */
    public boolean joined(int a, int b) {
        return a >= 0 && b >= 0 && part[a] == part[b];
    }

    private void spread(int from, int number) {
        Deque<Integer> open = new ArrayDeque<>();
        part[from] = number;
        open.add(from);
        while (!open.isEmpty()) {
            for (int item : index.itemsAt(open.remove())) {
                if (closed(item)) {
                    for (int node : NetworkIndex.nodes(index.network().items().get(item))) {
                        if (part[node] < 0) {
                            part[node] = number;
                            open.add(node);
                        }
                    }
                }
            }
        }
    }

    private boolean closed(int item) {
        Item it = index.network().items().get(item);
        boolean switches = it instanceof Network.Switch || it instanceof Network.Rectifier;
        return index.passes(item) && (!switches || solved.point().on()[item]);
    }
}
