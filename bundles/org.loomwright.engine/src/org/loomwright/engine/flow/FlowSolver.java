// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.List;
import org.eclipse.emf.common.util.Monitor;

/**
 * Finds the operating point of a network: nodal equations, solved by Newton's method on a sparse factorisation. The result
 * depends on the network and the options alone, to the bit; not on start values, threads, or what was solved before.
 *
 * <p>Of several solutions that constant power may have it is the one with the highest voltages: the one that is reached when
 * loads are raised from nothing. A network that has no solution has collapsed: then the figures are those at the largest common
 * factor on all loads that has one.
 */
public final class FlowSolver {
    private FlowSolver() {
    }

    /**
     * Finds the operating point.
     *
     * @param network network; resistances may be 0 and are then raised to the smallest of the options
     * @param options how to seek
     * @param monitor asked before each Newton step whether to go on
     * @return the operating point, whatever the network does electrically
     * @throws IllegalArgumentException for a malformed network: a negative resistance, an index out of range, a figure that
     *             is no number
     * @throws java.util.concurrent.CancellationException once the monitor is cancelled
     */
    public static OperatingPoint solve(Network network, FlowOptions options, Monitor monitor) {
        return solve(network, options, monitor, new double[network.nodes()]);
    }

    static OperatingPoint solve(Network network, FlowOptions options, Monitor monitor, double[] start) {
        Settling settling = settling(network, options, monitor, start);
        Settling.Settled settled = settling.run(options.loadScale());
        if (!settled.cycling().isEmpty() && !settled.solution().collapsed()) {
            return Report.of(settled, OperatingPoint.Status.CYCLING, settled.cycling(), Double.NaN);
        }
        if (!settled.solution().collapsed()) {
            return Report.of(settled, OperatingPoint.Status.SOLVED, List.of(), Double.NaN);
        }
        Collapse.Edge edge = new Collapse(settling, options).between(0, options.loadScale(), settled);
        OperatingPoint point = Report.of(edge.at(), OperatingPoint.Status.COLLAPSED, List.of(), edge.scale());
        return Report.withTrouble(point, Collapse.weakest(edge));
    }

    /**
     * The largest common factor on all loads that still has an operating point: on the watts of power loads, the amperes of
     * current loads, the conductance of resistive loads; the standby of converters stays. Cut-outs and relays act as they do at
     * that factor, so a load that cuts itself out no longer counts; states that cycle are not an operating point.
     *
     * @param network network
     * @param upTo    where the search ends, above 0
     * @param options how to seek; their own load scale is not used
     * @param monitor asked before each Newton step whether to go on
     * @return {@code upTo} when there is an operating point at it; else the factor, found within the scale tolerance; 0 when
     *         there is none even without loads
     */
    public static double collapseScale(Network network, double upTo, FlowOptions options, Monitor monitor) {
        if (!(upTo > 0 && upTo < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("load scale up to " + upTo + ", expected above 0");
        }
        Settling settling = settling(network, options, monitor, new double[network.nodes()]);
        Settling.Settled settled = settling.run(upTo);
        return settled.solved() ? upTo : new Collapse(settling, options).between(0, upTo, settled).scale();
    }

    private static Settling settling(Network network, FlowOptions options, Monitor monitor, double[] start) {
        NetworkCheck.check(network);
        Cancel cancel = new Cancel(monitor);
        cancel.poll();
        return new Settling(new StateSolver(new Circuit(network, options), cancel, start), network, options);
    }
}
