// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.builder;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Check_failed;
    public static String Check_file;
    public static String Check_task;

    static {
        NLS.initializeMessages("org.loomwright.workbench.builder.messages", Messages.class);
    }

    private Messages() {
    }
}
