// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.overlay;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.MapTone;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;

/** The legend of an overlay, part of the drawing: name, colours with figures and unit, and a notch at each limit. */
public final class OverlayLegend {
    /** Length of the bar, px. */
    public static final double BAR_PX = 200;
    /** Height of all, px. */
    public static final double HEIGHT_PX = 58;
    private static final double HIGH_PX = 12;
    private static final double DOWN_PX = 26;
    private static final int PIECES = 40;
    private static final double TEXT_PX = 12;

    private OverlayLegend() {
    }

    /** Paints the legend with its upper left corner at a point; its limits are told beside its name. */
    public static void paint(SceneBuilder scene, TextMeasure type, OverlayScale scale, double x, double y) {
        scene.group(null, "legend: " + scale.kind().words());
        String limit = scale.limits().isEmpty() ? "" : (scale.limits().size() == 1 ? "limit " : "limits ")
                + scale.limits().stream().map(OverlayLegend::number).collect(Collectors.joining(", ")) + " " + scale.kind().unit();
        scene.text(x, y + 11, scale.kind().words(), TEXT_PX, true, Anchor.START, Role.INK);
        double top = y + DOWN_PX;
        for (int i = 0; i < PIECES; i++) {
            scene.rectangle(Fill.solid(new MapTone((i + 0.5) / PIECES)), null, x + i * BAR_PX / PIECES, top,
                    BAR_PX / PIECES + (i < PIECES - 1 ? 0.5 : 0), HIGH_PX);
        }
        scene.rectangle(null, Stroke.solid(Role.INK2, 1), x, top, BAR_PX, HIGH_PX);
        List<Double> ticks = scale.ticks();
        double free = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < ticks.size(); i++) {
            boolean last = i == ticks.size() - 1;
            double at = x + BAR_PX * scale.position(ticks.get(i));
            scene.line(Stroke.solid(Role.INK2, 1), new Point(at, top + HIGH_PX), new Point(at, top + HIGH_PX + 4));
            double half = type.widthPx(number(ticks.get(i)), TEXT_PX, false) / 2;
            if (last || at - half > free && at + half < x + BAR_PX - type.widthPx(number(scale.to()), TEXT_PX, false) / 2 - 4) {
                scene.text(last ? at - half : at, top + HIGH_PX + 17, number(ticks.get(i)) + (last ? " " + scale.kind().unit() : ""),
                        TEXT_PX, false, last ? Anchor.START : Anchor.MIDDLE, Role.INK2);
                free = at + half + 4;
            }
        }
        for (double notch : scale.limits()) {
            if (notch >= scale.from() && notch <= scale.to()) {
                double at = x + BAR_PX * scale.position(notch);
                scene.area(Fill.solid(Role.INK), null,
                        List.of(new Point(at, top - 1), new Point(at - 5, top - 9), new Point(at + 5, top - 9)));
            }
        }
        if (!limit.isEmpty()) {
            scene.text(x + type.widthPx(scale.kind().words(), TEXT_PX, true) + 8, y + 11, "\u25BC " + limit, TEXT_PX, false, Anchor.START,
                    Role.INK2);
        }
    }

    /** Three significant figures, without trailing zeros. */
    public static String number(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros();
        return rounded.toPlainString().replace("-", "\u2212");
    }
}
