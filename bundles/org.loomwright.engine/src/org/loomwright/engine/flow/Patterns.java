// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Arrays;

/** Symmetric patterns of sparse matrices. */
final class Patterns {
    private Patterns() {
    }

    /** For each node its neighbours, ascending, each once, without itself. */
    static int[][] adjacency(int n, int[] rows, int[] columns) {
        int[] count = new int[n];
        for (int k = 0; k < rows.length; k++) {
            if (rows[k] != columns[k]) {
                count[rows[k]]++;
                count[columns[k]]++;
            }
        }
        int[][] adjacent = new int[n][];
        for (int i = 0; i < n; i++) {
            adjacent[i] = new int[count[i]];
        }
        Arrays.fill(count, 0);
        for (int k = 0; k < rows.length; k++) {
            int i = rows[k];
            int j = columns[k];
            if (i != j) {
                adjacent[i][count[i]++] = j;
                adjacent[j][count[j]++] = i;
            }
        }
        for (int i = 0; i < n; i++) {
            adjacent[i] = distinct(adjacent[i]);
        }
        return adjacent;
    }

    private static int[] distinct(int[] values) {
        Arrays.sort(values);
        int kept = 0;
        for (int k = 0; k < values.length; k++) {
            if (k == 0 || values[k] != values[k - 1]) {
                values[kept++] = values[k];
            }
        }
        return kept == values.length ? values : Arrays.copyOf(values, kept);
    }

    /**
     * Pattern of the factor's rows, fill included, in places of the order. A row has what the matrix has and what its children
     * in the elimination tree have; a row's parent is its first entry.
     */
    static int[][] filled(int[][] pattern, int[] order, int[] place) {
        int n = order.length;
        int[][] upper = new int[n][];
        int[] firstChild = new int[n];
        int[] nextChild = new int[n];
        int[] seen = new int[n];
        int[] list = new int[n];
        Arrays.fill(firstChild, -1);
        Arrays.fill(seen, -1);
        for (int i = 0; i < n; i++) {
            int count = 0;
            seen[i] = i;
            for (int neighbour : pattern[order[i]]) {
                int j = place[neighbour];
                if (j > i && seen[j] != i) {
                    seen[j] = i;
                    list[count++] = j;
                }
            }
            for (int child = firstChild[i]; child >= 0; child = nextChild[child]) {
                for (int j : upper[child]) {
                    if (seen[j] != i) {
                        seen[j] = i;
                        list[count++] = j;
                    }
                }
            }
            upper[i] = Arrays.copyOf(list, count);
            Arrays.sort(upper[i]);
            if (count > 0) {
                int parent = upper[i][0];
                nextChild[i] = firstChild[parent];
                firstChild[parent] = i;
            }
        }
        return upper;
    }
}
