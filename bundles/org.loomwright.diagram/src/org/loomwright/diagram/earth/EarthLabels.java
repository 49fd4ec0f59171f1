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
    private final EarthState state;
    private final TextMeasure type;

    EarthLabels(DrawingRequest request, EarthState state, TextMeasure type) {
        this.request = request;
        this.state = state;
        this.type = type;
    }

    /** A piece of a line; faint for what was before. */
    record Piece(String text, boolean bold, boolean faint) {
        Piece(String text, boolean bold) {
            this(text, bold, false);
        }
    }

    List<Piece> above(EarthContent.Join join) {
        return List.of(new Piece(join.shown(), true), new Piece(join.words(), false));
    }

    List<Piece> below(EarthContent.Join join) {
        List<Piece> pieces = new ArrayList<>();
        CaseView.Strap now = state.now(join);
        CaseView.Strap before = state.before(join);
        if (state.lost(join)) {
            pieces.add(new Piece("lost", true));
        } else if (now != null) {
            pieces.add(new Piece(EarthText.amps(now.amps()), true));
        }
        if (before != null && (now == null || state.lost(join) || !shown(before).equals(shown(now)))) {
            pieces.add(new Piece(EarthText.amps(before.amps()), false, true));
        }
        if (now != null && !state.lost(join)) {
            pieces.add(new Piece(EarthText.volts(now.dropV()), false));
        }
        if (!Double.isNaN(join.ohm())) {
            pieces.add(new Piece(EarthText.ohms(join.ohm()), false));
        }
        return pieces;
    }

    private static String shown(CaseView.Strap strap) {
        return EarthText.amps(strap.amps());
    }

    /** The badge of a strap: of its own findings, else as a cause; null for none, and for what is not now. */
    FindingMark mark(String id) {
        if (request.study() == null || id == null || state.loss() != null) {
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
