// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;
import org.loomwright.diagram.symbol.LineWeight;

/** Runs as ducts of one width with the filled share, cables along them, places and earth points. */
final class WaysPainter {
    private static final double WALL_PX = 1.5;
    private static final double OVERLAY_IN_PX = 4;
    private static final double NARROWEST_PX = 0.4;
    private final PlanContent content;
    private final PlanLayout layout;
    private final SceneBuilder scene;

    WaysPainter(PlanContent content, PlanLayout layout, SceneBuilder scene) {
        this.content = content;
        this.layout = layout;
        this.scene = scene;
    }

    /** Colour of a run in the overlay shown; null for one without a value. */
    interface RunTone {
        /** The colour for the run of an index. */
        Tone of(int run);
    }

    /**
     * Paints runs.
     *
     * @param overlay colours of the overlay shown, or null for none
     */
    void runs(DuctFill fill, RunTone overlay) {
        for (int r = 0; r < content.runs().size(); r++) {
            begin(r, fill);
            boolean duct = fill.byRun().containsKey(r);
            scene.line(Stroke.solid(duct ? Role.INK2 : Role.HAIR, layout.ductPx()), extended(r));
        }
        for (int r = 0; r < content.runs().size(); r++) {
            begin(r, fill);
            scene.line(Stroke.solid(Role.PAPER, layout.ductPx() - 2 * WALL_PX), extended(r, layout.ductPx() / 2 - WALL_PX));
            DuctFill.Filled filled = fill.byRun().get(r);
            if (overlay == null && filled != null && filled.known()) {
                double width = StrictMath.min(1, filled.share()) * (layout.ductPx() - 2 * WALL_PX);
                if (width > NARROWEST_PX) {
                    scene.line(Stroke.solid(Role.FILL, width), layout.runs().get(r));
                }
            }
        }
        if (overlay != null) {
            tones(overlay, fill);
        }
    }

    /** Colours over the runs; those of a run reach over the places at its ends. */
    private void tones(RunTone overlay, DuctFill fill) {
        for (int r = 0; r < content.runs().size(); r++) {
            Tone tone = overlay.of(r);
            if (tone != null) {
                begin(r, fill);
                double width = layout.ductPx() - OVERLAY_IN_PX;
                scene.line(Stroke.solid(tone, width), extended(r, width / 2));
            }
        }
    }

    private void begin(int r, DuctFill fill) {
        PlanContent.Run run = content.runs().get(r);
        DuctFill.Filled filled = fill.byRun().get(r);
        scene.group(Group.Kind.EDGE, run.id(), "run " + run.id() + " from " + content.places().get(run.from()).name() + " to "
                + content.places().get(run.to()).name() + (filled == null ? ", open" : ", duct " + filled.name() + " "
                + filled.words()));
    }

    private List<Point> extended(int r) {
        return extended(r, layout.ductPx() / 2);
    }

    /** The line with both ends longer, so that ducts that meet at a place close the corner. */
    private List<Point> extended(int r, double byPx) {
        List<Point> line = new ArrayList<>(layout.runs().get(r));
        int n = line.size();
        Point first = longer(line.get(1), line.get(0), byPx);
        Point last = longer(line.get(n - 2), line.get(n - 1), byPx);
        line.set(0, first);
        line.set(n - 1, last);
        return line;
    }

    private static Point longer(Point from, Point to, double byPx) {
        double length = from.distance(to);
        if (length < 0.01) {
            return to.moved(byPx, 0);
        }
        return to.moved((to.x() - from.x()) / length * byPx, (to.y() - from.y()) / length * byPx);
    }

    void cables() {
        for (int c = 0; c < content.cables().size(); c++) {
            PlanContent.Cable cable = content.cables().get(c);
            List<Point> line = layout.lanes().line(c, cable);
            if (line.size() < 2) {
                continue;
            }
            double width = StrictMath.min(LineWeight.of(cable.sectionMm2()).planPx(), 0.7 * layout.lanes().spacingPx(cable));
            Tone tone = cable.existing() ? Role.INK3 : Role.INK;
            scene.group(Group.Kind.EDGE, cable.id(), "cable " + cable.designation());
            scene.line(cable.back() ? Stroke.dashed(tone, width, 5.0, 2.5) : Stroke.solid(tone, width), line);
        }
    }

    void places() {
        for (int p = 0; p < content.places().size(); p++) {
            PlanContent.Place place = content.places().get(p);
            Point at = layout.places().get(p);
            scene.group(Group.Kind.PORT, place.id(), "place " + place.name());
            scene.disc(Fill.solid(Role.PLATE), Stroke.solid(Role.INK, 1.25), at.x(), at.y(), place.earthPoints().isEmpty() ? 3.5 : 5);
            for (String earth : place.earthPoints()) {
                scene.group(Group.Kind.PORT, earth, "earth point " + earth);
                scene.disc(Fill.solid(Role.INK), null, at.x(), at.y(), 1.8);
            }
        }
    }
}
