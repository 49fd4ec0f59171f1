// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.diagram.overlay.OverlayFigures;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.overlay.OverlayLegend;
import org.loomwright.diagram.overlay.OverlayValues;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.SheetChoices;
import org.loomwright.model.vehicle.DiagramKind;

/**
 * The plan of a vehicle, to scale: zones, structure bodies, ducts with the cables in them, devices where they sit, findings. Runs
 * are drawn at right angles between their places, over the bends that a person chose where there are any.
 */
public final class PlanScene {
    private static final double LEGEND_PX = 320;
    private final DrawingRequest input;
    private final PlanView view;
    private final OverlayValues overlayValues;
    private final TextMeasure type;
    private final PlanContent content;
    private final PlanFindings findings;
    private final PlanLayout layout;
    private final DuctFill fill;
    private final SceneBuilder scene;

    private PlanScene(DrawingRequest input, PlanView view, TextMeasure type, List<PlanSheet> sheets) {
        this.input = input;
        this.view = view;
        this.type = type;
        content = PlanReader.read(input.vehicle(), input.arrangement(), view);
        findings = input.study() == null ? PlanFindings.NONE : PlanFindings.of(input.study().findings(), input.caseName(),
                input.arrangement() == null ? "" : input.arrangement().getName(), drawn(content));
        layout = PlanLayout.of(content, sheets, type, findings.badges().keySet(), view == PlanView.SIDE ? SheetChoices.none()
                : SheetChoices.of(input.vehicle(), input.arrangement(), DiagramKind.PLAN));
        fill = DuctFill.of(input.vehicle(), input.arrangement(), content);
        overlayValues = overlay(input);
        scene = new SceneBuilder(name() + ", plan", layout.sheet().widthPx(), layout.sheet().heightPx());
    }

    /** The plan from above; see {@link #of(DrawingRequest, PlanView, TextMeasure)}. */
    public static Scene of(DrawingRequest request, TextMeasure type) {
        return of(request, PlanView.ABOVE, type);
    }

    /**
     * Draws a plan in the thread that owns the model. An overlay of figures is left out as long as there is no study.
     *
     * @param type metrics of the typeface
     */
    public static Scene of(DrawingRequest request, PlanView view, TextMeasure type) {
        return new PlanScene(request, view, type, PlanSheet.sizes(PlanFoot.HEIGHT_PX)).build();
    }

    /** True when the ground takes the vehicle itself at the scale. */
    public static boolean takes(PlotScale plot, DrawingRequest request, PlanView view) {
        return plot.sheet().takes(PlanReader.read(request.vehicle(), request.arrangement(), view).vehicle());
    }

    /**
     * Draws a plan at a scale, on ground that {@link #takes} the vehicle.
     *
     * @return the drawing; null when not all devices find room beside the vehicle
     */
    public static Scene at(PlotScale plot, DrawingRequest request, PlanView view, TextMeasure type) {
        PlanScene plan = new PlanScene(request, view, type, List.of(plot.sheet()));
        return plan.layout.unplaced() > 0 ? null : plan.build();
    }

    private static OverlayValues overlay(DrawingRequest input) {
        if (input.overlay() == OverlayKind.FILL) {
            return FillOverlay.of(input.vehicle(), input.arrangement());
        }
        return input.overlay() == null || input.study() == null ? null
                : OverlayFigures.of(input.overlay(), input.study(), input.caseName());
    }

    private Scene build() {
        PlanSheet sheet = layout.sheet();
        scene.group(null, "frame");
        scene.rectangle(null, Stroke.solid(Role.INK2, 1), PlanSheet.FRAME_PX, PlanSheet.FRAME_PX,
                sheet.widthPx() - 2 * PlanSheet.FRAME_PX, sheet.heightPx() - 2 * PlanSheet.FRAME_PX);
        OverlayPainter overlay = overlayValues == null ? null : new OverlayPainter(content, layout, overlayValues, scene);
        GroundPainter ground = new GroundPainter(content, layout.to(), scene);
        ground.paint();
        if (overlay != null) {
            overlay.bodies();
        }
        WaysPainter ways = new WaysPainter(content, layout, scene);
        ways.runs(fill, overlay == null || overlay.silent() ? null : overlay::run);
        if (overlay == null || overlay.silent()) {
            ways.cables();
        }
        devices(ways, overlay);
        labels(ground);
        new PlanDimensions(scene, type).paint(content, layout.to(), sheet);
        head(sheet);
        foot(sheet);
        return scene.build();
    }

    private void devices(WaysPainter ways, OverlayPainter overlay) {
        SeatPainter seats = new SeatPainter(content, layout.room(), scene, type);
        BadgePainter badges = new BadgePainter(layout, findings, scene, type);
        layout.seats().forEach(seats::leader);
        ways.places();
        for (Seat seat : layout.seats()) {
            seats.devices(seat);
            for (SeatForm.Cell cell : seat.form().cells()) {
                if (overlay != null) {
                    overlay.device(cell);
                }
                badges.device(content.devices().get(cell.device()).id(), cell, seat.form().cells().size() > 1);
            }
        }
    }

    private void labels(GroundPainter ground) {
        BadgePainter badges = new BadgePainter(layout, findings, scene, type);
        for (int r = 0; r < content.runs().size(); r++) {
            badges.along(content.runs().get(r).id(), content.runs().get(r).id(), layout.runs().get(r));
        }
        for (int c = 0; c < content.cables().size(); c++) {
            PlanContent.Cable cable = content.cables().get(c);
            badges.along(cable.id(), "-" + cable.designation(), layout.lanes().line(c, cable));
        }
        RunLabels labels = new RunLabels(content, layout, type, scene);
        labels.bodies();
        labels.runs(fill);
        labels.zones(ground.seen()::contains);
    }

    private static Set<String> drawn(PlanContent content) {
        Set<String> ids = new LinkedHashSet<>();
        content.devices().forEach(device -> ids.add(device.id()));
        content.cables().forEach(cable -> ids.add(cable.id()));
        content.runs().forEach(run -> ids.add(run.id()));
        content.places().forEach(place -> ids.addAll(place.earthPoints()));
        content.bodies().forEach(body -> ids.add(body.id()));
        return ids;
    }

    private void head(PlanSheet sheet) {
        scene.group(null, "head");
        scene.text(sheet.left(), sheet.top() + 18, name() + " \u2014 plan", 20, true, Anchor.START, Role.INK);
        List<String> words = new ArrayList<>();
        if (input.vehicle().getKind() != null && !input.vehicle().getKind().isBlank()) {
            words.add(input.vehicle().getKind().strip());
        }
        words.add(view.words() + (content.stated() ? "" : "; its outline is not stated, a plain one is drawn"));
        if (input.arrangement() != null) {
            words.add("arrangement " + title(input.arrangement().getLabel(), input.arrangement().getName()));
        }
        if (input.caseName() != null) {
            words.add("case " + input.caseName());
        }
        long without = content.cables().stream().filter(cable -> !cable.known()).count();
        if (layout.unplaced() > 0) {
            words.add(layout.unplaced() + " devices found no room on this sheet");
        }
        if (without > 0) {
            words.add(without + (without == 1 ? " cable has" : " cables have") + " no way yet and " + (without == 1 ? "is" : "are")
                    + " not drawn");
        }
        scene.text(sheet.left(), sheet.top() + 40, new PlanFoot(sheet, scene, type).fitted(String.join(", ", words),
                sheet.right() - sheet.left() - (overlayValues == null ? 0 : LEGEND_PX), false), 13, false, Anchor.START, Role.INK2);
        if (overlayValues != null) {
            OverlayLegend.paint(scene, type, overlayValues.scale(), sheet.right() - LEGEND_PX, sheet.top());
        }
    }

    private void foot(PlanSheet sheet) {
        PlanFoot foot = new PlanFoot(sheet, scene, type);
        foot.findings(findings.lines(), input.study() != null);
        foot.zones(content.zones());
        foot.key(overlayValues != null && !OverlayPainter.silent(overlayValues.scale().kind()));
        foot.scaleBar(layout.to());
        List<PlanFoot.Field> fields = new ArrayList<>();
        fields.add(new PlanFoot.Field("vehicle", input.vehicle().getName()));
        if (input.arrangement() != null) {
            fields.add(new PlanFoot.Field("arrangement", input.arrangement().getName()));
        }
        fields.add(new PlanFoot.Field("case", input.caseName() == null ? "any" : input.caseName()));
        fields.add(new PlanFoot.Field("scale at 96 dpi",
                "1 : " + StrictMath.round(96 / 25.4 / layout.to().pxPerMm())));
        foot.titleBlock(fields);
    }

    private String name() {
        return title(input.vehicle().getLabel(), input.vehicle().getName());
    }

    private static String title(String label, String name) {
        return label == null || label.isBlank() ? name == null ? "" : name : label;
    }
}
