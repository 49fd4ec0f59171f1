// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.Collection;
import java.util.OptionalDouble;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;

/** The column of names, volts, amps and drops at the right of the loads. */
final class LoadColumn {
    private static final double VOLTS_X = 60;
    private static final double AMPS_X = 116;
    private static final double DROP_X = 172;
    private static final double NAME_ROOM = 200;
    private final Drafting drafting;

    LoadColumn(Drafting drafting) {
        this.drafting = drafting;
    }

    double width(Collection<String> loads) {
        double width = drafting.figures().live() ? DROP_X : 0;
        for (String id : loads) {
            Unit unit = drafting.content().units().get(id);
            width = StrictMath.max(width, LineText.width(drafting.measure(), unit.designation(), true) + 8
                    + LineText.width(drafting.measure(), label(unit), false));
        }
        return width;
    }

    double titleWidth(String title) {
        return drafting.measure().widthPx(title, 13, true);
    }

    /** Heads of the figures. */
    void heads(SceneBuilder scene, double x, double y) {
        if (drafting.figures().live()) {
            head(scene, "V", x + VOLTS_X, y);
            head(scene, "A", x + AMPS_X, y);
            head(scene, "drop %", x + DROP_X, y);
        }
    }

    private static void head(SceneBuilder scene, String text, double x, double y) {
        scene.text(x, y, text, 13, false, Mark.Anchor.END, Role.INK2);
    }

    private String label(Unit unit) {
        return LineText.fitted(drafting.measure(), unit.label(), false, NAME_ROOM);
    }

    /** The lines of one load around the height of its row. */
    void row(SceneBuilder scene, Unit unit, double x, double y) {
        boolean live = drafting.figures().live();
        OptionalDouble amps = drafting.figures().loadA(unit.id());
        boolean flows = amps.isPresent() && StrictMath.abs(amps.getAsDouble()) > Drafting.NOTHING_A;
        boolean on = drafting.figures().loadOn(unit.id());
        Role tone = live && !on ? Role.INK3 : Role.INK;
        double name = live ? y - 4 : y + 4;
        scene.group(Group.Kind.LABEL, unit.id(), null);
        scene.mark(LineText.start(x, name, unit.designation(), true, tone));
        if (!unit.label().isEmpty()) {
            scene.mark(LineText.start(x + LineText.width(drafting.measure(), unit.designation(), true) + 8,
                    name, label(unit), false, tone == Role.INK ? Role.INK2 : tone));
        }
        if (live && on && flows) {
            figure(scene, drafting.figures().loadV(unit.id()), x + VOLTS_X, y + 12);
            figure(scene, amps, x + AMPS_X, y + 12);
            figure(scene, drafting.figures().loadDropPercent(unit.id()), x + DROP_X, y + 12);
        } else if (live) {
            double waiting = drafting.figures().waitingA(unit.id());
            scene.mark(LineText.start(x, y + 12, on ? "on, but gets nothing"
                    : waiting > Drafting.NOTHING_A ? "on standby, " + LineText.figure(waiting) + " A" : "off", false, tone));
        }
    }

    private static void figure(SceneBuilder scene, OptionalDouble value, double x, double y) {
        if (value.isPresent()) {
            scene.mark(LineText.text(x, y, LineText.figure(value.getAsDouble()), false, Mark.Anchor.END, Role.INK));
        }
    }
}
