// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.protection.ProtectionStudy;
import org.loomwright.engine.protection.ProtectionTable;

/** Studies that several rules of one check need, each made when first asked for. Safe to share between threads. */
public final class SharedStudies {
    private final Monitor monitor;
    private ProtectionTable protection;

    /** None made yet; the monitor cancels what is made later. */
    public SharedStudies(Monitor monitor) {
        this.monitor = monitor;
    }

    /** None made yet, and nothing cancels what is made later. */
    public SharedStudies() {
        this(new BasicMonitor());
    }

    /** None made yet, for the same plan with other cases. */
    SharedStudies anew() {
        return new SharedStudies(monitor);
    }

    /** Faults and clearing of every conductor and device. */
    synchronized ProtectionTable protection(CheckContext context) {
        if (protection == null) {
            protection = ProtectionStudy.of(context, monitor);
        }
        return protection;
    }
}
