// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.layout.LayeredLayout;
import org.loomwright.diagram.layout.LayoutEdge;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.Placed;

/** Layouts made for one sheet: partitions that are tried share most of their sections. */
final class LayoutMemory {
    private final Map<Graph, Placed> known = new HashMap<>();

    private record Graph(List<LayoutNode> nodes, List<LayoutEdge> edges, boolean rightward) {
    }

    Placed of(List<LayoutNode> nodes, List<LayoutEdge> edges, boolean rightward) {
        return known.computeIfAbsent(new Graph(List.copyOf(nodes), List.copyOf(edges), rightward),
                graph -> LayeredLayout.of(graph.nodes(), graph.edges(), graph.rightward()));
    }
}
