// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Veil;

/** The key: what the lines and grounds of a plan mean. */
final class PlanKey {
    private static final double SIGN_PX = 56;
    private static final double ROW_PX = 23;
    private static final int ROWS = 6;
    private static final double COLUMN_PX = 225;
    private static final double DUCT_PX = 13;
    private final SceneBuilder scene;
    private final boolean overlay;

    PlanKey(SceneBuilder scene, boolean overlay) {
        this.scene = scene;
        this.overlay = overlay;
    }

    /** Paints the key below its head. */
    void paint(double x, double y) {
        List<Sign> signs = List.of(new Sign(overlay ? "run, coloured by value" : "duct, grey = share filled", this::duct),
                new Sign("open run, no duct", this::open), new Sign("supply", this::supply), new Sign("return", this::back),
                new Sign("existing", this::existing), new Sign("place", this::place),
                new Sign("hot zone", this::hot), new Sign("wet zone", this::wet), new Sign("hidden edge", this::hidden),
                new Sign("place with earth point", this::earth), new Sign("place to its devices", this::leader));
        for (int i = 0; i < signs.size(); i++) {
            double left = x + i / ROWS * COLUMN_PX;
            double middle = y + i % ROWS * ROW_PX + ROW_PX / 2;
            scene.group(null, "key: " + signs.get(i).words());
            signs.get(i).sign().paint(left, middle);
            scene.text(left + SIGN_PX + 10, middle + 4, signs.get(i).words(), 12, false, Anchor.START, Role.INK2);
        }
    }

    private interface Painted {
        void paint(double x, double y);
    }

    private record Sign(String words, Painted sign) {
    }

    private void duct(double x, double y) {
        line(x, y, Stroke.solid(Role.INK2, DUCT_PX));
        line(x, y, Stroke.solid(Role.PAPER, DUCT_PX - 2));
        line(x, y, Stroke.solid(Role.FILL, DUCT_PX / 2));
        line(x, y, Stroke.solid(Role.INK, 1.25));
    }

    private void open(double x, double y) {
        line(x, y, Stroke.solid(Role.HAIR, DUCT_PX));
        line(x, y, Stroke.solid(Role.PAPER, DUCT_PX - 2));
        line(x, y, Stroke.solid(Role.INK, 1.25));
    }

    private void supply(double x, double y) {
        line(x, y, Stroke.solid(Role.INK, 1.6));
    }

    private void back(double x, double y) {
        line(x, y, Stroke.dashed(Role.INK, 1.6, 5.0, 2.5));
    }

    private void existing(double x, double y) {
        line(x, y, Stroke.solid(Role.INK3, 1.6));
    }

    private void hidden(double x, double y) {
        line(x, y, Stroke.dashed(Role.INK3, 0.75, 5.0, 3.0));
    }

    private void leader(double x, double y) {
        line(x, y, Stroke.solid(Role.INK2, 0.75));
        scene.rectangle(Fill.solid(Role.PLATE), Stroke.solid(Role.INK2, 1), x + SIGN_PX - 14, y - 6, 14, 12);
    }

    private void place(double x, double y) {
        scene.disc(Fill.solid(Role.PLATE), Stroke.solid(Role.INK, 1.25), x + SIGN_PX / 2, y, 3.5);
    }

    private void earth(double x, double y) {
        scene.disc(Fill.solid(Role.PLATE), Stroke.solid(Role.INK, 1.25), x + SIGN_PX / 2, y, 5);
        scene.disc(Fill.solid(Role.INK), null, x + SIGN_PX / 2, y, 1.8);
    }

    private void hot(double x, double y) {
        box(x, y, Fill.solid(Role.HOT), Stroke.solid(Role.INK3, 0.75));
        box(x, y, Fill.hatched(new Veil(Role.WARNING, 0.3)), null);
    }

    private void wet(double x, double y) {
        box(x, y, Fill.solid(Role.WET), Stroke.solid(Role.INK3, 0.75));
        box(x, y, Fill.dotted(new Veil(Role.SELECT, 0.45)), null);
    }

    private void box(double x, double y, Fill fill, Stroke stroke) {
        scene.rectangle(fill, stroke, x, y - 7, SIGN_PX, 14);
    }

    private void line(double x, double y, Stroke stroke) {
        scene.line(stroke, new Point(x, y), new Point(x + SIGN_PX, y));
    }
}
