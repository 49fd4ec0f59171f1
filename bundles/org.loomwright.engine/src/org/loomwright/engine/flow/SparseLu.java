// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Arrays;

/**
 * A sparse matrix on a symmetric pattern and its factors L and U. The order of elimination and the fill are found once, from the
 * pattern; after that values are added into slots, factored in place and used for any number of right sides. Rows are
 * eliminated one by one, as in Tinney and Walker 1967; the pattern of a row of U is its own and that of its children in the
 * elimination tree (Davis, Direct Methods for Sparse Linear Systems, SIAM 2006, chapter 4). Pivots stay on the diagonal: nodal
 * matrices are near diagonally dominant, and Newton's method mends what little is lost.
 */
final class SparseLu {
    private static final double SMALLEST_PIVOT = 1e-14;

    private final int n;
    private final int[] order;
    private final int[] place;
    private final int[] upperStart;
    private final int[] upperColumn;
    private final int[] lowerStart;
    private final int[] lowerColumn;
    private final int upperAt;
    private final int lowerAt;
    private final double[] value;
    private final double[] work;
    private boolean positive;

    /**
     * Prepares a pattern.
     *
     * @param n       number of rows
     * @param rows    rows of the entries off the diagonal; entries may repeat, the mirrored entry is added
     * @param columns columns of the same entries
     */
    SparseLu(int n, int[] rows, int[] columns) {
        this.n = n;
        int[][] pattern = Patterns.adjacency(n, rows, columns);
        order = MinimumDegree.order(pattern);
        place = new int[n];
        for (int i = 0; i < n; i++) {
            place[order[i]] = i;
        }
        int[][] upper = Patterns.filled(pattern, order, place);
        upperStart = new int[n + 1];
        lowerStart = new int[n + 1];
        for (int i = 0; i < n; i++) {
            upperStart[i + 1] = upperStart[i] + upper[i].length;
            for (int j : upper[i]) {
                lowerStart[j + 1]++;
            }
        }
        for (int i = 0; i < n; i++) {
            lowerStart[i + 1] += lowerStart[i];
        }
        upperColumn = new int[upperStart[n]];
        lowerColumn = new int[upperStart[n]];
        int[] filled = Arrays.copyOf(lowerStart, n);
        for (int i = 0; i < n; i++) {
            System.arraycopy(upper[i], 0, upperColumn, upperStart[i], upper[i].length);
            for (int j : upper[i]) {
                lowerColumn[filled[j]++] = i;
            }
        }
        upperAt = n;
        lowerAt = n + upperColumn.length;
        value = new double[lowerAt + lowerColumn.length];
        work = new double[n];
    }

    /** Entries of L and U off the diagonal, fill included. */
    int factorEntries() {
        return upperColumn.length + lowerColumn.length;
    }

    /** Where the value of an entry of the pattern is kept. */
    int slot(int row, int column) {
        int i = place[row];
        int j = place[column];
        if (i == j) {
            return i;
        }
        int found = i < j ? Arrays.binarySearch(upperColumn, upperStart[i], upperStart[i + 1], j)
                : Arrays.binarySearch(lowerColumn, lowerStart[i], lowerStart[i + 1], j);
        if (found < 0) {
            throw new IllegalArgumentException("entry " + row + ", " + column + " is outside the pattern");
        }
        return (i < j ? upperAt : lowerAt) + found;
    }

    /** Sets all values to zero. */
    void clear() {
        Arrays.fill(value, 0);
    }

    /** Adds to a slot. */
    void add(int slot, double amount) {
        value[slot] += amount;
    }

    /** Makes a row that of the identity, so that its unknown follows the right side. */
    void pin(int row) {
        int i = place[row];
        Arrays.fill(value, upperAt + upperStart[i], upperAt + upperStart[i + 1], 0);
        Arrays.fill(value, lowerAt + lowerStart[i], lowerAt + lowerStart[i + 1], 0);
        value[i] = 1;
    }

    /** Factors the values in place. */
    void factor() {
        positive = true;
        for (int i = 0; i < n; i++) {
            int lowerFrom = lowerStart[i];
            int lowerTo = lowerStart[i + 1];
            int upperFrom = upperStart[i];
            int upperTo = upperStart[i + 1];
            for (int p = lowerFrom; p < lowerTo; p++) {
                work[lowerColumn[p]] = value[lowerAt + p];
            }
            double scale = Math.abs(value[i]);
            work[i] = value[i];
            for (int p = upperFrom; p < upperTo; p++) {
                work[upperColumn[p]] = value[upperAt + p];
            }
            for (int p = lowerFrom; p < lowerTo; p++) {
                int k = lowerColumn[p];
                double factor = work[k] / value[k];
                value[lowerAt + p] = factor;
                if (factor != 0) {
                    for (int q = upperStart[k]; q < upperStart[k + 1]; q++) {
                        work[upperColumn[q]] -= factor * value[upperAt + q];
                    }
                }
            }
            value[i] = pivot(work[i], scale);
            for (int p = upperFrom; p < upperTo; p++) {
                value[upperAt + p] = work[upperColumn[p]];
            }
        }
    }

    private double pivot(double found, double scale) {
        double least = SMALLEST_PIVOT * Math.max(scale, SMALLEST_PIVOT);
        if (!(found > 0)) {
            positive = false;
        }
        if (Math.abs(found) >= least) {
            return found;
        }
        return found < 0 ? -least : least;
    }

    /**
     * Whether all pivots of the last factorisation were above zero. For a matrix with no positive entry off the diagonal this
     * means that its inverse has no negative entry (it is an M-matrix).
     */
    boolean positive() {
        return positive;
    }

    /** Solves for one right side, in place. */
    void solve(double[] right) {
        for (int i = 0; i < n; i++) {
            double sum = right[order[i]];
            for (int p = lowerStart[i]; p < lowerStart[i + 1]; p++) {
                sum -= value[lowerAt + p] * work[lowerColumn[p]];
            }
            work[i] = sum;
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = work[i];
            for (int p = upperStart[i]; p < upperStart[i + 1]; p++) {
                sum -= value[upperAt + p] * work[upperColumn[p]];
            }
            work[i] = sum / value[i];
        }
        for (int i = 0; i < n; i++) {
            right[order[i]] = work[i];
        }
    }
}
