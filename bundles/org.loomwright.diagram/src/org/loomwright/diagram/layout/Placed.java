// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.layout;

import java.util.List;
import java.util.Map;
import org.loomwright.diagram.scene.Point;

/**
 * A finished layout.
 *
 * @param nodes   upper left corner of each node
 * @param routes  points of each edge from its start to its end
 * @param labels  upper left corner of each edge's label; absent without a label
 * @param dots    where edges of one port part
 * @param width   px
 * @param height  px
 */
public record Placed(Map<String, Point> nodes, Map<String, List<Point>> routes, Map<String, Point> labels, List<Dot> dots,
        double width, double height) {
    /** A point where an edge parts from others of its port. */
    public record Dot(String edge, Point at) {
    }
}
