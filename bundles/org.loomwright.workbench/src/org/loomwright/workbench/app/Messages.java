// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Menu_dark;
    public static String Menu_drawing;
    public static String Menu_edit;
    public static String Menu_file;
    public static String Menu_firstScreen;
    public static String Menu_help;
    public static String Menu_new;
    public static String Menu_studies;
    public static String Menu_views;
    public static String Menu_window;
    public static String Start_noWorkspace;
    public static String Start_title;
    public static String Start_took;
    public static String Start_workspaceInUse;
    public static String Window_title;

    static {
        NLS.initializeMessages("org.loomwright.workbench.app.messages", Messages.class);
    }

    private Messages() {
    }
}
