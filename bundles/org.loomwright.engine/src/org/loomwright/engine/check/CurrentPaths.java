// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.Network.Item;
import org.loomwright.engine.flow.OperatingPoint;

/**
 * Follows the current through a solved network: from a load back to the source that feeds it, and from the load on to the
 * source's other side. Of parallel ways it takes the one with the largest current; the voltage is the same along any.
 */
public final class CurrentPaths {
    private final OperatingPoint point;
    private final NetworkIndex index;

    private CurrentPaths(NetworkIndex index, OperatingPoint point) {
        this.index = index;
        this.point = point;
    }

    /**
     * One step of a path.
     *
     * @param item  item of the network
     * @param owner its element of the plan, null when there is none
     * @param volts voltage lost over it, V
     */
    public record Step(int item, NetworkIndex.Owner owner, double volts) {
    }

    /**
     * A path between a node and a source.
     *
     * @param steps steps in the direction of the current
     * @param end   node of the source at which it starts or ends
     */
    public record Path(List<Step> steps, int end) {
        public Path {
            steps = List.copyOf(steps);
        }

        /** Voltage lost along the path, V. */
        public double volts() {
            return steps.stream().mapToDouble(Step::volts).sum();
        }
    }

    /** Prepares the paths of one solved network. */
    public static CurrentPaths of(Plan plan, SolvedCase.Solved solved) {
        return new CurrentPaths(NetworkIndex.ofVariant(plan, solved.at(), solved.point().network()), solved.point());
    }

    /** The way by which current reaches a node, from the plus side of a source. */
    public Path supplyOf(int node) {
        List<Step> steps = new ArrayList<>();
        int end = follow(node, 1, -1, steps);
        Collections.reverse(steps);
        return new Path(steps, end);
    }

    /** The way by which current leaves a node, down to {@code stop} (-1 for none) or the minus side of a source. */
    public Path returnOf(int node, int stop) {
        List<Step> steps = new ArrayList<>();
        int end = follow(node, -1, stop, steps);
        return new Path(steps, end);
    }

    /** Source item that delivers most at a node, or -1. */
    public int sourceAt(int node) {
        int best = -1;
        double most = 0;
        for (int item : index.itemsAt(node)) {
            if (index.source(item) && inflow(item, node) > most) {
                most = inflow(item, node);
                best = item;
            }
        }
        return best;
    }

    /** The node on the minus side of a source item. */
    public int minusOf(int source) {
        Item item = index.network().items().get(source);
        return item instanceof Network.ConverterItem converter ? converter.outB() : NetworkIndex.nodes(item)[1];
    }

    /** Index of the network. */
    public NetworkIndex index() {
        return index;
    }

    private int follow(int from, int sign, int stop, List<Step> steps) {
        boolean[] seen = new boolean[index.network().nodes()];
        int node = from;
        while (node != stop && !seen[node]) {
            seen[node] = true;
            int best = -1;
            double most = 0;
            double bySource = 0;
            for (int item : index.itemsAt(node)) {
                double inflow = sign * inflow(item, node);
                if (index.passes(item) && inflow > most) {
                    most = inflow;
                    best = item;
                } else if (index.source(item)) {
                    bySource += StrictMath.max(0, inflow);
                }
            }
            if (best < 0 || bySource > most) {
                return node;
            }
            int[] ends = NetworkIndex.nodes(index.network().items().get(best));
            int other = ends[0] == node ? ends[1] : ends[0];
            steps.add(new Step(best, index.owner(best), sign * point.voltage(other, node)));
            node = other;
        }
        return node;
    }

    /** Current that an item brings into a node, A. */
    private double inflow(int item, int node) {
        Item it = index.network().items().get(item);
        double amps = point.currentA()[item];
        if (it instanceof Network.ConverterItem converter) {
            double out = point.outputA()[item];
            return (converter.outA() == node ? out : 0) - (converter.outB() == node ? out : 0)
                    - (converter.inA() == node ? amps : 0) + (converter.inB() == node ? amps : 0);
        }
        int[] ends = NetworkIndex.nodes(it);
        if (ends.length == 0) {
            return 0;
        }
        return (ends[1] == node ? amps : 0) - (ends[0] == node ? amps : 0);
    }
}
