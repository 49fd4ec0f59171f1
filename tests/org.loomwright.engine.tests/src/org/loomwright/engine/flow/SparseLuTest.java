// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The sparse factorisation and its ordering. */
class SparseLuTest {

    @Test
    void solvesUnsymmetricValuesOnASymmetricPattern() {
        Random random = new Random(1);
        for (int round = 0; round < 200; round++) {
            int n = 1 + random.nextInt(30);
            double[][] dense = new double[n][n];
            int entries = random.nextInt(4 * n);
            int[] rows = new int[entries];
            int[] columns = new int[entries];
            for (int k = 0; k < entries; k++) {
                rows[k] = random.nextInt(n);
                columns[k] = random.nextInt(n);
                dense[rows[k]][columns[k]] += random.nextDouble() - 0.5;
                dense[columns[k]][rows[k]] += random.nextDouble() - 0.5;
            }
            for (int i = 0; i < n; i++) {
                dense[i][i] = 1 + Arrays.stream(dense[i]).map(Math::abs).sum();
            }
            double[] x = random.doubles(n, -10, 10).toArray();
            double[] right = new double[n];
            SparseLu lu = new SparseLu(n, rows, columns);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    right[i] += dense[i][j] * x[j];
                    if (dense[i][j] != 0) {
                        lu.add(lu.slot(i, j), dense[i][j]);
                    }
                }
            }
            lu.factor();
            lu.solve(right);
            for (int i = 0; i < n; i++) {
                assertEquals(x[i], right[i], 1e-9);
            }
        }
    }

    @Test
    void entryOutsideThePatternIsRefused() {
        SparseLu lu = new SparseLu(3, new int[] {0}, new int[] {1});
        assertThrows(IllegalArgumentException.class, () -> lu.slot(0, 2));
    }

    @Test
    void pinnedRowFollowsTheRightSide() {
        SparseLu lu = new SparseLu(2, new int[] {0}, new int[] {1});
        lu.add(lu.slot(0, 0), 2);
        lu.add(lu.slot(0, 1), -1);
        lu.add(lu.slot(1, 0), -1);
        lu.add(lu.slot(1, 1), 1);
        lu.pin(1);
        lu.factor();
        double[] right = {5, 3};
        lu.solve(right);
        assertEquals(3, right[1]);
        assertEquals(4, right[0]);
    }

    @Test
    void signOfThePivotsIsTold() {
        SparseLu lu = new SparseLu(2, new int[] {0}, new int[] {1});
        for (double corner : new double[] {2, 0.1}) {
            lu.clear();
            lu.add(lu.slot(0, 0), 1);
            lu.add(lu.slot(0, 1), -1);
            lu.add(lu.slot(1, 0), -1);
            lu.add(lu.slot(1, 1), corner);
            lu.factor();
            assertEquals(corner > 1, lu.positive());
        }
        assertFalse(lu.positive());
    }

    @Test
    void treesAreFactoredWithoutAnyFill() {
        Random random = new Random(2);
        for (int n : new int[] {2, 10, 1000, 20000}) {
            int[] child = new int[n - 1];
            int[] parent = new int[n - 1];
            for (int k = 1; k < n; k++) {
                child[k - 1] = k;
                parent[k - 1] = random.nextInt(k);
            }
            assertEquals(2 * (n - 1), new SparseLu(n, child, parent).factorEntries());
        }
    }

    @Test
    void treesWithFewLoopsStayNearlyWithoutFill() {
        Random random = new Random(3);
        for (int n : new int[] {500, 2000, 8000}) {
            int loops = n / 50;
            int[] rows = new int[n - 1 + loops];
            int[] columns = new int[n - 1 + loops];
            for (int k = 1; k < n; k++) {
                rows[k - 1] = k;
                columns[k - 1] = Math.max(0, k - 1 - random.nextInt(20));
            }
            for (int k = 0; k < loops; k++) {
                rows[n - 1 + k] = random.nextInt(n);
                columns[n - 1 + k] = Math.max(0, rows[n - 1 + k] - random.nextInt(200));
            }
            int entries = new SparseLu(n, rows, columns).factorEntries();
            assertTrue(entries < 3 * rows.length, () -> entries + " entries for " + rows.length + " branches");
        }
    }

    @Test
    void everyNodeIsEliminatedOnce() {
        Random random = new Random(4);
        for (int round = 0; round < 50; round++) {
            int n = 1 + random.nextInt(200);
            int[] rows = random.ints(3 * n, 0, n).toArray();
            int[] columns = random.ints(3 * n, 0, n).toArray();
            int[] order = MinimumDegree.order(Patterns.adjacency(n, rows, columns)).clone();
            Arrays.sort(order);
            for (int i = 0; i < n; i++) {
                assertEquals(i, order[i]);
            }
        }
    }

    @Test
    void busbarWithThousandsOfCablesIsSetAside() {
        int n = 5001;
        int[] rows = new int[n - 1];
        int[] columns = new int[n - 1];
        for (int k = 1; k < n; k++) {
            rows[k - 1] = k;
        }
        int[] order = MinimumDegree.order(Patterns.adjacency(n, rows, columns));
        assertEquals(0, order[n - 1]);
        assertEquals(2 * (n - 1), new SparseLu(n, rows, columns).factorEntries());
    }
}
