// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.symbol;

import org.loomwright.diagram.scene.Point;

/**
 * Where conductors meet a symbol.
 *
 * @param name name of the port within the symbol: a and b of what lies in a conductor, in of what takes current, plus and minus
 *             of sources
 * @param at   its place from the symbol's centre, px
 */
public record Port(String name, Point at) {
}
