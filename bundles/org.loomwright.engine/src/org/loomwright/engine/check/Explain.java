// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.loomwright.engine.result.StudyResult;

/** Derives the figures of an element when asked. */
final class Explain implements StudyResult.Explainer {
    private final CheckContext context;

    Explain(CheckContext context) {
        this.context = context;
    }

    @Override
    public List<StudyResult.ElementFigures> explain(String element) {
        return List.of();
    }
}
