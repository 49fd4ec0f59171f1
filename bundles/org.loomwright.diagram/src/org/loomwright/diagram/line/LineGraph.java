// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.layout.LayoutEdge;
import org.loomwright.diagram.layout.Placed;
import org.loomwright.diagram.scene.TextMeasure;

/** Nodes and lines of the supply side or of the returns, of the whole arrangement or of one section of its sheet. */
final class LineGraph {
    private final Map<String, LineNode> nodes = new LinkedHashMap<>();
    private final List<LayoutEdge> edges = new ArrayList<>();
    private final Map<String, Trace> traces = new LinkedHashMap<>();
    private final Map<String, WireLabel> labels = new LinkedHashMap<>();
    private final Map<String, Stub> stubs = new LinkedHashMap<>();
    private final boolean rightward;

    /** @param rightward true when lines run to the right */
    LineGraph(boolean rightward) {
        this.rightward = rightward;
    }

    Map<String, LineNode> nodes() {
        return nodes;
    }

    List<LayoutEdge> edges() {
        return edges;
    }

    /** What each line stands for, by the id of its edge. */
    Map<String, Trace> traces() {
        return traces;
    }

    Map<String, WireLabel> labels() {
        return labels;
    }

    /** Ends of lines that go on elsewhere, by the id of their node. */
    Map<String, Stub> stubs() {
        return stubs;
    }

    /** Adds or replaces a node. */
    void put(LineNode node) {
        nodes.put(node.id(), node);
    }

    /** Adds a line with its label; null for none. */
    void add(String edge, String from, String to, Trace trace, WireLabel label) {
        add(new LayoutEdge(edge, from, to, label == null ? 0 : label.width(), label == null ? 0 : label.height()), trace, label);
    }

    void add(LayoutEdge edge, Trace trace, WireLabel label) {
        edges.add(edge);
        traces.put(edge.id(), trace);
        if (label != null) {
            labels.put(edge.id(), label);
        }
    }

    /** Node of each port. */
    Map<String, String> owners() {
        Map<String, String> owners = new LinkedHashMap<>();
        nodes.values().forEach(node -> node.ports().forEach(port -> owners.put(port.id(), node.id())));
        return owners;
    }

    Placed layout(LayoutMemory memory) {
        return memory.of(nodes.values().stream().map(LineNode::forLayout).toList(), edges, rightward);
    }

    /**
     * Cuts it into sections; a line between two of them ends in a stub in each.
     *
     * @param sectionOf index of the section of each node
     * @param count     number of sections
     */
    List<LineGraph> cut(Map<String, Integer> sectionOf, int count, TextMeasure measure) {
        List<LineGraph> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            parts.add(new LineGraph(rightward));
        }
        nodes.values().forEach(node -> parts.get(sectionOf.get(node.id())).put(node));
        Map<String, String> owners = owners();
        for (LayoutEdge edge : edges) {
            int from = sectionOf.get(owners.get(edge.from()));
            int to = sectionOf.get(owners.get(edge.to()));
            Trace trace = traces.get(edge.id());
            if (from == to) {
                parts.get(from).add(edge, trace, labels.get(edge.id()));
                continue;
            }
            Stub out = new Stub("out:" + edge.id(), "in:" + edge.id(), to, trace, true, rightward);
            Stub in = new Stub("in:" + edge.id(), "out:" + edge.id(), from, trace, false, rightward);
            LineGraph source = parts.get(from);
            source.put(out.node(measure));
            source.stubs.put(out.id(), out);
            source.add(new LayoutEdge(edge.id(), edge.from(), out.port(), edge.labelWidth(), edge.labelHeight()), trace,
                    labels.get(edge.id()));
            LineGraph target = parts.get(to);
            target.put(in.node(measure));
            target.stubs.put(in.id(), in);
            WireLabel label = labels.get(edge.id());
            target.add(in.id(), in.port(), edge.to(), trace, label == null ? null : label.brief());
        }
        return parts;
    }
}
