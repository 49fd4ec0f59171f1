// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.Collection;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.assembly.NetworkBuilder;
import org.loomwright.engine.assembly.NetworkOptions;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;

/**
 * Solves a case with straps gone, at the moment of the loss: conductors are as warm as before, while loads, relays and sources
 * do what they do at the new voltages.
 *
 * <p>The network is solved anew as a whole. In most vehicles a strap is the only way from its body, so that its loss changes what
 * loads, relays and charging sources do; an update of low rank to the network before, linear as it is, would have to be thrown
 * away just there.
 */
final class LossSolver {
    /** Where there is no operating point it is enough to know that: how much load there could be is found roughly only. */
    private static final FlowOptions OPTIONS = options();

    private final Plan plan;
    private final Monitor monitor;

    LossSolver(Plan plan, Monitor monitor) {
        this.plan = plan;
        this.monitor = monitor;
    }

    /** The running network without some bonds. */
    SolvedCase.Solved running(SolvedCase solved, Collection<Integer> bonds) {
        return solve(solved, bonds, NetworkOptions.Variant.RUNNING);
    }

    /** The network with loads that come and go at standby, without some bonds. */
    SolvedCase.Solved base(SolvedCase solved, Collection<Integer> bonds) {
        return solve(solved, bonds, NetworkOptions.Variant.BASE);
    }

    private SolvedCase.Solved solve(SolvedCase solved, Collection<Integer> bonds, NetworkOptions.Variant variant) {
        double[] heldC = new double[plan.conductors().size()];
        for (int c = 0; c < heldC.length; c++) {
            heldC[c] = solved.running().conductorC(c);
        }
        NetworkOptions options = NetworkOptions.running(null).heldAt(heldC).variant(variant);
        for (int bond : bonds) {
            options = options.without(plan.bonds().get(bond).id());
        }
        CaseNetwork at = NetworkBuilder.build(plan, solved.state(), options);
        return new SolvedCase.Solved(at, FlowSolver.solve(at.network(), OPTIONS, monitor));
    }

    private static FlowOptions options() {
        FlowOptions fine = FlowOptions.standard();
        return new FlowOptions(fine.temperatureFeedback(), fine.loadScale(), fine.floorV(), fine.smallestOhm(), fine.highestC(),
                fine.relativeTolerance(), fine.newtonSteps(), fine.stateChanges(), 0.1);
    }
}
