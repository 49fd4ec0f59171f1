// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

/** Between which bounds a fault current lies. */
public enum Extreme {
    /** Full, warm, new batteries and all sources, nominal section, cold copper, smallest joints. */
    LARGEST,
    /** Half-charged, cold, aged batteries without charging sources, largest resistance, hot copper, largest joints. */
    SMALLEST;

    /** Word for tables and messages. */
    public String word() {
        return this == LARGEST ? "largest" : "smallest";
    }
}
