// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.swt.widgets.Shell;

/** Starts the study {@link StudyKind#EARTH}. */
public final class EarthHandler extends StudyHandler {
    /** The handler. */
    public EarthHandler() {
        super(StudyKind.EARTH);
    }

    @Override
    Study study(StudySource source, Shell shell) {
        return new EarthRun(source.file(), source.arrangement(), source.snapshot());
    }
}
