// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** A problem in arrays, as the searches need it: what each item takes of each limit, which options go together. */
final class Tables {
    /** Options of each item. */
    final int[] options;
    /** Limits as numbered in the problem. */
    final int[] limits;
    final double[] atMost;
    /** What each limit may be exceeded by, for rounding. */
    final double[] allowance;
    /** Items of each limit, and what each of their options takes. */
    final int[][] itemsOf;
    final double[][][] values;
    /** Limits of each item, and what each of its options takes of them. */
    final int[][] limitsOf;
    final double[][][] takes;
    final Pair[] pairs;
    final int[][] pairsOf;
    /** Place of each item in the order of ids, which decides between equal choices. */
    final int[] rank;

    /** Two items and which of their options go together. */
    record Pair(int a, int b, boolean[][] allowed) {
        int other(int item) {
            return item == a ? b : a;
        }

        boolean allows(int item, int option, int otherOption) {
            return item == a ? allowed[option][otherOption] : allowed[otherOption][option];
        }
    }

    private Tables(int[] options, int[] limits, double[] atMost, int[][] itemsOf, double[][][] values, Pair[] pairs, int[] rank) {
        this.options = options;
        this.limits = limits;
        this.atMost = atMost;
        this.itemsOf = itemsOf;
        this.values = values;
        this.pairs = pairs;
        this.rank = rank;
        allowance = Arrays.stream(atMost).map(Domains::allowance).toArray();
        List<List<Integer>> at = new ArrayList<>();
        List<List<double[]>> takesOf = new ArrayList<>();
        List<List<Integer>> pairsAt = new ArrayList<>();
        for (int i = 0; i < options.length; i++) {
            at.add(new ArrayList<>());
            takesOf.add(new ArrayList<>());
            pairsAt.add(new ArrayList<>());
        }
        for (int l = 0; l < atMost.length; l++) {
            for (int k = 0; k < itemsOf[l].length; k++) {
                at.get(itemsOf[l][k]).add(l);
                takesOf.get(itemsOf[l][k]).add(values[l][k]);
            }
        }
        for (int p = 0; p < pairs.length; p++) {
            pairsAt.get(pairs[p].a()).add(p);
            pairsAt.get(pairs[p].b()).add(p);
        }
        limitsOf = arrays(at);
        pairsOf = arrays(pairsAt);
        takes = takesOf.stream().map(list -> list.toArray(double[][]::new)).toArray(double[][][]::new);
    }

    private static int[][] arrays(List<List<Integer>> lists) {
        return lists.stream().map(list -> list.stream().mapToInt(Integer::intValue).toArray()).toArray(int[][]::new);
    }

    /** The tables of a problem. */
    static Tables of(ChoiceProblem problem) {
        int n = problem.items().size();
        int[] options = new int[n];
        for (int i = 0; i < n; i++) {
            options[i] = problem.items().get(i).options().size();
        }
        int count = problem.limits().size();
        double[] atMost = new double[count];
        int[][] itemsOf = new int[count][];
        double[][][] values = new double[count][][];
        for (int l = 0; l < count; l++) {
            ChoiceProblem.Limit limit = problem.limits().get(l);
            atMost[l] = limit.atMost();
            itemsOf[l] = new int[limit.terms().size()];
            values[l] = new double[itemsOf[l].length][];
            for (int k = 0; k < itemsOf[l].length; k++) {
                itemsOf[l][k] = limit.terms().get(k).item();
                values[l][k] = numbers(limit.terms().get(k).values());
            }
        }
        Pair[] pairs = new Pair[problem.pairings().size()];
        for (int p = 0; p < pairs.length; p++) {
            ChoiceProblem.Pairing pairing = problem.pairings().get(p);
            pairs[p] = new Pair(pairing.itemA(), pairing.itemB(), truths(pairing.allowed()));
        }
        Integer[] order = new Integer[n];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparing(i -> problem.items().get(i).id()));
        int[] rank = new int[n];
        for (int r = 0; r < n; r++) {
            rank[order[r]] = r;
        }
        int[] all = new int[count];
        Arrays.setAll(all, l -> l);
        return new Tables(options, all, atMost, itemsOf, values, pairs, rank);
    }

    private static double[] numbers(List<Double> list) {
        double[] numbers = new double[list.size()];
        for (int o = 0; o < numbers.length; o++) {
            numbers[o] = list.get(o);
        }
        return numbers;
    }

    private static boolean[][] truths(List<List<Boolean>> rows) {
        boolean[][] truths = new boolean[rows.size()][];
        for (int a = 0; a < truths.length; a++) {
            truths[a] = new boolean[rows.get(a).size()];
            for (int b = 0; b < truths[a].length; b++) {
                truths[a][b] = rows.get(a).get(b);
            }
        }
        return truths;
    }

    /** The same with some of its limits only, given by their places here. */
    Tables only(int[] some) {
        int[] ids = new int[some.length];
        double[] most = new double[some.length];
        int[][] items = new int[some.length][];
        double[][][] figures = new double[some.length][][];
        for (int l = 0; l < some.length; l++) {
            ids[l] = limits[some[l]];
            most[l] = atMost[some[l]];
            items[l] = itemsOf[some[l]];
            figures[l] = values[some[l]];
        }
        return new Tables(options, ids, most, items, figures, pairs, rank);
    }

    /** Number of items. */
    int items() {
        return options.length;
    }
}
