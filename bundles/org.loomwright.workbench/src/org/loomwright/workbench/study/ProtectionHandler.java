// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.swt.widgets.Shell;

/** Starts the study {@link StudyKind#PROTECTION}. */
public final class ProtectionHandler extends StudyHandler {
    /** The handler. */
    public ProtectionHandler() {
        super(StudyKind.PROTECTION);
    }

    @Override
    Study study(StudySource source, Shell shell) {
        return new ProtectionRun(source.file(), source.arrangement(), source.snapshot());
    }
}
