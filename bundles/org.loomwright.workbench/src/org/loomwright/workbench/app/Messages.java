// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    static String Menu_dark;
    static String Menu_drawing;
    static String Menu_edit;
    static String Menu_file;
    static String Menu_firstScreen;
    static String Menu_help;
    static String Menu_new;
    static String Menu_studies;
    static String Menu_views;
    static String Menu_window;
    static String Start_noWorkspace;
    static String Start_title;
    static String Start_took;
    static String Start_workspaceInUse;
    static String Window_title;

    static {
        NLS.initializeMessages("org.loomwright.workbench.app.messages", Messages.class);
    }

    private Messages() {
    }
}
