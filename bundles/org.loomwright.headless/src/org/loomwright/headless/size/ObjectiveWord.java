// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.headless.EnumWord;

/** The word of an objective on the command line. */
public final class ObjectiveWord extends EnumWord<SizingObjective> {
    public ObjectiveWord() {
        super(SizingObjective.class);
    }
}
