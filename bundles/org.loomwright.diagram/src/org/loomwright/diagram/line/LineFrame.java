// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.List;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.overlay.OverlayLegend;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.symbol.LineWeight;
import org.loomwright.model.vehicle.Case;

/** Frame, head, column heads, legend and title block of a line diagram. */
final class LineFrame {
    private static final double MARGIN = 20;
    private static final double BLOCK_H = 42;
    /** Room of an overlay's legend, px. */
    static final double OVERLAY_PX = OverlayLegend.HEIGHT_PX + 6;
    private final DrawingRequest request;
    private final Drafting drafting;
    private final SceneBuilder scene;
    private final SheetSize size;

    LineFrame(DrawingRequest request, Drafting drafting, SceneBuilder scene, SheetSize size) {
        this.request = request;
        this.drafting = drafting;
        this.scene = scene;
        this.size = size;
    }

    void paint(String title, double left) {
        scene.group(Group.Kind.GROUND, null, "sheet").rectangle(null, Stroke.solid(Role.INK3, 1), MARGIN, MARGIN,
                size.widthPx() - 2 * MARGIN, size.heightPx() - 2 * MARGIN);
        scene.text(left, 54, title, 20, true, Mark.Anchor.START, Role.INK);
        scene.text(left, 76, subtitle(), LineText.PX, false, Mark.Anchor.START, Role.INK2);
        if (drafting.colours().scale() != null) {
            OverlayLegend.paint(scene, drafting.measure(), drafting.colours().scale(), left,
                    size.heightPx() - MARGIN - BLOCK_H - OVERLAY_PX);
        }
        legend(left, size.heightPx() - MARGIN - BLOCK_H / 2);
        block();
    }

    private String subtitle() {
        String arrangement = request.arrangement() == null ? "What all arrangements share."
                : "Arrangement " + request.arrangement().getName() + (request.arrangement().getLabel() == null ? ""
                        : ": " + request.arrangement().getLabel()) + ".";
        if (request.overlay() == OverlayKind.FILL) {
            arrangement += " The fill of ducts is shown in the plan.";
        }
        if (request.caseName() == null) {
            return arrangement;
        }
        String state = drafting.figures().live() ? "" : "; no operating point, so no figures";
        return arrangement + " Case " + caseText() + state + ".";
    }

    private String caseText() {
        for (Case each : request.vehicle().getCases()) {
            if (request.caseName().equals(each.getName()) && each.getLabel() != null) {
                return each.getName() + ": " + each.getLabel();
            }
        }
        return request.caseName();
    }

    private void legend(double left, double y) {
        scene.group(Group.Kind.GROUND, null, "legend");
        double x = left;
        for (LineWeight weight : LineWeight.values()) {
            String text = weight.range() + (weight == LineWeight.THICK ? " mm\u00b2" : "");
            x = sample(weight.supply(Role.INK), text, x, y);
        }
        x = sample(LineWeight.LIGHT.supply(Role.INK), "supply", x + 8, y);
        x = sample(LineWeight.LIGHT.back(Role.INK), "return", x, y);
        if (drafting.figures().live()) {
            sample(LineWeight.LIGHT.supply(Role.INK3), "off", x, y);
        }
    }

    private double sample(Stroke stroke, String text, double x, double y) {
        scene.line(stroke, new org.loomwright.diagram.scene.Point(x, y), new org.loomwright.diagram.scene.Point(x + 26, y));
        scene.text(x + 33, y + 4, text, LineText.PX, false, Mark.Anchor.START, Role.INK2);
        return x + 33 + LineText.width(drafting.measure(), text, false) + 14;
    }

    private record Field(String name, String value) {
    }

    private void block() {
        String arrangement = request.arrangement() == null ? "shared" : request.arrangement().getName();
        List<Field> fields = List.of(new Field("vehicle", String.valueOf(request.vehicle().getName())),
                new Field("arrangement", arrangement),
                        new Field("case", request.caseName() == null ? "none" : request.caseName()),
                new Field("sheet", size.name()));
        scene.group(Group.Kind.GROUND, null, "title block");
        double x = size.widthPx() - MARGIN;
        double y = size.heightPx() - MARGIN - BLOCK_H;
        for (int i = fields.size() - 1; i >= 0; i--) {
            Field field = fields.get(i);
            double width = StrictMath.max(70, 16 + StrictMath.max(LineText.width(drafting.measure(), field.name(), false),
                    LineText.width(drafting.measure(), field.value(), true)));
            x -= width;
            scene.rectangle(Fill.solid(Role.PLATE), Stroke.solid(Role.INK, 1), x, y, width, BLOCK_H);
            scene.text(x + 8, y + 17, field.name(), LineText.PX, false, Mark.Anchor.START, Role.INK2);
            scene.text(x + 8, y + 33, field.value(), LineText.PX, true, Mark.Anchor.START, Role.INK);
        }
    }
}
