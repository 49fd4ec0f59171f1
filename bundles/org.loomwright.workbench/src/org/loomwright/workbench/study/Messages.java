// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    static String Study_earth;
    static String Study_failed;
    static String Study_job;
    static String Study_noVehicle;
    static String Study_protection;

    static {
        NLS.initializeMessages("org.loomwright.workbench.study.messages", Messages.class);
    }

    private Messages() {
    }
}
