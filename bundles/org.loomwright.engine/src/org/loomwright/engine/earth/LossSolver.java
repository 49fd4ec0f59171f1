// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.CaseNetwork;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.FlowSolver;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.heat.Copper;

/**
 * Solves a case with straps gone, at the moment of the loss: conductors are as warm as before, while loads, relays and sources
 * do what they do at the new voltages. Items keep their place in the network, a lost strap standing there as an open contact.
 *
 * <p>The network is solved anew as a whole. In most vehicles a strap is the only way from its body, so that its loss changes what
 * loads, relays and charging sources do; an update of low rank to the network before, linear as it is, would have to be thrown
 * away just there.
 */
final class LossSolver {
    /** Where there is no operating point it is enough to know that: how much load there could be is found roughly only. */
    private static final FlowOptions OPTIONS = options();

    private final Monitor monitor;

    LossSolver(Monitor monitor) {
        this.monitor = monitor;
    }

    /** The running network without some bonds. */
    SolvedCase.Solved running(SolvedCase solved, Collection<Integer> bonds) {
        return solve(solved.running(), solved, bonds);
    }

    /** The network with loads that come and go at standby, without some bonds. */
    SolvedCase.Solved base(SolvedCase solved, Collection<Integer> bonds) {
        return solve(solved.base(), solved, bonds);
    }

    private SolvedCase.Solved solve(SolvedCase.Solved of, SolvedCase solved, Collection<Integer> bonds) {
        CaseNetwork at = of.at();
        List<Network.Item> items = new ArrayList<>(at.network().items());
        for (int item : at.conductorItem()) {
            if (item >= 0 && items.get(item) instanceof Network.Wire wire) {
                items.set(item, held(wire, solved.running().point(), item));
            }
        }
        for (int bond : bonds) {
            int item = at.bondItem()[bond];
            if (item >= 0 && items.get(item) instanceof Network.Resistor strap) {
                items.set(item, new Network.Switch(strap.id(), strap.a(), strap.b(), strap.ohm(), new Network.Fixed(false)));
            }
        }
        Network network = new Network(at.network().nodeIds(), at.network().reference(), items);
        CaseNetwork without = new CaseNetwork(network, at.terminalNode(), at.bodyNode(), at.conductorItem(), at.elementItem(),
                at.standbyItem(), at.bondItem(), at.linkItem(), at.earthItem(), at.caseItem());
        return new SolvedCase.Solved(without, FlowSolver.solve(network, OPTIONS, monitor));
    }

    /** The conductor at its temperature in the running case; the conductors come first, at the same place in every variant. */
    private static Network.Wire held(Network.Wire wire, OperatingPoint running, int item) {
        if (wire.heat() == null) {
            return wire;
        }
        double ohm = wire.r20Ohm() * Copper.factor(wire.heat().alphaPerK(), running.temperatureC()[item]);
        return new Network.Wire(wire.id(), wire.a(), wire.b(), ohm, wire.jointsOhm(), null);
    }

    private static FlowOptions options() {
        FlowOptions fine = FlowOptions.standard();
        return new FlowOptions(fine.temperatureFeedback(), fine.loadScale(), fine.floorV(), fine.smallestOhm(), fine.highestC(),
                fine.relativeTolerance(), fine.newtonSteps(), fine.stateChanges(), 0.1);
    }
}
