// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.layout;

/**
 * An edge to be routed, in the direction of flow.
 *
 * @param id          unique over the whole graph
 * @param from        id of the port it starts at
 * @param to          id of the port it ends at
 * @param labelWidth  room for its label around the line, px; 0 for none
 * @param labelHeight px
 */
public record LayoutEdge(String id, String from, String to, double labelWidth, double labelHeight) {
}
