// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.choice;

/**
 * Costs and ties as whole numbers of a small unit, so that equal is equal and a proof holds to the last digit: a thousand
 * millionth of the largest figure.
 */
final class Costs {
    private static final double STEPS = 1e9;

    private final double unit;
    private final long[][] cost;
    private final long[][] tie;

    private Costs(double unit, long[][] cost, long[][] tie) {
        this.unit = unit;
        this.cost = cost;
        this.tie = tie;
    }

    /** The options' own costs. */
    static Costs of(ChoiceProblem problem) {
        double[][] costs = new double[problem.items().size()][];
        for (int i = 0; i < costs.length; i++) {
            costs[i] = problem.items().get(i).options().stream().mapToDouble(ChoiceProblem.Option::cost).toArray();
        }
        return of(problem, costs);
    }

    /** Other costs, with the options' own ties. */
    static Costs of(ChoiceProblem problem, double[][] costs) {
        double[][] ties = new double[costs.length][];
        for (int i = 0; i < costs.length; i++) {
            ties[i] = problem.items().get(i).options().stream().mapToDouble(ChoiceProblem.Option::tie).toArray();
        }
        double unit = unit(costs);
        return new Costs(unit, whole(costs, unit), whole(ties, unit(ties)));
    }

    /** No costs and no ties: whatever holds is as good as anything else. */
    static Costs nothing(ChoiceProblem problem) {
        long[][] none = new long[problem.items().size()][];
        for (int i = 0; i < none.length; i++) {
            none[i] = new long[problem.items().get(i).options().size()];
        }
        return new Costs(1, none, none);
    }

    private static double unit(double[][] figures) {
        double largest = 0;
        for (double[] item : figures) {
            for (double figure : item) {
                largest = StrictMath.max(largest, figure);
            }
        }
        return largest == 0 ? 1 : largest / STEPS;
    }

    private static long[][] whole(double[][] figures, double unit) {
        long[][] whole = new long[figures.length][];
        for (int i = 0; i < whole.length; i++) {
            whole[i] = new long[figures[i].length];
            for (int o = 0; o < whole[i].length; o++) {
                whole[i][o] = StrictMath.round(figures[i][o] / unit);
            }
        }
        return whole;
    }

    long cost(int item, int option) {
        return cost[item][option];
    }

    long tie(int item, int option) {
        return tie[item][option];
    }

    double toCost(long units) {
        return units * unit;
    }
}
