// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

/** Names of return terminals as documents write them. */
final class BackText {
    private BackText() {
    }

    /** {@code central/X22.N8} as {@code -X22:N8}. */
    static String shown(String key) {
        String own = key.substring(key.lastIndexOf('/') + 1);
        int dot = own.indexOf('.');
        return dot < 0 ? "-" + own : "-" + own.substring(0, dot) + ":" + own.substring(dot + 1);
    }
}
