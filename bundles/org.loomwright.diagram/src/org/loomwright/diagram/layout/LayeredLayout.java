// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.layout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.options.GreedySwitchType;
import org.eclipse.elk.alg.layered.options.LayerConstraint;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.math.KVector;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeLabelPlacement;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.options.SizeConstraint;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkLabel;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import org.loomwright.diagram.scene.Point;

/**
 * Places nodes in columns along the flow and routes edges at right angles, by the layered algorithm of ELK. The same graph gives
 * the same layout. The layout library is loaded when the first layout is asked for.
 */
public final class LayeredLayout {
    /** Nodes up to which the balanced placement is made; for more it would take seconds. */
    private static final int BALANCED_UP_TO = 150;
    private final ElkNode root = ElkGraphUtil.createGraph();
    private final Map<String, ElkNode> nodes = new LinkedHashMap<>();
    private final Map<String, ElkPort> ports = new LinkedHashMap<>();
    private final Map<String, ElkEdge> edges = new LinkedHashMap<>();

    private LayeredLayout(boolean rightwards) {
        // there is no extension registry on the plain class path, so the algorithm is made known by hand
        LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new CoreOptions(), new LayeredMetaDataProvider());
        root.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        root.setProperty(CoreOptions.DIRECTION, rightwards ? Direction.RIGHT : Direction.LEFT);
        root.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        root.setProperty(CoreOptions.PADDING, new ElkPadding(0));
        root.setProperty(CoreOptions.RANDOM_SEED, 1);
        root.setProperty(CoreOptions.SEPARATE_CONNECTED_COMPONENTS, false);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE, 6.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE, 6.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 8.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_LABEL, 0.0);
        root.setProperty(LayeredOptions.SPACING_LABEL_LABEL, 0.0);
        root.setProperty(LayeredOptions.SPACING_LABEL_NODE, 0.0);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, 12.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 10.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 10.0);
        root.setProperty(LayeredOptions.CROSSING_MINIMIZATION_GREEDY_SWITCH_TYPE, GreedySwitchType.TWO_SIDED);
        root.setProperty(LayeredOptions.CROSSING_MINIMIZATION_GREEDY_SWITCH_ACTIVATION_THRESHOLD, 0);
        root.setProperty(LayeredOptions.THOROUGHNESS, 12);
    }

    /**
     * Lays a graph out.
     *
     * @param rightwards flow to the right; else to the left
     */
    public static Placed of(List<LayoutNode> nodes, List<LayoutEdge> edges, boolean rightwards) {
        if (nodes.isEmpty()) {
            return new Placed(Map.of(), Map.of(), Map.of(), List.of(), 0, 0);
        }
        LayeredLayout layout = new LayeredLayout(rightwards);
        layout.root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, nodes.size() <= BALANCED_UP_TO
                ? NodePlacementStrategy.NETWORK_SIMPLEX : NodePlacementStrategy.BRANDES_KOEPF);
        nodes.forEach(layout::add);
        edges.forEach(layout::add);
        new RecursiveGraphLayoutEngine().layout(layout.root, new BasicProgressMonitor());
        return layout.placed();
    }

    private void add(LayoutNode node) {
        ElkNode made = ElkGraphUtil.createNode(root);
        made.setDimensions(node.width(), node.height());
        made.setProperty(CoreOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
        made.setProperty(CoreOptions.NODE_SIZE_CONSTRAINTS, EnumSet.noneOf(SizeConstraint.class));
        switch (node.column()) {
            case FIRST -> made.setProperty(LayeredOptions.LAYERING_LAYER_CONSTRAINT, LayerConstraint.FIRST);
            case LAST -> made.setProperty(LayeredOptions.LAYERING_LAYER_CONSTRAINT, LayerConstraint.LAST);
            case ANY -> { }
        }
        for (LayoutPort port : node.ports()) {
            ElkPort at = ElkGraphUtil.createPort(made);
            at.setDimensions(0, 0);
            at.setLocation(port.x(), port.y());
            at.setProperty(CoreOptions.PORT_SIDE, port.side() == LayoutPort.Side.LEFT ? PortSide.WEST : PortSide.EAST);
            ports.put(port.id(), at);
        }
        nodes.put(node.id(), made);
    }

    private void add(LayoutEdge edge) {
        ElkEdge made = ElkGraphUtil.createSimpleEdge(ports.get(edge.from()), ports.get(edge.to()));
        if (edge.labelWidth() > 0) {
            ElkLabel label = ElkGraphUtil.createLabel("x", made);
            label.setDimensions(edge.labelWidth(), edge.labelHeight());
            label.setProperty(CoreOptions.EDGE_LABELS_PLACEMENT, EdgeLabelPlacement.CENTER);
            label.setProperty(CoreOptions.EDGE_LABELS_INLINE, true);
        }
        edges.put(edge.id(), made);
    }

    private Placed placed() {
        Map<String, Point> corners = new LinkedHashMap<>();
        nodes.forEach((id, node) -> corners.put(id, new Point(node.getX(), node.getY())));
        Map<String, List<Point>> routes = new LinkedHashMap<>();
        Map<String, Point> labels = new LinkedHashMap<>();
        List<Placed.Dot> dots = new ArrayList<>();
        edges.forEach((id, edge) -> {
            routes.put(id, route(edge));
            for (ElkLabel label : edge.getLabels()) {
                labels.put(id, new Point(label.getX(), label.getY()));
            }
            for (KVector at : edge.getProperty(CoreOptions.JUNCTION_POINTS)) {
                dots.add(new Placed.Dot(id, new Point(at.x, at.y)));
            }
        });
        return new Placed(corners, routes, labels, dots, root.getWidth(), root.getHeight());
    }

    private static List<Point> route(ElkEdge edge) {
        List<Point> points = new ArrayList<>();
        for (ElkEdgeSection section : edge.getSections()) {
            points.add(new Point(section.getStartX(), section.getStartY()));
            for (ElkBendPoint bend : section.getBendPoints()) {
                points.add(new Point(bend.getX(), bend.getY()));
            }
            points.add(new Point(section.getEndX(), section.getEndY()));
        }
        return points;
    }
}
