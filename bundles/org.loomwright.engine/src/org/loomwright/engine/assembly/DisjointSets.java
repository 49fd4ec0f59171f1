// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

/** Sets that are joined step by step (union by size, path halving); the numbers 0 to n-1 start alone. */
public final class DisjointSets {
    private final int[] parent;
    private final int[] size;

    /** As many single sets. */
    public DisjointSets(int count) {
        parent = new int[count];
        size = new int[count];
        for (int i = 0; i < count; i++) {
            parent[i] = i;
            size[i] = 1;
        }
    }

    /** The same sets, to be joined further on their own. */
    public DisjointSets(DisjointSets other) {
        parent = other.parent.clone();
        size = other.size.clone();
    }

    /** The member that stands for the set of {@code member}. */
    public int find(int member) {
        int at = member;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** True when both are in one set. */
    public boolean joined(int a, int b) {
        return find(a) == find(b);
    }

    /** Joins the sets of both; nothing happens when one of them is -1. True when they were apart. */
    public boolean join(int a, int b) {
        if (a < 0 || b < 0) {
            return false;
        }
        int rootA = find(a);
        int rootB = find(b);
        if (rootA == rootB) {
            return false;
        }
        if (size[rootA] < size[rootB] || size[rootA] == size[rootB] && rootB < rootA) {
            int swap = rootA;
            rootA = rootB;
            rootB = swap;
        }
        parent[rootB] = rootA;
        size[rootA] += size[rootB];
        return true;
    }
}
