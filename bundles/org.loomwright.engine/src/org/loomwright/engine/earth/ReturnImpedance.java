// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.flow.ResistiveNetwork;

/**
 * The returns of one case as a linear network: all that passes current on, conductors at their temperatures, without loads and
 * sources. The potential at one load's minus for 1 A out of another's is the resistance that both have in common, whatever
 * meshes there are (the transfer resistance of network theory); for its own 1 A it is the resistance of its way back.
 */
final class ReturnImpedance {
    private final EarthNetwork network;
    private final ResistiveNetwork resistances;

    ReturnImpedance(EarthNetwork network) {
        this.network = network;
        List<int[]> ends = new ArrayList<>();
        List<Double> ohms = new ArrayList<>();
        List<Network.Item> items = network.index().network().items();
        for (int i = 0; i < items.size(); i++) {
            if (network.passes(i) && !(items.get(i) instanceof Network.Rectifier)) {
                ends.add(network.ends(i));
                ohms.add(network.ohm(i));
            }
        }
        resistances = new ResistiveNetwork(network.nodes(), ends.stream().mapToInt(pair -> pair[0]).toArray(),
                ends.stream().mapToInt(pair -> pair[1]).toArray(), ohms.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Whether a way leads from one node to another. */
    boolean joined(int a, int b) {
        return resistances.joined(a, b);
    }

    /**
     * Potential of each node over {@code home} for 1 A that enters at {@code node} and leaves at {@code home}, ohm; NaN for nodes
     * that no way joins with home.
     */
    double[] column(int node, int home) {
        double[] column = resistances.transferOhm(node, home);
        double zero = column[home];
        for (int n = 0; n < column.length; n++) {
            column[n] = joined(n, home) ? column[n] - zero : Double.NaN;
        }
        return column;
    }

    EarthNetwork network() {
        return network;
    }
}
