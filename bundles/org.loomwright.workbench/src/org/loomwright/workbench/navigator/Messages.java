// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.navigator;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Tree_adopted;
    public static String Tree_closed;
    public static String Tree_counts;

    static {
        NLS.initializeMessages("org.loomwright.workbench.navigator.messages", Messages.class);
    }

    private Messages() {
    }
}
