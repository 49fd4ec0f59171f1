// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.symbol.DeviceSymbols;
import org.loomwright.diagram.symbol.Symbol;
import org.loomwright.diagram.symbol.Symbols;

/** Devices on their plates, with leaders to their spots. */
final class SeatPainter {
    /** Size of symbols in plans. */
    private static final double SYMBOL_SCALE = 0.9;
    private static final double WIDEST_PX = 36;
    private static final double TALLEST_PX = 28;
    private static final Stroke LEADER = Stroke.solid(Role.INK2, 0.75);
    private final PlanContent content;
    private final Room room;
    private final SceneBuilder scene;
    private final TextMeasure type;

    SeatPainter(PlanContent content, Room room, SceneBuilder scene, TextMeasure type) {
        this.content = content;
        this.room = room;
        this.type = type;
        this.scene = scene;
    }

    void leader(Seat seat) {
        if (!seat.leader().isEmpty()) {
            scene.group(Group.Kind.EDGE, content.devices().get(seat.form().cells().get(0).device()).id(), "leader");
            scene.line(LEADER, seat.leader());
        }
    }

    void devices(Seat seat) {
        SeatForm form = seat.form();
        boolean several = form.cells().size() > 1;
        if (several) {
            scene.group(Group.Kind.GROUND, null, PlanScale.TRAY);
            plate(form.plate(), Stroke.solid(Role.INK2, 1));
        }
        for (SeatForm.Cell cell : form.cells()) {
            PlanContent.Device device = content.devices().get(cell.device());
            Role tone = device.existing() ? Role.INK3 : Role.INK;
            scene.group(Group.Kind.NODE, device.id(),
                    ("device -" + device.designation() + " " + device.label()).strip() + (device.existing() ? ", existing" : ""));
            if (several) {
                plate(cell.ground(), null);
            } else {
                plate(cell.ground(), Stroke.solid(tone, 1.25));
            }
            scene.marks(symbol(device, cell.symbol(), tone));
        }
        for (SeatForm.Text text : form.texts()) {
            String id = text.device() < 0 ? null : content.devices().get(text.device()).id();
            scene.group(Group.Kind.LABEL, id, text.mark().text());
            scene.mark(overEdge(text.mark(), form.plate()) ? plated(text.mark()) : text.mark());
        }
    }

    private boolean overEdge(Mark.Text text, Bounds plate) {
        Bounds ground = type.bounds(text);
        return !plate.holds(ground) && (room.edgesCovered(ground) > 0 || room.overDuct(ground));
    }

    private static Mark.Text plated(Mark.Text text) {
        return new Mark.Text(text.at(), text.text(), text.sizePx(), text.bold(), text.anchor(), text.tone(), true);
    }

    /** The symbol in the size of plans, smaller where it would leave its plate. */
    private static List<Mark> symbol(PlanContent.Device device, Point middle, Role tone) {
        Symbol symbol = Symbols.of(DeviceSymbols.of(device.kind()), tone);
        Bounds bounds = symbol.bounds();
        double scale = StrictMath.min(SYMBOL_SCALE, StrictMath.min(WIDEST_PX / bounds.width(), TALLEST_PX / bounds.height()));
        return symbol.at(middle.x() - scale * bounds.centre().x(), middle.y() - scale * bounds.centre().y(), scale);
    }

    private void plate(Bounds at, Stroke stroke) {
        scene.rectangle(Fill.solid(Role.PLATE), stroke, at.left(), at.top(), at.width(), at.height());
    }
}
