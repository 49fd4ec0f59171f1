// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.loomwright.diagram.layout.LayoutNode;
import org.loomwright.diagram.layout.LayoutPort;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.symbol.SymbolKind;

/** A post or splice of one terminal: a joint of lines with its designation. */
final class JointDrawing {
    private JointDrawing() {
    }

    static LineNode node(Drafting drafting, Unit unit) {
        Role tone = drafting.tone(unit);
        NodeMarks marks = new NodeMarks(unit);
        double text = LineText.width(drafting.measure(), unit.designation(), true);
        boolean badge = drafting.figures().studied();
        double width = StrictMath.ceil((text + (badge ? 40 : 10)) / 10) * 10;
        double y = 24;
        List<LayoutPort> ports = new ArrayList<>();
        for (String terminal : drafting.terminals(unit)) {
            String key = LineContent.key(unit, terminal);
            Stroke lead = drafting.lead(unit, terminal);
            if (!drafting.flow().into(key).isEmpty()) {
                marks.line(lead, 0, y, width / 2, y);
                ports.add(drafting.leftPort(key, y));
            }
            if (!drafting.flow().outOf(key).isEmpty()) {
                marks.line(lead, width / 2, y, width, y);
                ports.add(drafting.rightPort(key, width, y));
            }
        }
        marks.symbol(SymbolKind.JUNCTION, tone, width / 2, y).text(LineText.start(4, 14, unit.designation(), true, tone))
                .badge(drafting.figures(), text + 18, 8, 16);
        drafting.terminals(unit).stream().map(name -> drafting.figures().terminalV(LineContent.key(unit, name)))
                .filter(OptionalDouble::isPresent).findFirst().ifPresent(volts -> marks.text(LineText.start(4, y + 18,
                        LineText.volts(volts.getAsDouble()), false, tone)));
        boolean fed = !drafting.inlets(unit).isEmpty();
        return new LineNode(unit.id(), unit.id(), width, drafting.figures().live() ? 46 : 34, ports,
                fed ? LayoutNode.Column.ANY : LayoutNode.Column.FIRST,
                marks.groups());
    }
}
