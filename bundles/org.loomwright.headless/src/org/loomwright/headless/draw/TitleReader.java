// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.draw;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.loomwright.diagram.paper.TitleData;
import org.loomwright.diagram.plan.PlanView;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.headless.Version;
import org.loomwright.headless.check.Caution;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.ArrangementStatus;
import org.loomwright.model.vehicle.Vehicle;

/** What the title block of a drawing tells. */
final class TitleReader {
    private TitleReader() {
    }

    static TitleData of(Path file, DrawingRequest request, Diagram diagram, PlanView view, PaperOptions options) {
        Vehicle vehicle = request.vehicle();
        String label = vehicle.getLabel() == null || vehicle.getLabel().isBlank() ? vehicle.getName() : vehicle.getLabel();
        return new TitleData(label, document(request, diagram, view), vehicle.getName(), arrangement(vehicle, request.arrangement()),
                request.caseName() != null ? request.caseName() : diagram == Diagram.PLAN ? "any" : "none", options.date(),
                FileVersion.of(file), program(), options.drawnBy(), options.checkedBy(), Caution.TEXT);
    }

    private static String document(DrawingRequest request, Diagram diagram, PlanView view) {
        return switch (diagram) {
            case PLAN -> "Plan, " + view.words();
            case LINE -> "Single-line diagram";
            case EARTH -> "Earth return" + (request.loss() == null ? "" : ", " + request.loss().shown() + " lost");
        };
    }

    private static String arrangement(Vehicle vehicle, Arrangement arrangement) {
        if (arrangement == null) {
            return "shared by all";
        }
        if (vehicle.getAdopted() == arrangement) {
            return arrangement.getName() + ", adopted";
        }
        return arrangement.getName() + (!arrangement.isSetStatus() ? ""
                : arrangement.getStatus() == ArrangementStatus.AS_BUILT ? ", as built" : ", " + arrangement.getStatus().getLiteral());
    }

    private static String program() {
        try {
            return "Loomwright " + new Version().getVersion()[0].replaceFirst("^loomwright ", "");
        } catch (IOException damaged) {
            throw new UncheckedIOException("the version of the program cannot be read", damaged);
        }
    }
}
