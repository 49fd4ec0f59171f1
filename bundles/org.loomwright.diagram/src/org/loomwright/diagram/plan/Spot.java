// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

/** A point of the view, mm: along the vehicle from its rearmost point, and upwards on the sheet. */
public record Spot(double alongMm, double upMm) {
}
