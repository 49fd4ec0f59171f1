// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.markers;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Cause_go;
    public static String Mend_gone;
    public static String Mend_title;

    static {
        NLS.initializeMessages("org.loomwright.workbench.markers.messages", Messages.class);
    }

    private Messages() {
    }
}
