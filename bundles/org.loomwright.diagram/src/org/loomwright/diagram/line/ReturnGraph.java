// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.diagram.layout.LayoutEdge;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.symbol.LineWeight;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.vehicle.EarthPoint;

/** Nodes and edges of the returns, from the collectors of the loads at the right to batteries and earth points at the left. */
final class ReturnGraph {
    private final Drafting drafting;
    private final ReturnHubs hubs;
    private final Map<String, HubDrawing> drawings = new LinkedHashMap<>();
    private final Map<String, LineNode> nodes = new LinkedHashMap<>();
    private final List<LayoutEdge> edges = new ArrayList<>();
    private final Map<String, Wire> wires = new LinkedHashMap<>();
    private final Map<String, WireLabel> labels = new LinkedHashMap<>();
    private final Map<String, Collector> collectors = new LinkedHashMap<>();

    /**
     * What gathers the returns of several loads in one line.
     *
     * @param id        id of its node and edge
     * @param hub       where it leads
     * @param loads     devices
     * @param sectionMm2 largest section of their returns, mm2, or null
     */
    record Collector(String id, ReturnHub hub, List<String> loads, BigDecimal sectionMm2) {
        String text() {
            return loads.size() == 1 ? "from " + BackText.shown(loads.get(0)) : "from " + loads.size() + " loads";
        }
    }

    private ReturnGraph(Drafting drafting) {
        this.drafting = drafting;
        hubs = ReturnHubs.of(drafting);
    }

    static ReturnGraph of(Drafting drafting, Map<String, LoadDrawing> loads) {
        ReturnGraph graph = new ReturnGraph(drafting);
        graph.gather(loads);
        graph.between();
        graph.connect();
        graph.others(loads);
        graph.finish();
        return graph;
    }

    Map<String, LineNode> nodes() {
        return nodes;
    }

    List<LayoutEdge> edges() {
        return edges;
    }

    Map<String, Wire> wires() {
        return wires;
    }

    Map<String, WireLabel> labels() {
        return labels;
    }

    /** Collectors by the id of their node. */
    Map<String, Collector> collectors() {
        return collectors;
    }

    private void gather(Map<String, LoadDrawing> loads) {
        Map<ReturnHub, List<String>> byHub = new LinkedHashMap<>();
        Map<ReturnHub, BigDecimal> largest = new LinkedHashMap<>();
        loads.forEach((id, load) -> {
            ReturnHub hub = load.returns().target() == null ? null : hubs.at(load.returns().target());
            if (hub != null) {
                byHub.computeIfAbsent(hub, none -> new ArrayList<>()).add(id);
                load.returns().wires().forEach(wire -> {
                    if (wire.sectionMm2() != null) {
                        largest.merge(hub, wire.sectionMm2(), BigDecimal::max);
                    }
                });
            }
        });
        byHub.forEach((hub, ids) -> {
            String id = "collector:" + hub.id();
            collectors.put(id, new Collector(id, hub, ids, largest.get(hub)));
            nodes.put(id, new LineNode(id, null, 2, 24, List.of(new LayoutPort(id + "<", 0, 12, LayoutPort.Side.LEFT)),
                    LayoutNode.Column.FIRST, List.of()));
            HubDrawing to = drawing(hub);
            String port = to.right(id, LineWeight.of(largest.get(hub)).px());
            edges.add(new LayoutEdge(id, id + "<", port,
                    LineText.width(drafting.measure(), collectors.get(id).text(), false) + 24, 40));
        });
    }

    /** The drawing of a hub: of its own, or that of the element between it and another. */
    private HubDrawing drawing(ReturnHub hub) {
        for (ReturnHubs.Between between : hubs.elements()) {
            if (between.a() == hub || between.b() == hub) {
                return drawings.computeIfAbsent("between:" + between.unit().id() + ":" + between.link().name(),
                        id -> new HubDrawing(drafting, id, between, hubs.steps(between.a()) <= hubs.steps(between.b())));
            }
        }
        return drawings.computeIfAbsent("hub:" + hub.id(), id -> new HubDrawing(drafting, id, hub));
    }

    private void between() {
        hubs.elements().forEach(element -> drawing(element.a()));
    }

    private void connect() {
        for (Wire wire : drafting.content().wires()) {
            if (!drafting.polarity().back(wire)) {
                continue;
            }
            ReturnHub a = hubs.at(wire.a());
            ReturnHub b = hubs.at(wire.b());
            double px = LineWeight.of(wire.sectionMm2()).px();
            EarthPoint earth = drafting.content().earths().get(a == null ? wire.a() : wire.b());
            if (a != null && b != null && a != b) {
                boolean back = hubs.steps(a) >= hubs.steps(b);
                edge(wire, drawing(back ? a : b).left(wire.key(), px), drawing(back ? b : a).right(wire.key(), px));
            } else if (earth != null && (a != null || b != null) && drawn(a == null ? b : a)) {
                String id = "earth:" + earth.getName();
                nodes.computeIfAbsent(id, none -> HubDrawing.earth(drafting, id, earth));
                edge(wire, drawing(a == null ? b : a).left(wire.key(), px), id + ">");
            }
        }
    }

    /** A battery whose minus goes to an earth point and nowhere else is drawn with its source. */
    private boolean drawn(ReturnHub hub) {
        if (hub.unit().kind() != DeviceKind.BATTERY) {
            return true;
        }
        boolean used = drawings.containsKey("hub:" + hub.id());
        for (String terminal : hub.terminals()) {
            String key = LineContent.key(hub.unit(), terminal);
            used |= drafting.content().at(key).stream().anyMatch(wire -> hubs.at(wire.other(key)) != null);
        }
        return used;
    }

    private void edge(Wire wire, String from, String to) {
        WireLabel label = new WireLabel(drafting, wire, true);
        edges.add(new LayoutEdge(wire.key(), from, to, label.width(), label.height()));
        wires.put(wire.key(), wire);
        labels.put(wire.key(), label);
    }

    /** Returns of what is no load at the end of a line, told as a text at the bar. */
    private void others(Map<String, LoadDrawing> loads) {
        Map<ReturnHub, Map<String, Boolean>> listed = new LinkedHashMap<>();
        for (Wire wire : drafting.content().wires()) {
            ReturnHub a = hubs.at(wire.a());
            ReturnHub b = hubs.at(wire.b());
            if (drafting.polarity().back(wire) && (a == null) != (b == null)) {
                String leaf = a == null ? wire.a() : wire.b();
                Unit unit = drafting.content().unitOf(leaf);
                if (unit != null && !loads.containsKey(unit.id())) {
                    listed.computeIfAbsent(a == null ? b : a, none -> new TreeMap<>()).put(BackText.shown(leaf), true);
                }
            }
        }
        listed.forEach((hub, leaves) -> drawing(hub).from(new ArrayList<>(leaves.keySet())));
    }

    private void finish() {
        drawings.values().forEach(drawing -> nodes.put(drawing.id(), drawing.node()));
    }
}
