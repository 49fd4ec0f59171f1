// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.preference;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    static String Units_awg;
    static String Units_description;
    static String Units_imperial;
    static String Units_metric;
    static String Units_mm;
    static String Units_section;
    static String Units_system;

    static {
        NLS.initializeMessages("org.loomwright.workbench.preference.messages", Messages.class);
    }

    private Messages() {
    }
}
