// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/** A point of a sheet, px at 96 dpi, x to the right and y down from the upper left corner. */
public record Point(double x, double y) {
}
