// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.help;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Help_back;
    public static String Help_search;
    public static String Keys_intro;
    public static String Keys_title;
    public static String Rules_intro;
    public static String Rules_title;

    static {
        NLS.initializeMessages("org.loomwright.workbench.help.messages", Messages.class);
    }

    private Messages() {
    }
}
