// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String Study_earth;
    public static String Study_failed;
    public static String Study_job;
    public static String Study_noVehicle;
    public static String Study_protection;

    static {
        NLS.initializeMessages("org.loomwright.workbench.study.messages", Messages.class);
    }

    private Messages() {
    }
}
