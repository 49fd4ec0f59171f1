// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

/**
 * How a person wants figures shown; files are not touched by it.
 *
 * @param awg      sections as AWG too
 * @param imperial lengths in feet and inches
 */
public record DrawingPreferences(boolean awg, boolean imperial) {
    /** Square millimetres and metres. */
    public static DrawingPreferences metric() {
        return new DrawingPreferences(false, false);
    }
}
