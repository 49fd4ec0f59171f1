// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.fault;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    static String Fault_column;
    static String Fault_element;
    static String Fault_expected;
    static String Fault_file;
    static String Fault_head;
    static String Fault_line;
    static String Fault_noFile;
    static String Fault_what;

    static {
        NLS.initializeMessages("org.loomwright.workbench.fault.messages", Messages.class);
    }

    private Messages() {
    }
}
