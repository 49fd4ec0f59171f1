// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

/**
 * What every step of one assembly needs.
 *
 * @param practice limits and choices in force
 * @param parts    types of parts
 * @param problems where problems go
 */
record AssemblyScope(Practice practice, CatalogueReader parts, Problems problems) {

    /** A limit given in milliohm, as ohm. */
    double ohms(String limit) {
        return practice.value(limit) / 1000;
    }
}
