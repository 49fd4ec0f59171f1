// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.layout;

/**
 * Where edges meet a node.
 *
 * @param id   unique over the whole graph
 * @param x    from the node's left side, px
 * @param y    from the node's upper side, px
 * @param side side of the node
 */
public record LayoutPort(String id, double x, double y, Side side) {
    /** Side of a node. */
    public enum Side { LEFT, RIGHT }
}
