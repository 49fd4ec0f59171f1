// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.loomwright.diagram.layout.Placed;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;

/** A section at its place on the sheet. */
final class SectionDrawing {
    private final Drafting drafting;
    private final SectionLayout layout;
    private final Section section;
    private final Point corner;
    private final Routes above;
    private final Routes below;
    private final LoadColumn column;

    SectionDrawing(Drafting drafting, SectionLayout layout, Point corner, SheetChoices choices, LoadColumn column) {
        this.drafting = drafting;
        this.layout = layout;
        this.corner = corner;
        this.column = column;
        section = layout.section();
        above = new Routes(layout.above(), corner.x(), corner.y() + layout.supplyY());
        below = new Routes(layout.below(), corner.x() + layout.returnsX(), corner.y() + layout.returnsY());
        if (!choices.empty()) {
            above.keep(choices, section.supply().nodes(), section.supply().edges());
            below.keep(choices, section.returns().nodes(), section.returns().edges());
        }
    }

    /** Room of all its nodes, those included that a person put elsewhere. */
    Bounds room() {
        Bounds room = new Bounds(corner.x(), corner.y(), corner.x() + layout.width(), corner.y() + layout.height());
        for (Routes routes : List.of(above, below)) {
            for (LineNode node : (routes == above ? section.supply() : section.returns()).nodes().values()) {
                Point at = routes.corner(node.id());
                room = room.with(new Bounds(at.x(), at.y(), at.x() + node.width(), at.y() + node.height()));
            }
        }
        return room;
    }

    /** Middle of a stub; null when it lies elsewhere. */
    Point stub(String id) {
        Stub above1 = section.supply().stubs().get(id);
        LineGraph graph = above1 != null ? section.supply() : section.returns();
        if (!graph.stubs().containsKey(id)) {
            return null;
        }
        LineNode node = graph.nodes().get(id);
        Point at = (above1 != null ? above : below).corner(id);
        return at.moved(node.width() / 2, node.height() / 2);
    }

    /** Paints it; the field of the sheet in which a stub's line goes on is asked for by the stub there. */
    void paint(SceneBuilder scene, Function<String, String> fieldOf) {
        head(scene);
        edges(scene);
        trunks(scene);
        section.supply().nodes().values().forEach(node -> place(scene, node, above));
        section.returns().nodes().values().forEach(node -> place(scene, node, below));
        dots(scene, above, section.supply());
        dots(scene, below, section.returns());
        stubs(scene, above, section.supply(), fieldOf);
        stubs(scene, below, section.returns(), fieldOf);
        section.supply().labels().forEach((edge, label) -> label(scene, above, edge, label));
        section.returns().labels().forEach((edge, label) -> label(scene, below, edge, label));
        section.loads().keySet().forEach(id -> {
            // the figures go with a load that a person put elsewhere
            Point at = above.corner(id);
            double moved = at.x() - corner.x() - layout.above().nodes().get(id).x();
            column.row(scene, drafting.content().units().get(id), corner.x() + layout.figuresX() + moved,
                    at.y() + LoadDrawing.ROW_Y);
        });
    }

    private void head(SceneBuilder scene) {
        scene.group(Group.Kind.LABEL, null, section.title());
        scene.text(corner.x(), corner.y() + 12, section.title(), 13, true, Mark.Anchor.START, Role.INK2);
        double loads = corner.x() + layout.loadsX() + 20;
        if (!section.loads().isEmpty() && loads > corner.x() + column.titleWidth(section.title()) + 20) {
            scene.text(loads, corner.y() + 12, "Loads", 13, false, Mark.Anchor.START, Role.INK2);
        }
        if (!section.loads().isEmpty()) {
            column.heads(scene, corner.x() + layout.figuresX(), corner.y() + 12);
        }
        scene.line(LineSheet.hair(), new Point(corner.x(), corner.y() + 19),
                new Point(corner.x() + layout.width(), corner.y() + 19));
    }

    private void place(SceneBuilder scene, LineNode node, Routes routes) {
        Point at = routes.corner(node.id());
        node.groups().forEach(group -> scene.add(group.moved(at.x(), at.y())));
    }

    private void stubs(SceneBuilder scene, Routes routes, LineGraph graph, Function<String, String> fieldOf) {
        graph.stubs().values().forEach(stub -> {
            Point at = routes.corner(stub.id());
            scene.add(stub.group(graph.nodes().get(stub.id()).width(), fieldOf.apply(stub.other()), drafting.measure())
                    .moved(at.x(), at.y()));
        });
    }

    private void label(SceneBuilder scene, Routes routes, String edge, WireLabel label) {
        Point at = routes.label(edge);
        if (at != null) {
            label.groups(at.x(), at.y() + label.height() / 2).forEach(scene::add);
        }
    }

    /** What is off lies below what carries current, where both share a stretch. */
    private void edges(SceneBuilder scene) {
        for (Role tone : List.of(Role.INK3, Role.INK)) {
            above.lines().forEach((edge, points) -> edge(scene, section.supply().traces().get(edge), points, tone));
            below.lines().forEach((edge, points) -> {
                if (!section.collectors().containsKey(edge)) {
                    edge(scene, section.returns().traces().get(edge), points, tone);
                }
            });
        }
    }

    private void edge(SceneBuilder scene, Trace trace, List<Point> points, Role tone) {
        if (trace.tone() == tone) {
            scene.group(Group.Kind.EDGE, trace.element(), trace.name()).line(drafting.colours().line(trace, tone), points);
        }
    }

    private void dots(SceneBuilder scene, Routes routes, LineGraph graph) {
        Map<String, Trace> traces = graph.traces();
        for (Role tone : List.of(Role.INK3, Role.INK)) {
            for (Placed.Dot dot : routes.dots()) {
                Trace trace = traces.get(dot.edge());
                if (trace.tone() == tone) {
                    scene.group(Group.Kind.EDGE, trace.element(), null)
                            .disc(Fill.solid(drafting.colours().tone(trace.element(), tone)), null,
                            dot.at().x(), dot.at().y(), trace.weight().px() > 3 ? 4.25 : 3);
                }
            }
        }
    }

    private void trunks(SceneBuilder scene) {
        section.collectors().forEach((id, collector) -> {
            double x = corner.x() + layout.collectorX(id);
            Trace trunk = section.returns().traces().get(id);
            List<Point> ends = new ArrayList<>();
            for (String load : collector.loads()) {
                LineNode node = section.supply().nodes().get(load);
                Point at = above.corner(load);
                Wire wire = section.loads().get(load).returns().wires().get(0);
                Point start = new Point(at.x() + node.width(), at.y() + LoadDrawing.ROW_Y);
                Point end = new Point(x, start.y());
                ends.add(end);
                Trace trace = Trace.of(drafting, wire, true, wire.a(), wire.b());
                scene.group(Group.Kind.EDGE, wire.cableId(), null)
                        .line(drafting.colours().line(trace, drafting.tone(drafting.content().units().get(load))), start, end);
            }
            ends.sort((a, b) -> Double.compare(a.y(), b.y()));
            List<Point> route = below.lines().get(id);
            List<Point> line = new ArrayList<>(List.of(ends.get(0), new Point(x, route.get(0).y())));
            line.addAll(route);
            scene.group(Group.Kind.EDGE, null, trunk.name()).line(trunk.stroke(trunk.tone()), line);
            for (Point end : ends.subList(1, ends.size())) {
                scene.disc(Fill.solid(trunk.tone()), null, end.x(), end.y(), 3);
            }
            Point at = below.label(id);
            if (at != null) {
                scene.group(Group.Kind.LABEL, null, null).text(at.x() + 8, at.y() + 13, collector.text(), LineText.PX, false,
                        Mark.Anchor.START, Role.INK2);
            }
        });
    }
}
