// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.welcome;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Welcome_begin;
    public static String Welcome_cautions;
    public static String Welcome_demo;
    public static String Welcome_demoText;
    public static String Welcome_folder;
    public static String Welcome_folderText;
    public static String Welcome_head;
    public static String Welcome_purpose;
    public static String Welcome_title;
    public static String Welcome_vehicle;
    public static String Welcome_vehicleText;

    static {
        NLS.initializeMessages("org.loomwright.workbench.welcome.messages", Messages.class);
    }

    private Messages() {
    }
}
