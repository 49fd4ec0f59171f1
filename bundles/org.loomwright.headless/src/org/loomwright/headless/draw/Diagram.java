// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.draw;

/** Diagrams that can be drawn. */
enum Diagram {
    /** The vehicle to scale. */
    PLAN,
    /** The single-line circuit. */
    LINE,
    /** Structure bodies, straps and returns. */
    EARTH
}
