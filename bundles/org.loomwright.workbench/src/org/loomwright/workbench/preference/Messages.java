// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.preference;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Units_awg;
    public static String Units_description;
    public static String Units_imperial;
    public static String Units_metric;
    public static String Units_mm;
    public static String Units_section;
    public static String Units_system;

    static {
        NLS.initializeMessages("org.loomwright.workbench.preference.messages", Messages.class);
    }

    private Messages() {
    }
}
