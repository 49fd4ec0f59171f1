// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import org.loomwright.diagram.services.CaseView;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.LostStrap;

/**
 * The state that is drawn.
 *
 * @param now    figures to be shown; null without a case, and where a lost strap leaves no operating point
 * @param before figures with the strap in place, to be shown beside them; null when none is lost
 * @param loss   the lost strap; null for none
 */
record EarthState(CaseView now, CaseView before, LostStrap loss) {

    static EarthState of(DrawingRequest request) {
        LostStrap loss = request.loss();
        CaseView figures = request.figures();
        return loss == null ? new EarthState(figures, null, null)
                : new EarthState(loss.figures().settled() ? loss.figures() : null, figures, loss);
    }

    boolean lost(EarthContent.Join join) {
        return loss != null && loss.id().equals(join.id());
    }

    /** It carries more than before the loss. */
    boolean detour(EarthContent.Join join) {
        return loss != null && loss.more().contains(join.id());
    }

    CaseView.Strap now(EarthContent.Join join) {
        return figures(now, join);
    }

    CaseView.Strap before(EarthContent.Join join) {
        return figures(before, join);
    }

    private static CaseView.Strap figures(CaseView figures, EarthContent.Join join) {
        CaseView.Strap strap = figures == null ? null : figures.bonds().get(join.id());
        return strap == null && figures != null ? figures.seams().get(join.id()) : strap;
    }

    /** Potential of a body now, as shown; null without figures. */
    String potential(String body) {
        return now == null ? null : potential(now, body);
    }

    /** Potential of a body before the loss, as shown; null when none is lost, or it is as before. */
    String potentialBefore(String body) {
        String was = before == null ? null : potential(before, body);
        return was == null || was.equals(potential(body)) ? null : was;
    }

    private static String potential(CaseView figures, String body) {
        Double volts = figures.bodies().get(body);
        return volts == null ? "tied to no source" : EarthText.volts(volts);
    }
}
