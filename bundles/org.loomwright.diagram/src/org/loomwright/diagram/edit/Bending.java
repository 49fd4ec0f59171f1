// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.diagram.scene.Point;
import org.loomwright.model.edits.DrawingEdits;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Run;

/** Bends of cables on the line diagram and of runs on the plan seen from above. */
final class Bending {
    private final Drawn drawn;

    Bending(Drawn drawn) {
        this.drawn = drawn;
    }

    /** The line of an edge as it is drawn; null when it cannot be bent here. */
    List<Point> line(String id) {
        EObject element = drawn.element(id);
        List<Point> line;
        if (element instanceof Run run && drawn.view() == View.PLAN) {
            line = RunLine.of(drawn, run).points();
        } else if (element instanceof Cable cable && drawn.view() == View.LINE && cable.getCores().size() == 1) {
            List<List<Point>> lines = drawn.lines(id);
            line = lines.size() == 1 ? lines.get(0) : List.of();
        } else {
            return null;
        }
        return line.size() < 2 ? null : line;
    }

    /** Writes bends; none lets the layout choose again. */
    Outcome bend(String id, List<Point> bends) {
        if (line(id) == null) {
            throw new IllegalArgumentException(drawn.label(drawn.element(id)) + " cannot be bent here");
        }
        List<String> pairs = new ArrayList<>();
        for (Point bend : bends) {
            Point at = drawn.view() == View.PLAN ? drawn.scale().toMm(bend) : bend;
            pairs.add(whole(at.x()) + "," + whole(at.y()));
        }
        DrawingEdits.bend(drawn.vehicle(), drawn.view().sheet(), drawn.arrangement(), drawn.element(id),
                pairs.isEmpty() ? null : String.join(" ", pairs));
        return Outcome.quiet();
    }

    private static String whole(double value) {
        BigDecimal mm = Drawn.mm(value);
        return mm.toPlainString();
    }
}
