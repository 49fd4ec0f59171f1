// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.loomwright.diagram.layout.LayoutEdge;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.symbol.LineWeight;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.vehicle.EarthPoint;

/** Nodes and edges of the returns, from the collectors of the loads at the right to batteries and earth points at the left. */
final class ReturnGraph {
    private final Drafting drafting;
    private final ReturnHubs hubs;
    private final Map<String, HubDrawing> drawings = new LinkedHashMap<>();
    private final LineGraph graph = new LineGraph(false);
    private final Map<String, Collector> collectors = new LinkedHashMap<>();
    private final ReturnSections sections;

    /**
     * What gathers the returns of several loads in one line.
     *
     * @param id        id of its node and edge
     * @param hub       where it leads
     * @param section   index of the section in which the loads lie
     * @param loads     devices
     * @param sectionMm2 largest section of their returns, mm2, or null
     */
    record Collector(String id, ReturnHub hub, int section, List<String> loads, BigDecimal sectionMm2) {
        String text() {
            return "from " + source();
        }

        /** Together with another that leads to the same. */
        Collector with(Collector other) {
            List<String> all = new ArrayList<>(loads);
            all.addAll(other.loads);
            return new Collector(id, hub, section, all, sectionMm2 == null ? other.sectionMm2
                    : other.sectionMm2 == null ? sectionMm2 : sectionMm2.max(other.sectionMm2));
        }

        private String source() {
            return loads.size() == 1 ? BackText.shown(loads.get(0)) : loads.size() + " loads";
        }
    }

    private ReturnGraph(Drafting drafting, Map<String, Integer> sectionOf) {
        this.drafting = drafting;
        hubs = ReturnHubs.of(drafting);
        sections = new ReturnSections(sectionOf);
    }

    /** @param sectionOf index of the section of each node of the supply */
    static ReturnGraph of(Drafting drafting, Map<String, LoadDrawing> loads, Map<String, Integer> sectionOf) {
        ReturnGraph graph = new ReturnGraph(drafting, sectionOf);
        graph.gather(loads);
        graph.between();
        graph.connect();
        graph.others(loads);
        graph.finish();
        return graph;
    }

    LineGraph graph() {
        return graph;
    }

    /** Index of the section of each node. */
    Map<String, Integer> sectionOf() {
        return sections.of(graph);
    }

    /** Collectors by the id of their node. */
    Map<String, Collector> collectors() {
        return collectors;
    }

    private void gather(Map<String, LoadDrawing> loads) {
        Map<String, Collector> found = new LinkedHashMap<>();
        loads.forEach((load, drawing) -> {
            ReturnHub hub = drawing.returns().target() == null ? null : hubs.at(drawing.returns().target());
            if (hub != null) {
                int section = sections.ofSupply(load);
                String id = "collector:" + section + ":" + hub.id();
                Collector more = new Collector(id, hub, section, List.of(load), drawing.returns().wires().stream()
                        .map(Wire::sectionMm2).filter(Objects::nonNull).max(BigDecimal::compareTo).orElse(null));
                found.merge(id, more, Collector::with);
            }
        });
        found.forEach((id, collector) -> {
            collectors.put(id, collector);
            graph.put(new LineNode(id, null, 2, 24, List.of(new LayoutPort(id + "<", 0, 12, LayoutPort.Side.LEFT)),
                    LayoutNode.Column.FIRST, List.of()));
            sections.put(id, collector.section());
            HubDrawing to = drawing(collector.hub());
            sections.vote(to.id(), collector.section());
            LineWeight weight = LineWeight.of(collector.sectionMm2());
            Role tone = collector.loads().stream().map(load -> drafting.tone(drafting.content().units().get(load)))
                    .anyMatch(each -> each == Role.INK) ? Role.INK : Role.INK3;
            graph.add(new LayoutEdge(id, id + "<", to.right(id, weight.px()),
                    LineText.width(drafting.measure(), collector.text(), false) + 24, 40),
                    new Trace(null, "returns to " + collector.hub().shown(), weight, true, tone, collector.source(),
                            collector.hub().shown()), null);
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
                HubDrawing hub = drawing(back ? a : b);
                edge(wire, hub.left(wire.key(), px), drawing(back ? b : a).right(wire.key(), px), back ? wire.a() : wire.b());
            } else if (earth != null && (a != null || b != null) && drawn(a == null ? b : a)) {
                HubDrawing hub = drawing(a == null ? b : a);
                String id = "earth:" + hub.id() + ":" + earth.getName();
                graph.nodes().computeIfAbsent(id, none -> HubDrawing.earth(drafting, id, earth));
                sections.follow(id, hub.id());
                edge(wire, hub.left(wire.key(), px), id + ">", a == null ? wire.b() : wire.a());
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

    private void edge(Wire wire, String from, String to, String start) {
        graph.add(wire.key(), from, to, Trace.of(drafting, wire, true, start, wire.other(start)),
                new WireLabel(drafting, wire, true));
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
        drawings.values().forEach(drawing -> {
            graph.put(drawing.node());
            sections.at(drawing.id(), drawing.unit().id());
        });
    }
}
