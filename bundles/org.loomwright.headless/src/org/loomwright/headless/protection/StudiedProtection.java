// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.protection;

import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.protection.ProtectionTable;
import org.loomwright.headless.check.CheckedVehicle;

/**
 * The protection of one vehicle in one arrangement, studied.
 *
 * @param vehicle vehicle, with the findings of the rules on protection
 * @param context its plan with the cases solved
 */
record StudiedProtection(CheckedVehicle vehicle, CheckContext context) {

    /** What the study found. */
    ProtectionTable table() {
        return context.protection();
    }
}
