// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Core;

/** One of the two ends of a core. */
public enum CoreEnd {
    /** The end called a. */
    A,
    /** The end called b. */
    B;

    /** What this end of a core is connected to; null when open. */
    public Attachment of(Core core) {
        return this == A ? core.getA() : core.getB();
    }

    /** The other end. */
    public CoreEnd other() {
        return this == A ? B : A;
    }

    void set(Core core, Attachment attachment) {
        if (this == A) {
            core.setA(attachment);
        } else {
            core.setB(attachment);
        }
    }
}
