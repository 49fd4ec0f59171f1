// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Arrays;

/**
 * Orders the elimination of a symmetric pattern: always the node with the fewest neighbours left, the lowest index among those
 * found first. This is scheme 2 of Tinney and Walker, Direct solutions of sparse network equations by optimally ordered
 * triangular factorization, Proc. IEEE 55 (1967), known as minimum degree. A tree is eliminated from its leaves, without any
 * fill. Nodes with very many neighbours (busbars, the structure) are set aside and come last, as in Davis, Direct Methods for
 * Sparse Linear Systems, SIAM 2006, section 7.1, which keeps the work near linear.
 */
final class MinimumDegree {
    private final int n;
    private final int[][] adjacent;
    private final int[] size;
    private final int[] head;
    private final int[] next;
    private final int[] previous;
    private final boolean[] aside;

    private MinimumDegree(int[][] pattern) {
        n = pattern.length;
        adjacent = new int[n][];
        size = new int[n];
        head = new int[n + 1];
        next = new int[n];
        previous = new int[n];
        aside = new boolean[n];
        Arrays.fill(head, -1);
        double most = Math.max(16, 10 * Math.sqrt(n));
        for (int i = 0; i < n; i++) {
            aside[i] = pattern[i].length > most;
        }
        for (int i = 0; i < n; i++) {
            if (!aside[i]) {
                adjacent[i] = Arrays.stream(pattern[i]).filter(j -> !aside[j]).toArray();
                size[i] = adjacent[i].length;
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            if (!aside[i]) {
                link(i);
            }
        }
    }

    /**
     * The order of elimination of a pattern.
     *
     * @param pattern for each node its neighbours, ascending, without itself
     * @return nodes in the order in which they are eliminated
     */
    static int[] order(int[][] pattern) {
        return new MinimumDegree(pattern).run();
    }

    private int[] run() {
        int[] order = new int[n];
        int count = 0;
        int degree = 0;
        while (degree < n) {
            int node = head[degree];
            if (node < 0) {
                degree++;
                continue;
            }
            unlink(node);
            order[count++] = node;
            eliminate(node);
            degree = Math.max(0, degree - 1);
        }
        for (int i = 0; i < n; i++) {
            if (aside[i]) {
                order[count++] = i;
            }
        }
        return order;
    }

    private void eliminate(int node) {
        int[] around = adjacent[node];
        int degree = size[node];
        for (int k = 0; k < degree; k++) {
            int other = around[k];
            unlink(other);
            merge(other, node, around, degree);
            link(other);
        }
        adjacent[node] = null;
    }

    /** Neighbours of {@code at} become the union of its own and those of the eliminated node, without both. */
    private void merge(int at, int gone, int[] around, int degree) {
        int[] own = adjacent[at];
        int ownSize = size[at];
        int[] result = degree == 1 ? own : new int[ownSize + degree];
        int i = 0;
        int j = degree == 1 ? 1 : 0;
        int count = 0;
        while (i < ownSize || j < degree) {
            int take;
            if (j >= degree || i < ownSize && own[i] <= around[j]) {
                take = own[i];
                if (j < degree && around[j] == take) {
                    j++;
                }
                i++;
            } else {
                take = around[j++];
            }
            if (take != at && take != gone) {
                result[count++] = take;
            }
        }
        adjacent[at] = result;
        size[at] = count;
    }

    private void link(int node) {
        int first = head[size[node]];
        next[node] = first;
        previous[node] = -1;
        if (first >= 0) {
            previous[first] = node;
        }
        head[size[node]] = node;
    }

    private void unlink(int node) {
        if (previous[node] >= 0) {
            next[previous[node]] = next[node];
        } else {
            head[size[node]] = next[node];
        }
        if (next[node] >= 0) {
            previous[next[node]] = previous[node];
        }
    }
}
