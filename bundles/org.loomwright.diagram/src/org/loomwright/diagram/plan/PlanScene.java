// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** The plan of a vehicle. */
public final class PlanScene {
    private PlanScene() {
    }

    static Scene draw(Vehicle vehicle, Arrangement arrangement, PlanView view, TextMeasure type) {
        PlanContent content = PlanReader.read(vehicle, arrangement, view);
        PlanLayout layout = PlanLayout.of(content, PlanFoot.HEIGHT_PX, type);
        DuctFill fill = DuctFill.of(vehicle, arrangement, content);
        PlanSheet sheet = layout.sheet();
        SceneBuilder scene = new SceneBuilder("plan", sheet.widthPx(), sheet.heightPx());
        scene.group(null, "frame");
        scene.rectangle(null, Stroke.solid(Role.INK2, 1), PlanSheet.FRAME_PX, PlanSheet.FRAME_PX,
                sheet.widthPx() - 2 * PlanSheet.FRAME_PX, sheet.heightPx() - 2 * PlanSheet.FRAME_PX);
        GroundPainter ground = new GroundPainter(content, layout.to(), scene);
        ground.paint();
        WaysPainter ways = new WaysPainter(content, layout, scene);
        ways.runs(fill, null);
        ways.cables();
        SeatPainter seats = new SeatPainter(content, scene);
        layout.seats().forEach(seats::leader);
        ways.places();
        layout.seats().forEach(seats::devices);
        RunLabels labels = new RunLabels(content, layout, type, scene);
        labels.bodies();
        labels.runs(fill);
        labels.zones(ground.seen()::contains);
        new PlanDimensions(scene, type).paint(content, layout.to(), sheet);
        head(vehicle, arrangement, view, content, sheet, scene);
        PlanFoot foot = new PlanFoot(sheet, scene, type);
        foot.findings(List.of(), false);
        foot.zones(content.zones());
        foot.key(false);
        foot.scaleBar(layout.to());
        foot.titleBlock(fields(vehicle, arrangement, layout.to()));
        return scene.build();
    }

    private static void head(Vehicle vehicle, Arrangement arrangement, PlanView view, PlanContent content, PlanSheet sheet,
            SceneBuilder scene) {
        scene.group(null, "head");
        scene.text(sheet.left(), sheet.top() + 18, title(vehicle.getLabel(), vehicle.getName()) + " \u2014 plan", 20, true,
                Anchor.START, Role.INK);
        List<String> words = new ArrayList<>();
        if (vehicle.getKind() != null && !vehicle.getKind().isBlank()) {
            words.add(vehicle.getKind().strip());
        }
        words.add(view.words() + (content.stated() ? "" : "; its outline is not stated, a plain one is drawn"));
        if (arrangement != null) {
            words.add("arrangement " + title(arrangement.getLabel(), arrangement.getName()));
        }
        scene.text(sheet.left(), sheet.top() + 40, String.join(", ", words), 13, false, Anchor.START, Role.INK2);
    }

    private static List<PlanFoot.Field> fields(Vehicle vehicle, Arrangement arrangement, Projection to) {
        List<PlanFoot.Field> fields = new ArrayList<>();
        fields.add(new PlanFoot.Field("vehicle", vehicle.getName()));
        if (arrangement != null) {
            fields.add(new PlanFoot.Field("arrangement", arrangement.getName()));
        }
        fields.add(new PlanFoot.Field("scale at 96 dpi", "1 : " + StrictMath.round(96 / 25.4 / to.pxPerMm())));
        return fields;
    }

    private static String title(String label, String name) {
        return label == null || label.isBlank() ? name : label;
    }
}
