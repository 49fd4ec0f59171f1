// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.List;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.symbol.DeviceSymbols;
import org.loomwright.diagram.symbol.SymbolKind;
import org.loomwright.diagram.symbol.Symbols;

/** Devices that no supply wire reaches yet, or that lie in the return only, in rows below the drawing. */
final class IdleRow {
    private static final double CELL_W = 210;
    private static final double CELL_H = 46;
    private final Drafting drafting;
    private final List<Unit> units;
    private final int columns;

    IdleRow(Drafting drafting, List<Unit> units, double widthPx) {
        this.drafting = drafting;
        this.units = units.stream().filter(unit -> drafting.terminals(unit).stream()
                .noneMatch(name -> !drafting.content().at(LineContent.key(unit, name)).isEmpty())).toList();
        columns = (int) StrictMath.max(1, StrictMath.floor(widthPx / CELL_W));
    }

    double height() {
        return units.isEmpty() ? 0 : 24 + CELL_H * StrictMath.ceil(units.size() / (double) columns);
    }

    void paint(SceneBuilder scene, double left, double top) {
        if (units.isEmpty()) {
            return;
        }
        scene.group(Group.Kind.LABEL, null, null).text(left, top + 6, "Not connected", 13, true,
                org.loomwright.diagram.scene.Mark.Anchor.START, Role.INK2);
        for (int i = 0; i < units.size(); i++) {
            Unit unit = units.get(i);
            double x = left + CELL_W * (i % columns);
            double y = top + 42 + CELL_H * StrictMath.floor(i / (double) columns);
            SymbolKind kind = DeviceSymbols.of(unit.part());
            scene.group(Group.Kind.NODE, unit.id(), (unit.designation() + " " + unit.label()).strip())
                    .marks(Symbols.of(kind, Role.INK).at(x + 20, y));
            scene.group(Group.Kind.LABEL, unit.id(), null)
                    .mark(LineText.start(x + 44, y - 3, unit.designation(), true, Role.INK));
            if (!unit.label().isEmpty()) {
                scene.mark(LineText.start(x + 44, y + 12,
                        LineText.fitted(drafting.measure(), unit.label(), false, CELL_W - 54), false,
                        Role.INK2));
            }
            var badge = drafting.figures().badge(unit.id());
            if (badge != null) {
                scene.group(Group.Kind.BADGE, unit.id(), null).marks(badge.marks(
                        x + 60 + LineText.width(drafting.measure(), unit.designation(), true), y - 8, 16));
            }
        }
    }
}
