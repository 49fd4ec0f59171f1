// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.model.parts.DeviceKind;

/** Nodes and edges of the supply side, ready to be placed. */
final class SupplyGraph {
    /** Begin of the id of an edge from a joint to its device. */
    static final String LEAD = "lead:";
    private static final double TAP_PX = 8;
    private final Drafting drafting;
    private final LineGraph graph = new LineGraph(true);
    private final Map<String, LoadDrawing> loads = new LinkedHashMap<>();
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

    LineGraph graph() {
        return graph;
    }

    /** Devices that take current, by the id of their node. */
    Map<String, LoadDrawing> loads() {
        return loads;
    }

    /** Devices without any supply wire. */
    List<Unit> idle() {
        return idle;
    }

    private void addUnits() {
        Map<Unit, LoadDrawing> takers = new LinkedHashMap<>();
        for (Unit unit : drafting.content().units().values()) {
            if (drafting.inlets(unit).isEmpty() && drafting.outlets(unit).isEmpty()) {
                idle.add(unit);
            } else if (takes(unit)) {
                takers.put(unit, new LoadDrawing(drafting, unit));
            } else {
                graph.put(node(unit));
            }
        }
        for (Map.Entry<Unit, LoadDrawing> taker : takers.entrySet()) {
            LineNode node = taker.getValue().node(LoadDrawing.width(List.of(taker.getValue())));
            graph.put(node);
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
        graph.nodes().values().forEach(node -> node.ports().forEach(port -> ports.add(port.id())));
        List<LineNode> taps = new ArrayList<>();
        for (LineNode node : List.copyOf(graph.nodes().values())) {
            for (LayoutPort port : node.ports()) {
                if (port.id().endsWith("|<")) {
                    String key = port.id().substring(0, port.id().length() - 2);
                    taps.add(tap(key));
                    Wire wire = drafting.content().at(key).get(0);
                    graph.add(LEAD + key, Drafting.right(key), port.id(), Trace.of(drafting, wire, false, key, key).unnamed(),
                            null);
                    ports.add(Drafting.right(key));
                    ports.add(Drafting.left(key));
                }
            }
        }
        taps.forEach(graph::put);
        for (Wire wire : drafting.content().wires()) {
            String from = Drafting.right(drafting.flow().from(wire));
            String to = Drafting.left(drafting.flow().to(wire));
            if (!drafting.polarity().back(wire) && ports.contains(from) && ports.contains(to)) {
                String end = drafting.flow().to(wire);
                boolean last = loads.containsKey(unitId(end)) && !drafting.passesOn(end);
                WireLabel label = new WireLabel(drafting, wire, last);
                graph.add(wire.key(), from, to,
                        Trace.of(drafting, wire, false, drafting.flow().from(wire), drafting.flow().to(wire)), label);
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
                        drafting.colours().line(Trace.of(drafting, wire, false, key, key), drafting.tone(wire)))));
        return new LineNode("tap:" + key, null, TAP_PX, TAP_PX,
                List.of(new LayoutPort(Drafting.left(key), 0, TAP_PX / 2, LayoutPort.Side.LEFT),
                        new LayoutPort(Drafting.right(key), TAP_PX, TAP_PX / 2, LayoutPort.Side.RIGHT)),
                LayoutNode.Column.ANY, List.of(line));
    }
}
