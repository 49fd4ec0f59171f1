// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.wizard;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Demo_description;
    public static String Demo_failed;
    public static String Demo_missing;
    public static String Demo_title;
    public static String Demo_unreadable;
    public static String Folder_browse;
    public static String Folder_description;
    public static String Folder_failed;
    public static String Folder_label;
    public static String Folder_none;
    public static String Folder_title;
    public static String Vehicle_description;
    public static String Vehicle_name;
    public static String Vehicle_title;

    static {
        NLS.initializeMessages("org.loomwright.workbench.wizard.messages", Messages.class);
    }

    private Messages() {
    }
}
