// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

/** Starts the study {@link StudyKind#PROTECTION}. */
public final class ProtectionHandler extends StudyHandler {
    /** The handler. */
    public ProtectionHandler() {
        super(StudyKind.PROTECTION);
    }
}
