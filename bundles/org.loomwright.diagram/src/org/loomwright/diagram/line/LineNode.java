// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.List;
import java.util.Objects;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;

/**
 * A node as it is drawn around its upper left corner.
 *
 * @param id     id within the layout
 * @param element id of the element, null for a mere joint of lines
 * @param width  px
 * @param height px
 * @param ports  where wires meet it
 * @param column column wanted
 * @param groups what is painted
 */
record LineNode(String id, String element, double width, double height, List<LayoutPort> ports, LayoutNode.Column column,
        List<Group> groups) {
    LineNode {
        ports = List.copyOf(ports);
        groups = List.copyOf(groups);
    }

    /** The room its shape takes, from the upper left corner of the node. */
    Bounds shape() {
        return groups.stream().filter(group -> group.kind() == Group.Kind.NODE).map(Group::shape).filter(Objects::nonNull)
                .reduce(Bounds::with).orElse(new Bounds(0, 0, width, height));
    }

    LayoutNode forLayout() {
        return new LayoutNode(id, width, height, ports, column);
    }
}
