// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.CaseView;
import org.loomwright.diagram.services.StudyView;

/** One body with what hangs on it, while the sheet is laid out. Positions in px. */
final class EarthCell {
    static final double ROW_PX = 62;
    static final double FIRST_ROW_PX = 46;
    static final double STRIP_PX = 12;
    private static final double HEAD_PX = 72;
    private static final double PAD_PX = 18;
    private static final double BLOCK_GAP_PX = 24;

    final EarthContent.Body body;
    final int index;
    final List<EarthBlock> below = new ArrayList<>();
    final List<EarthBlock> above = new ArrayList<>();
    /** Rows at the rim, by join, px below the upper rim. */
    final Map<EarthContent.Join, Double> rows = new LinkedHashMap<>();
    final String potential;
    /** Potential before a loss; null when there is none to be shown. */
    final String potentialBefore;
    double left;
    double top;
    double width;
    double height;

    EarthCell(EarthContent content, int index, EarthState state, StudyView study, TextMeasure type) {
        this.index = index;
        body = content.bodies().get(index);
        potential = state.potential(body.id());
        potentialBefore = state.potentialBefore(body.id());
        List<EarthContent.Stud> studs = content.studsOf(index);
        for (int s = 0; s < studs.size(); s++) {
            (studs.size() > 3 && s >= (studs.size() + 1) / 2 ? above : below).add(EarthBlock.of(studs.get(s), state, type));
        }
        double rims = 0;
        for (EarthContent.Join join : content.joins()) {
            String stud = join.a() == index ? join.studA() : join.b() == index ? join.studB() : null;
            rims = stud == null ? rims : StrictMath.max(rims, type.widthPx(stud, 12, false) + 10);
        }
        double head = StrictMath.max(headWidth(type), 60) + (state.loss() == null && study != null && study.markWithin(body.id()) != null ? 40 : 0);
        width = StrictMath.max(STRIP_PX + head + 2 * (rims + PAD_PX),
                StrictMath.max(rowWidth(below), rowWidth(above)));
        width = StrictMath.max(width, 150);
        height = HEAD_PX + (below.isEmpty() ? 0 : 24) + (above.isEmpty() ? 0 : 24);
        rimLabelPx = rims;
    }

    final double rimLabelPx;

    private double headWidth(TextMeasure type) {
        double most = type.widthPx(body.title(), 13, false);
        most = StrictMath.max(most, body.policy() == null ? 0 : type.widthPx(body.policy(), 12, false));
        double now = potential == null ? 0 : type.widthPx(potential, 13, true);
        return StrictMath.max(most, now + (potentialBefore == null ? 0 : beforePx(type) + type.widthPx(potentialBefore, 12, false)));
    }

    /** How far right of the head's beginning the potential before a loss stands. */
    double beforePx(TextMeasure type) {
        return potential == null ? 0 : type.widthPx(potential, 13, true) + 8;
    }

    private static double rowWidth(List<EarthBlock> blocks) {
        double sum = STRIP_PX + 8;
        for (EarthBlock block : blocks) {
            sum += block.widthPx() + BLOCK_GAP_PX;
        }
        return sum;
    }

    /** Where the head's text begins. */
    double headX() {
        return left + STRIP_PX + rimLabelPx + PAD_PX;
    }

    /** Base line of the head's first line. */
    double headY() {
        return top + (above.isEmpty() ? 24 : 48);
    }

    /** Left side of a block. */
    double blockX(List<EarthBlock> side, int nth) {
        double x = left + STRIP_PX + 8;
        for (int i = 0; i < nth; i++) {
            x += side.get(i).widthPx() + BLOCK_GAP_PX;
        }
        return x;
    }

    double reserveRow(EarthContent.Join join, double belowTop) {
        double at = StrictMath.max(belowTop, FIRST_ROW_PX + (above.isEmpty() ? 0 : 24));
        while (rows.containsValue(at)) {
            at += ROW_PX;
        }
        rows.put(join, at);
        height = StrictMath.max(height, at + FIRST_ROW_PX + (below.isEmpty() ? 0 : 4));
        return at;
    }

    double aboveHeight() {
        return above.stream().mapToDouble(EarthBlock::heightPx).max().orElse(0);
    }

    double belowHeight() {
        return below.stream().mapToDouble(EarthBlock::heightPx).max().orElse(0);
    }

    double bottom() {
        return top + height;
    }

    double right() {
        return left + width;
    }

    Bounds rectangle() {
        return new Bounds(left, top, right(), bottom());
    }

    /** The room with all returns. */
    Bounds room() {
        return new Bounds(left, top - aboveHeight(), right(), bottom() + belowHeight());
    }
}
