// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The nodes of a plan's networks: terminals on one bar are one node, so are the two minus terminals of a converter that is not
 * isolated; each structure body is one. Nodes are numbered by the terminal that comes first, bodies last, and bear their ids.
 */
final class NetworkNodes {
    final int[] terminalNode;
    final int[] bodyNode;
    final List<String> ids = new ArrayList<>();

    NetworkNodes(Plan plan) {
        int terminals = plan.terminals().size();
        DisjointSets sets = new DisjointSets(terminals);
        Map<String, Integer> firstOf = new LinkedHashMap<>();
        for (int t = 0; t < terminals; t++) {
            Plan.Terminal terminal = plan.terminals().get(t);
            if (terminal.bar() != null && terminal.device() >= 0) {
                Integer first = firstOf.putIfAbsent(terminal.device() + " " + terminal.bar(), t);
                sets.join(first == null ? t : first, t);
            }
        }
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Converter converter && !converter.isolated()) {
                sets.join(converter.inB(), converter.outB());
            }
        }
        terminalNode = new int[terminals];
        int[] nodeOfSet = new int[terminals];
        Arrays.fill(nodeOfSet, -1);
        for (int t = 0; t < terminals; t++) {
            int set = sets.find(t);
            if (nodeOfSet[set] < 0) {
                nodeOfSet[set] = ids.size();
                ids.add(plan.terminals().get(t).id());
            }
            terminalNode[t] = nodeOfSet[set];
        }
        bodyNode = new int[plan.bodies().size()];
        for (int b = 0; b < bodyNode.length; b++) {
            bodyNode[b] = ids.size();
            ids.add(plan.bodies().get(b).id());
        }
    }

    int of(int terminal) {
        return terminal < 0 ? -1 : terminalNode[terminal];
    }
}
