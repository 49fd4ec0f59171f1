// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.layout;

import java.util.List;

/**
 * A node to be placed.
 *
 * @param id     unique over the whole graph
 * @param width  px
 * @param height px
 * @param ports  ports at fixed places
 * @param column column wanted
 */
public record LayoutNode(String id, double width, double height, List<LayoutPort> ports, Column column) {
    /** Column of a node in the direction of flow. */
    public enum Column { FIRST, ANY, LAST }

    public LayoutNode {
        ports = List.copyOf(ports);
    }
}
