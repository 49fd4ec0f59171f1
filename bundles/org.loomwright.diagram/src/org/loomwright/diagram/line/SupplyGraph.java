// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.diagram.layout.LayoutEdge;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.symbol.LineWeight;
import org.loomwright.model.parts.DeviceKind;

/** Nodes and edges of the supply side, ready to be placed. */
final class SupplyGraph {
    private static final double TAP_PX = 8;
    private final Drafting drafting;
    private final Map<String, LineNode> nodes = new LinkedHashMap<>();
    private final Map<String, LoadDrawing> loads = new LinkedHashMap<>();
    private final List<LayoutEdge> edges = new ArrayList<>();
    private final Map<String, Wire> wires = new LinkedHashMap<>();
    private final Map<String, WireLabel> labels = new LinkedHashMap<>();
    private final List<Unit> idle = new ArrayList<>();

    private SupplyGraph(Drafting drafting) {
        this.drafting = drafting;
    }

    static SupplyGraph of(Drafting drafting) {
        SupplyGraph graph = new SupplyGraph(drafting);
        graph.addUnits();
        graph.addWires();
        return graph;
    }

    Map<String, LineNode> nodes() {
        return nodes;
    }

    /** Devices that take current, by the id of their node. */
    Map<String, LoadDrawing> loads() {
        return loads;
    }

    List<LayoutEdge> edges() {
        return edges;
    }

    /** Wires by the id of their edge; leads from a joint to its device have none. */
    Map<String, Wire> wires() {
        return wires;
    }

    Map<String, WireLabel> labels() {
        return labels;
    }

    /** Devices without any supply wire. */
    List<Unit> idle() {
        return idle;
    }

    private void addUnits() {
        Map<Unit, LoadDrawing> takers = new LinkedHashMap<>();
        double wide = 0;
        for (Unit unit : drafting.content().units().values()) {
            if (drafting.inlets(unit).isEmpty() && drafting.outlets(unit).isEmpty()) {
                idle.add(unit);
            } else if (takes(unit)) {
                LoadDrawing drawing = new LoadDrawing(drafting, unit);
                takers.put(unit, drawing);
                wide = StrictMath.max(wide, drawing.need());
            } else {
                LineNode node = node(unit);
                nodes.put(node.id(), node);
            }
        }
        for (Map.Entry<Unit, LoadDrawing> taker : takers.entrySet()) {
            LineNode node = taker.getValue().node(StrictMath.ceil(wide / 10) * 10);
            nodes.put(node.id(), node);
            loads.put(node.id(), taker.getValue());
        }
    }

    /** What hangs at the end: nothing leaves it and no conductor passes through it. */
    private boolean takes(Unit unit) {
        if (unit.distributes() || unit.source() || !drafting.outlets(unit).isEmpty()) {
            return false;
        }
        return switch (unit.kind()) {
            case RELAY, SWITCH, ISOLATOR, CUT_OUT, SPLIT_CHARGE, CONNECTOR, CONVERTER, BOX -> false;
            case SHUNT -> unit.part().getDemands().isEmpty();
            default -> true;
        };
    }

    private LineNode node(Unit unit) {
        if (unit.source() && !drafting.outlets(unit).isEmpty() || unit.kind() == DeviceKind.BATTERY) {
            return SourceDrawing.node(drafting, unit);
        }
        if (BarDrawing.joint(unit)) {
            return JointDrawing.node(drafting, unit);
        }
        if (unit.distributes()) {
            return new BarDrawing(drafting, unit).node();
        }
        return unit.source() ? SourceDrawing.node(drafting, unit) : new SeriesDrawing(drafting, unit).node();
    }

    private void addWires() {
        Set<String> ports = new HashSet<>();
        nodes.values().forEach(node -> node.ports().forEach(port -> ports.add(port.id())));
        List<LineNode> taps = new ArrayList<>();
        for (LineNode node : List.copyOf(nodes.values())) {
            for (LayoutPort port : node.ports()) {
                if (port.id().endsWith("|<")) {
                    String key = port.id().substring(0, port.id().length() - 2);
                    taps.add(tap(key));
                    edges.add(new LayoutEdge("lead:" + key, Drafting.right(key), port.id(), 0, 0));
                    ports.add(Drafting.right(key));
                    ports.add(Drafting.left(key));
                }
            }
        }
        taps.forEach(tap -> nodes.put(tap.id(), tap));
        for (Wire wire : drafting.content().wires()) {
            String from = Drafting.right(drafting.flow().from(wire));
            String to = Drafting.left(drafting.flow().to(wire));
            if (!drafting.polarity().back(wire) && ports.contains(from) && ports.contains(to)) {
                boolean last = loads.containsKey(unitId(drafting.flow().to(wire)));
                WireLabel label = new WireLabel(drafting, wire, last);
                edges.add(new LayoutEdge(wire.key(), from, to, label.width(), label.height()));
                wires.put(wire.key(), wire);
                labels.put(wire.key(), label);
            }
        }
    }

    private String unitId(String key) {
        Unit unit = drafting.content().unitOf(key);
        return unit == null ? null : unit.id();
    }

    private LineNode tap(String key) {
        Wire wire = drafting.flow().into(key).get(0);
        Group line = new Group(wire.cableId(), null, Group.Kind.EDGE,
                List.of(new Mark.Line(List.of(new Point(0, TAP_PX / 2), new Point(TAP_PX, TAP_PX / 2)),
                        LineWeight.of(wire.sectionMm2()).supply(drafting.tone(wire)))));
        return new LineNode("tap:" + key, null, TAP_PX, TAP_PX,
                List.of(new LayoutPort(Drafting.left(key), 0, TAP_PX / 2, LayoutPort.Side.LEFT),
                        new LayoutPort(Drafting.right(key), TAP_PX, TAP_PX / 2, LayoutPort.Side.RIGHT)),
                LayoutNode.Column.ANY, List.of(line));
    }
}
