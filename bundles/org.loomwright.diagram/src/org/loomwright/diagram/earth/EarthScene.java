// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.overlay.OverlayLegend;
import org.loomwright.diagram.overlay.OverlayScale;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.CaseView;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.symbol.LineWeight;
import org.loomwright.model.vehicle.Vehicle;

/**
 * The earth diagram of a vehicle: structure bodies with their potentials, straps with what they carry, earth points with the
 * returns that end there; by case.
 */
public final class EarthScene {
    private static final double SIDE_PX = 44;
    private static final double TOP_PX = 112;
    private static final double FOOT_PX = 120;
    private static final double LEAST_WIDTH_PX = 1123;

    /** Share of the sheet's spare height that is left above the drawing. */
    private static final double DOWN = 0.35;

    private final DrawingRequest request;
    private final EarthState state;
    private final TextMeasure type;

    private EarthScene(DrawingRequest request, TextMeasure type) {
        this.request = request;
        state = EarthState.of(request);
        this.type = type;
    }

    /** The scene of a vehicle; figures are those of the request's case. */
    public static Scene of(DrawingRequest request, TextMeasure type) {
        return new EarthScene(request, type).build();
    }

    private Scene build() {
        EarthContent content = EarthReader.read(request);
        EarthLabels labels = new EarthLabels(request, state, type);
        Bounds free = room(new EarthLayout(request, state, content, labels, type, SIDE_PX, TOP_PX, false));
        double width = StrictMath.max(LEAST_WIDTH_PX, StrictMath.ceil(free.right() + SIDE_PX));
        EarthLoss loss = EarthLoss.of(state, type, width - 2 * SIDE_PX);
        EarthFindings findings = EarthFindings.of(state.loss() == null ? request : request.with(null, request.caseName()), content,
                type, width - 2 * SIDE_PX);
        double below = loss.heightPx() + findings.heightPx() + FOOT_PX;
        double spare = StrictMath.max(0, width / StrictMath.sqrt(2) - free.bottom() - below);
        double top = TOP_PX + StrictMath.rint(DOWN * spare);
        EarthLayout layout = new EarthLayout(request, state, content, labels, type, SIDE_PX, top, true);
        Bounds room = room(layout);
        width = StrictMath.max(width, StrictMath.ceil(room.right() + SIDE_PX));
        double height = StrictMath.ceil(StrictMath.max(room.bottom() + below, width / StrictMath.sqrt(2)));
        width = StrictMath.max(width, StrictMath.ceil(StrictMath.sqrt(2) * height));
        SceneBuilder scene = new SceneBuilder(name() + ", earth", width, height);
        EarthFoot foot = new EarthFoot(scene, type, width, height);
        foot.frame();
        head(scene, content);
        OverlayScale scale = scale();
        EarthPainter painter = new EarthPainter(scene, type, labels, state, scale);
        layout.cells.forEach(painter::body);
        content.joins().forEach(join -> painter.line(join, layout.ways.get(join)));
        content.joins().forEach(join -> painter.ends(join, layout));
        layout.cells.forEach(painter::returns);
        content.joins().forEach(join -> painter.label(join, layout.labels.get(join), layout.ways.get(join)));
        loss.paint(scene, SIDE_PX, room.bottom());
        findings.paint(scene, SIDE_PX, room.bottom());
        legend(scene, scale, height);
        foot.titleBlock(fields());
        return scene.build();
    }

    private static Bounds room(EarthLayout layout) {
        return layout.room() == null ? new Bounds(0, 0, 0, TOP_PX) : layout.room();
    }

    private String name() {
        Vehicle vehicle = request.vehicle();
        return vehicle.getLabel() == null || vehicle.getLabel().isBlank() ? vehicle.getName() : vehicle.getLabel();
    }

    private void head(SceneBuilder scene, EarthContent content) {
        scene.group(null, "head");
        scene.text(40, 53, name() + " \u2014 earth", 20, true, Anchor.START, Role.INK);
        List<String> words = new ArrayList<>();
        if (request.arrangement() != null) {
            words.add("Arrangement " + request.arrangement().getName() + ".");
        }
        CaseView figures = request.figures();
        if (figures == null) {
            words.add("No state chosen: without currents and potentials.");
        } else {
            words.add("Case " + figures.name() + ".");
            if (state.loss() != null) {
                words.add("What if " + state.loss().shown() + " is lost" + (state.now() != null
                        ? ": figures at that moment, those with it in place in grey." : ": no operating point is left; the "
                                + "figures in grey are those with it in place."));
            }
            words.add(figures.settled() ? "Potentials against " + request.study().reference()
                    + "; currents are amounts, arrows tell their direction."
                    : "This state has no operating point; its figures say little.");
        }
        if (content.bodies().isEmpty()) {
            words.add("The vehicle has no structure bodies yet.");
        }
        scene.text(40, 73, String.join(" ", words), 13, false, Anchor.START, Role.INK2);
    }

    private OverlayScale scale() {
        CaseView figures = state.now();
        if (figures == null || figures.bodies().isEmpty()) {
            return null;
        }
        double most = figures.bodies().values().stream().mapToDouble(StrictMath::abs).max().orElse(0);
        return OverlayScale.upTo(OverlayKind.POTENTIAL, 1000 * most, List.of());
    }

    private void legend(SceneBuilder scene, OverlayScale scale, double height) {
        double y = height - 52;
        scene.group(null, "key");
        scene.disc(Fill.solid(Role.PLATE), Stroke.solid(Role.INK, 1.5), 48, y, 5);
        scene.disc(Fill.solid(Role.INK), null, 48, y, 1.6);
        scene.text(62, y + 4, "earth point", 12, false, Anchor.START, Role.INK2);
        scene.line(LineWeight.of(4).back(Role.INK), new Point(146, y), new Point(190, y));
        scene.text(198, y + 4, "return; the heavier the larger its section", 12, false, Anchor.START, Role.INK2);
        scene.group(null, "key of forbidden bodies");
        scene.rectangle(Fill.solid(Role.BODY), null, 456, y - 8, 24, 16);
        scene.rectangle(Fill.hatched(Role.HAIR), Stroke.dashed(Role.INK, 1.25, 12.0, 3.0, 2.0, 3.0), 456, y - 8, 24, 16);
        scene.text(488, y + 4, "body closed to returns", 12, false, Anchor.START, Role.INK2);
        if (state.loss() != null) {
            new LostMark(scene).key(456, y - 30);
        }
        if (scale != null) {
            OverlayLegend.paint(scene, type, scale, 40, height - 128);
        }
    }

    private List<EarthFoot.Field> fields() {
        List<EarthFoot.Field> fields = new ArrayList<>();
        fields.add(new EarthFoot.Field("vehicle", request.vehicle().getName()));
        if (request.arrangement() != null) {
            fields.add(new EarthFoot.Field("arrangement", request.arrangement().getName()));
        }
        fields.add(new EarthFoot.Field("case", request.caseName() == null ? "none" : request.caseName()));
        if (state.loss() != null) {
            fields.add(new EarthFoot.Field("what if", state.loss().shown() + " lost"));
        }
        return fields;
    }
}
