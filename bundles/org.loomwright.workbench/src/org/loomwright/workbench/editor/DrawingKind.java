// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import org.loomwright.diagram.earth.EarthScene;
import org.loomwright.diagram.line.LineScene;
import org.loomwright.diagram.plan.PlanScene;
import org.loomwright.diagram.plan.PlanView;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.DrawingRequest;

/** Drawings of a vehicle that the editor offers. */
public enum DrawingKind {
    /** To scale, from above. */
    PLAN {
        @Override
        public Scene scene(DrawingRequest request, TextMeasure type) {
            return PlanScene.of(request, PlanView.ABOVE, type);
        }
    },
    /** To scale, from the side. */
    SIDE {
        @Override
        public Scene scene(DrawingRequest request, TextMeasure type) {
            return PlanScene.of(request, PlanView.SIDE, type);
        }
    },
    /** Single-line circuit. */
    LINE {
        @Override
        public Scene scene(DrawingRequest request, TextMeasure type) {
            return LineScene.of(request, type);
        }
    },
    /** Structure bodies with their bonds and returns. */
    EARTH {
        @Override
        public Scene scene(DrawingRequest request, TextMeasure type) {
            return EarthScene.of(request, type);
        }
    };

    /** Makes the drawing, in the thread that owns the request's vehicle. */
    public abstract Scene scene(DrawingRequest request, TextMeasure type);
}
