// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.diagram.symbol.SymbolKind;
import org.loomwright.diagram.symbol.Symbols;

/** Collects what one node shows: its shape, its texts, its badge. */
final class NodeMarks {
    private final String element;
    private final String name;
    private final List<Mark> shape = new ArrayList<>();
    private final List<Mark> texts = new ArrayList<>();
    private final List<Group> badges = new ArrayList<>();
    private Group.Kind kind = Group.Kind.NODE;

    NodeMarks(Unit unit) {
        this(unit.id(), (unit.designation() + " " + unit.label()).strip());
    }

    NodeMarks(String element, String name) {
        this.element = element;
        this.name = name;
    }

    NodeMarks line(Stroke stroke, double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        shape.add(new Mark.Line(points, stroke));
        return this;
    }

    /** A part of a device that is drawn elsewhere: it does not say where the device stands. */
    NodeMarks part() {
        kind = Group.Kind.PORT;
        return this;
    }

    NodeMarks symbol(SymbolKind kind, Role tone, double x, double y) {
        shape.addAll(Symbols.of(kind, tone).at(x, y));
        return this;
    }

    NodeMarks shapes(List<Mark> marks) {
        shape.addAll(marks);
        return this;
    }

    NodeMarks text(Mark mark) {
        if (mark instanceof Mark.Text text && !text.text().isEmpty()) {
            texts.add(text);
        }
        return this;
    }

    /** The sign of the frame with its name. */
    NodeMarks frame(double x, double y, String body, Role tone) {
        for (Mark mark : FrameStub.marks(x, y, body, tone)) {
            if (mark instanceof Mark.Text) {
                text(mark);
            } else {
                shape.add(mark);
            }
        }
        return this;
    }

    /** The badge of the worst finding with the number of findings at its right when there are several. */
    NodeMarks badge(LineFigures figures, double x, double y, double sizePx) {
        Badge worst = figures.badge(element);
        if (worst != null) {
            List<Mark> marks = new ArrayList<>(worst.marks(x, y, sizePx));
            if (figures.count(element) > 1) {
                marks.add(LineText.start(x + sizePx / 2 + 4, y + 4, String.valueOf(figures.count(element)), false, Role.INK));
            }
            badges.add(new Group(element, null, Group.Kind.BADGE, marks));
        }
        return this;
    }

    /** A badge of a part of the node. */
    NodeMarks badgeOf(String part, List<Mark> more) {
        badges.add(new Group(part, null, Group.Kind.BADGE, more));
        return this;
    }

    List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        groups.add(new Group(element, name, kind, shape));
        groups.add(new Group(element, null, Group.Kind.LABEL, texts));
        groups.addAll(badges);
        return groups.stream().filter(group -> !group.marks().isEmpty()).toList();
    }
}
