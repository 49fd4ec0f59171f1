// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

/** Starts the study {@link StudyKind#EARTH}. */
public final class EarthHandler extends StudyHandler {
    /** The handler. */
    public EarthHandler() {
        super(StudyKind.EARTH);
    }
}
