// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.wizard;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    static String Demo_description;
    static String Demo_failed;
    static String Demo_missing;
    static String Demo_title;
    static String Demo_unreadable;
    static String Folder_browse;
    static String Folder_description;
    static String Folder_failed;
    static String Folder_label;
    static String Folder_none;
    static String Folder_title;
    static String Vehicle_description;
    static String Vehicle_name;
    static String Vehicle_title;

    static {
        NLS.initializeMessages("org.loomwright.workbench.wizard.messages", Messages.class);
    }

    private Messages() {
    }
}
