// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.assembly.NetworkBuilder;
import org.loomwright.engine.assembly.NetworkOptions;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;

/**
 * A case solved again with some contacts open, so that relays and cut-outs behind them fall as they would. Conductors stay cold:
 * what is live does not hang on their warmth.
 */
final class IsolatedState {
    private final CaseNetwork at;
    private final LivePaths live;

    private IsolatedState(CaseNetwork at, LivePaths live) {
        this.at = at;
        this.live = live;
    }

    /** The case with these contacts (indexes in elements) open. */
    static IsolatedState of(CheckContext context, SolvedCase solved, List<Integer> contacts) {
        NetworkOptions options = NetworkOptions.running(null);
        for (int e : contacts) {
            options = options.without(context.plan().elements().get(e).id());
        }
        CaseNetwork network = NetworkBuilder.build(context.plan(), solved.state(), options);
        SolvedCase.Solved open = new SolvedCase.Solved(network,
                FlowSolver.solve(network.network(), FlowOptions.standard().withTemperatureFeedback(false), new BasicMonitor()));
        return new IsolatedState(network, LivePaths.of(context.plan(), open));
    }

    /** What closed paths join then. */
    LivePaths live() {
        return live;
    }

    /** True when a load still has both sides of a supply. */
    boolean isSupplied(Plan.Demand load) {
        int a = at.terminalNode()[load.a()];
        int b = at.terminalNode()[load.b()];
        return live.supplied(a, b) || live.supplied(b, a);
    }
}
