// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.PriorityQueue;
import org.loomwright.engine.assembly.RunGraph.Piece;
import org.loomwright.engine.assembly.RunGraph.Spot;

/**
 * Shortest ways from one spot (Dijkstra 1959), settled only as far as asked for. Lengths are compared in whole micrometres, so
 * that adding up from either end gives the same; then the number of runs, then the sum of numbers drawn from the runs' ids.
 */
final class ShortestWays {
    private final List<Plan.Run> runs;
    private final int[][] runsAt;
    private final long[] micrometres;
    private final long[] mark;
    private final Cost[] cost;
    private final Step[] via;
    private final boolean[] done;
    private final PriorityQueue<Label> open = new PriorityQueue<>();
    private final List<Integer> touched = new ArrayList<>();
    private Spot root;

    private record Cost(long micrometres, int runs, long marks) implements Comparable<Cost> {
        Cost plus(long length, long mark) {
            return new Cost(micrometres + length, runs + 1, marks + mark);
        }

        @Override
        public int compareTo(Cost other) {
            int order = Long.compare(micrometres, other.micrometres);
            order = order != 0 ? order : Integer.compare(runs, other.runs);
            return order != 0 ? order : Long.compare(marks, other.marks);
        }
    }

    private record Label(Cost cost, int place) implements Comparable<Label> {
        @Override
        public int compareTo(Label other) {
            return cost.compareTo(other.cost);
        }
    }

    /** How a place was reached: a piece of run, from the place before, -1 for the root. */
    private record Step(Piece piece, int before) {
    }

    ShortestWays(int places, List<Plan.Run> runs) {
        this.runs = runs;
        int[] count = new int[places];
        for (Plan.Run run : runs) {
            count[run.from()]++;
            count[run.to()]++;
        }
        runsAt = new int[places][];
        for (int p = 0; p < places; p++) {
            runsAt[p] = new int[count[p]];
        }
        micrometres = new long[runs.size()];
        mark = new long[runs.size()];
        for (int r = 0; r < runs.size(); r++) {
            Plan.Run run = runs.get(r);
            runsAt[run.from()][--count[run.from()]] = r;
            runsAt[run.to()][--count[run.to()]] = r;
            micrometres[r] = micrometres(run.lengthMm());
            mark[r] = mark(run.id());
        }
        cost = new Cost[places];
        via = new Step[places];
        done = new boolean[places];
    }

    /** Starts at a spot. */
    void from(Spot start) {
        for (int place : touched) {
            cost[place] = null;
            via[place] = null;
            done[place] = false;
        }
        touched.clear();
        open.clear();
        root = start;
        Cost none = new Cost(0, 0, 0);
        if (start.place() >= 0) {
            reach(start.place(), none, null);
            return;
        }
        Plan.Run run = runs.get(start.run());
        double rest = run.lengthMm() - start.atMm();
        reach(run.from(), none.plus(micrometres(start.atMm()), mark[start.run()]),
                new Step(new Piece(start.run(), start.atMm()), -1));
        reach(run.to(), none.plus(micrometres(rest), mark[start.run()]), new Step(new Piece(start.run(), rest), -1));
    }

    /** The pieces from the root to another spot, in order; null when there is no way. */
    List<Piece> to(Spot target) {
        if (target.place() >= 0) {
            return settle(target.place()) ? back(target.place(), null) : null;
        }
        Plan.Run run = runs.get(target.run());
        double rest = run.lengthMm() - target.atMm();
        Cost best = null;
        List<Piece> pieces = null;
        if (root.run() == target.run()) {
            double between = StrictMath.abs(root.atMm() - target.atMm());
            best = new Cost(micrometres(between), 1, mark[target.run()]);
            pieces = new ArrayList<>(List.of(new Piece(target.run(), between)));
        }
        for (boolean atFrom : new boolean[] {true, false}) {
            int end = atFrom ? run.from() : run.to();
            double lastMm = atFrom ? target.atMm() : rest;
            if (settle(end)) {
                Cost whole = cost[end].plus(micrometres(lastMm), mark[target.run()]);
                if (best == null || whole.compareTo(best) < 0) {
                    best = whole;
                    pieces = back(end, new Piece(target.run(), lastMm));
                }
            }
        }
        return pieces;
    }

    private boolean settle(int place) {
        while (!done[place]) {
            Label label = open.poll();
            if (label == null) {
                return false;
            }
            if (done[label.place()]) {
                continue;
            }
            done[label.place()] = true;
            for (int r : runsAt[label.place()]) {
                Plan.Run run = runs.get(r);
                int next = run.from() == label.place() ? run.to() : run.from();
                if (!done[next]) {
                    reach(next, label.cost().plus(micrometres[r], mark[r]),
                            new Step(new Piece(r, run.lengthMm()), label.place()));
                }
            }
        }
        return true;
    }

    private void reach(int place, Cost by, Step step) {
        if (cost[place] == null) {
            touched.add(place);
        } else if (cost[place].compareTo(by) <= 0) {
            return;
        }
        cost[place] = by;
        via[place] = step;
        open.add(new Label(by, place));
    }

    private List<Piece> back(int place, Piece last) {
        List<Piece> pieces = new ArrayList<>();
        if (last != null) {
            pieces.add(last);
        }
        for (int at = place; at >= 0 && via[at] != null; at = via[at].before()) {
            pieces.add(via[at].piece());
        }
        Collections.reverse(pieces);
        return pieces;
    }

    private static long micrometres(double mm) {
        return StrictMath.round(mm * 1000);
    }

    /** A number of 40 bits drawn from an id (FNV-1a, public domain), the same whenever and wherever. */
    private static long mark(String id) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < id.length(); i++) {
            hash = (hash ^ id.charAt(i)) * 0x100000001b3L;
        }
        return hash >>> 24;
    }
}
