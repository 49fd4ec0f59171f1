// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.fault;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Fault_column;
    public static String Fault_element;
    public static String Fault_expected;
    public static String Fault_file;
    public static String Fault_head;
    public static String Fault_line;
    public static String Fault_noFile;
    public static String Fault_what;

    static {
        NLS.initializeMessages("org.loomwright.workbench.fault.messages", Messages.class);
    }

    private Messages() {
    }
}
