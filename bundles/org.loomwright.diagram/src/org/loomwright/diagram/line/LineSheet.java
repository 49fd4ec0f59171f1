// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.layout.Placed;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.symbol.LineWeight;

/** Puts supply, loads' figures and returns onto one sheet. */
final class LineSheet {
    private static final double LEFT = 40;
    private static final double TOP = 124;
    private static final double GAP = 70;
    private static final double FOOT = 90;
    private final DrawingRequest request;
    private final Drafting drafting;
    private final SupplyGraph supply;
    private final ReturnGraph returns;
    private final Routes above;
    private final Routes below;
    private final LoadColumn column;
    private final Map<String, Double> collectorX = new LinkedHashMap<>();
    private final double figuresX;
    private final double contentRight;
    private final double contentBottom;
    private final double returnsTop;
    private final double loadsX;

    LineSheet(DrawingRequest request, Drafting drafting, SupplyGraph supply, ReturnGraph returns, Placed above, Placed below) {
        this.request = request;
        this.drafting = drafting;
        this.supply = supply;
        this.returns = returns;
        column = new LoadColumn(drafting);
        double right = LEFT + StrictMath.max(above.width(), below.width());
        this.above = new Routes(above, LEFT, TOP);
        SheetChoices choices = SheetChoices.of(request.vehicle(), request.arrangement());
        if (!choices.empty()) {
            this.above.keep(choices, supply.nodes(), supply.edges());
        }
        double bottom = TOP + above.height();
        for (LineNode node : supply.nodes().values()) {
            Point corner = this.above.corner(node.id());
            right = StrictMath.max(right, corner.x() + node.width());
            bottom = StrictMath.max(bottom, corner.y() + node.height());
        }
        returnsTop = bottom + GAP;
        this.below = new Routes(below, right - below.width(), returnsTop);
        if (!choices.empty()) {
            this.below.keep(choices, returns.nodes(), returns.edges());
        }
        collectors(right);
        figuresX = right + 24 + 12.0 * returns.collectors().size() + 16;
        contentRight = figuresX + column.width(supply.loads().keySet());
        contentBottom = below.height() > 0 ? returnsTop + below.height() : bottom;
        loadsX = supply.loads().keySet().stream().mapToDouble(id -> this.above.corner(id).x()).min().orElse(right);
    }

    Scene scene() {
        IdleRow idle = new IdleRow(drafting, supply.idle(), contentRight - LEFT);
        double height = contentBottom + (idle.height() > 0 ? 30 + idle.height() : 0) + FOOT;
        SheetSize size = SheetSize.around(StrictMath.max(contentRight + 40, 760), height);
        String title = (request.vehicle().getLabel() == null ? request.vehicle().getName() : request.vehicle().getLabel())
                + " \u2014 line diagram";
        SceneBuilder scene = new SceneBuilder(title, size.widthPx(), size.heightPx());
        new LineFrame(request, drafting, scene, size).paint(title, LEFT, loadsX, figuresX);
        edges(scene);
        trunks(scene);
        List<LineNode> nodes = new ArrayList<>(supply.nodes().values());
        nodes.forEach(node -> place(scene, node, above));
        returns.nodes().values().forEach(node -> place(scene, node, below));
        dots(scene, above, supply.wires());
        dots(scene, below, returns.wires());
        supply.labels().forEach((edge, label) -> label(scene, above, edge, label));
        returns.labels().forEach((edge, label) -> label(scene, below, edge, label));
        supply.loads().keySet().forEach(id -> column.row(scene, drafting.content().units().get(id), figuresX,
                above.corner(id).y() + LoadDrawing.ROW_Y));
        if (!returns.nodes().isEmpty()) {
            scene.group(Group.Kind.LABEL, null, null).text(LEFT, returnsTop - 34, "Returns", 13, true, Mark.Anchor.START,
                    Role.INK2);
        }
        idle.paint(scene, LEFT, contentBottom + 40);
        return scene.build();
    }

    private void place(SceneBuilder scene, LineNode node, Routes routes) {
        Point corner = routes.corner(node.id());
        node.groups().forEach(group -> scene.add(group.moved(corner.x(), corner.y())));
    }

    private void label(SceneBuilder scene, Routes routes, String edge, WireLabel label) {
        Point corner = routes.label(edge);
        if (corner != null) {
            label.groups(corner.x(), corner.y() + label.height() / 2).forEach(scene::add);
        }
    }

    /** What is off lies below what carries current, where both share a stretch. */
    private void edges(SceneBuilder scene) {
        for (Role tone : List.of(Role.INK3, Role.INK)) {
            above.lines().forEach((edge, points) -> {
                Wire wire = supply.wires().get(edge);
                boolean lead = wire == null;
                Wire drawn = lead ? drafting.content().at(edge.substring("lead:".length())).get(0) : wire;
                if (drafting.tone(drawn) == tone) {
                    scene.group(Group.Kind.EDGE, drawn.cableId(), lead ? null : name(drawn))
                            .line(LineWeight.of(drawn.sectionMm2()).supply(tone), points);
                }
            });
            below.lines().forEach((edge, points) -> {
                Wire wire = returns.wires().get(edge);
                if (wire != null && drafting.tone(wire) == tone) {
                    scene.group(Group.Kind.EDGE, wire.cableId(), name(wire)).line(LineWeight.of(wire.sectionMm2()).back(tone),
                            points);
                }
            });
        }
    }

    private static String name(Wire wire) {
        return (wire.designation() + " " + BackText.shown(wire.a()) + " / " + BackText.shown(wire.b())).strip();
    }

    private void dots(SceneBuilder scene, Routes routes, Map<String, Wire> wires) {
        for (Role tone : List.of(Role.INK3, Role.INK)) {
            for (Placed.Dot dot : routes.dots()) {
                Wire wire = wires.get(dot.edge());
                if (tone == (wire == null ? Role.INK : drafting.tone(wire))) {
                    double px = wire == null ? 1.5 : LineWeight.of(wire.sectionMm2()).px();
                    scene.group(Group.Kind.EDGE, wire == null ? null : wire.cableId(), null).disc(Fill.solid(tone), null,
                            dot.at().x(), dot.at().y(), px > 3 ? 4.25 : 3);
                }
            }
        }
    }

    /** The lowest line gets the outermost place, so that collectors do not cross each other. */
    private void collectors(double right) {
        List<String> order = new ArrayList<>(returns.collectors().keySet());
        order.sort((a, b) -> Double.compare(below.corner(a).y(), below.corner(b).y()));
        for (int i = 0; i < order.size(); i++) {
            collectorX.put(order.get(i), right + 24 + 12.0 * i);
        }
    }

    private void trunks(SceneBuilder scene) {
        returns.collectors().forEach((id, collector) -> {
            double x = collectorX.get(id);
            List<Point> ends = new ArrayList<>();
            Role trunk = Role.INK3;
            for (String load : collector.loads()) {
                LineNode node = supply.nodes().get(load);
                Point corner = above.corner(load);
                Role tone = drafting.tone(drafting.content().units().get(load));
                Wire wire = supply.loads().get(load).returns().wires().get(0);
                Point start = new Point(corner.x() + node.width(), corner.y() + LoadDrawing.ROW_Y);
                Point end = new Point(x, start.y());
                ends.add(end);
                trunk = tone == Role.INK ? tone : trunk;
                scene.group(Group.Kind.EDGE, wire.cableId(), null)
                        .line(LineWeight.of(wire.sectionMm2()).back(tone), start, end);
            }
            ends.sort((a, b) -> Double.compare(a.y(), b.y()));
            List<Point> route = below.lines().get(id);
            double y = route.get(0).y();
            List<Point> line = new ArrayList<>(List.of(ends.get(0), new Point(x, y)));
            line.addAll(route);
            scene.group(Group.Kind.EDGE, null, "returns to " + collector.hub().shown())
                    .line(LineWeight.of(collector.sectionMm2()).back(trunk), line);
            for (Point end : ends.subList(1, ends.size())) {
                scene.disc(Fill.solid(trunk), null, end.x(), end.y(), 3);
            }
            Point at = below.label(id);
            if (at != null) {
                scene.group(Group.Kind.LABEL, null, null).text(at.x() + 8, at.y() + 13, collector.text(), LineText.PX, false,
                        Mark.Anchor.START, Role.INK2);
            }
        });
    }

    /** Bounds of the drawing without frame and title. */
    Bounds content() {
        return new Bounds(LEFT, TOP, contentRight, contentBottom);
    }

    static Stroke hair() {
        return Stroke.solid(Role.HAIR, 1);
    }
}
