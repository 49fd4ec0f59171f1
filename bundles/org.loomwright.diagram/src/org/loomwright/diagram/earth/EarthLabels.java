// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.CaseView;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.FindingMark;

/** What stands beside a strap: designation and kind above its line, current, drop and resistance below it. */
final class EarthLabels {
    private static final double BADGE_PX = 28;
    private final DrawingRequest request;
    private final TextMeasure type;

    EarthLabels(DrawingRequest request, TextMeasure type) {
        this.request = request;
        this.type = type;
    }

    /** A piece of a line. */
    record Piece(String text, boolean bold) {
    }

    /** The strap's figures in the case drawn; null for none. */
    CaseView.Strap figures(EarthContent.Join join) {
        CaseView figures = request.figures();
        CaseView.Strap strap = figures == null ? null : figures.bonds().get(join.id());
        return strap == null && figures != null ? figures.seams().get(join.id()) : strap;
    }

    List<Piece> above(EarthContent.Join join) {
        return List.of(new Piece(join.shown(), true), new Piece(join.words(), false));
    }

    List<Piece> below(EarthContent.Join join) {
        List<Piece> pieces = new ArrayList<>();
        CaseView.Strap figures = figures(join);
        if (figures != null) {
            pieces.add(new Piece(EarthText.amps(figures.amps()), true));
            pieces.add(new Piece(EarthText.volts(figures.dropV()), false));
        }
        if (!Double.isNaN(join.ohm())) {
            pieces.add(new Piece(EarthText.ohms(join.ohm()), false));
        }
        return pieces;
    }

    /** The badge of a strap: of its own findings, else as a cause; null for none. */
    FindingMark mark(String id) {
        if (request.study() == null || id == null) {
            return null;
        }
        FindingMark own = request.study().markWithin(id);
        return own != null ? own : request.study().causeMark(id);
    }

    /** Room for the badge before the upper line. */
    double badgePx(EarthContent.Join join) {
        return mark(join.id()) == null ? 0 : BADGE_PX;
    }

    double widthPx(EarthContent.Join join) {
        return StrictMath.max(badgePx(join) + widthPx(above(join)), widthPx(below(join)));
    }

    double widthPx(List<Piece> pieces) {
        double sum = 0;
        for (Piece piece : pieces) {
            sum += (sum == 0 ? 0 : 8) + type.widthPx(piece.text(), 12, piece.bold());
        }
        return sum;
    }
}
