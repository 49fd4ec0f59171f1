// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.welcome;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    static String Welcome_begin;
    static String Welcome_cautions;
    static String Welcome_demo;
    static String Welcome_demoText;
    static String Welcome_folder;
    static String Welcome_folderText;
    static String Welcome_head;
    static String Welcome_purpose;
    static String Welcome_title;
    static String Welcome_vehicle;
    static String Welcome_vehicleText;

    static {
        NLS.initializeMessages("org.loomwright.workbench.welcome.messages", Messages.class);
    }

    private Messages() {
    }
}
