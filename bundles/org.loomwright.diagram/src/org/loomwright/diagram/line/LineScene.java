// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.Measures;

/**
 * The line diagram: one line for each circuit, from sources at the left over protective devices and distribution points to loads
 * at the right; returns through the structure end at the sign of the frame, returns of their own are gathered below.
 */
public final class LineScene {
    private LineScene() {
    }

    /**
     * Draws an arrangement. To be called in the thread that owns the model; the scene may be used by any.
     *
     * @param measure metrics of the typeface it will be painted with
     */
    public static Scene of(DrawingRequest request, TextMeasure measure) {
        LineContent content = LineContent.read(request.vehicle(), request.arrangement());
        LineFigures figures = request.study() == null ? LineFigures.NONE
                : new StudiedFigures(request.study(), request.figures());
        Drafting drafting = Drafting.of(content, figures, new Measures(request.preferences()), measure, LineColours.of(request));
        return new LineSheet(request, drafting).scene();
    }
}
