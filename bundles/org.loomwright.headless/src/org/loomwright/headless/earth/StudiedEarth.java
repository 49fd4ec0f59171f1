// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.earth;

import org.loomwright.engine.earth.EarthTable;
import org.loomwright.headless.check.CheckedVehicle;

/**
 * The earth return of one vehicle in one arrangement, studied.
 *
 * @param vehicle vehicle, with the study's findings
 * @param table   what the study says
 */
record StudiedEarth(CheckedVehicle vehicle, EarthTable table) {
}
