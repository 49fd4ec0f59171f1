// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.ArrayList;
import java.util.List;

/** Collects marks into the groups of a {@link Scene}; used by one thread and thrown away. */
public final class SceneBuilder {
    private final String title;
    private final double widthPx;
    private final double heightPx;
    private final List<Group> groups = new ArrayList<>();
    private List<Mark> marks = new ArrayList<>();
    private Group.Kind kind = Group.Kind.GROUND;
    private String element;
    private String name;

    /** A scene of a size. */
    public SceneBuilder(String title, double widthPx, double heightPx) {
        this.title = title;
        this.widthPx = widthPx;
        this.heightPx = heightPx;
    }

    /** Begins a group; the one before it ends. It is an overlay when it stands for an element, else ground. */
    public SceneBuilder group(String elementId, String groupName) {
        return group(elementId == null ? Group.Kind.GROUND : Group.Kind.OVERLAY, elementId, groupName);
    }

    /** Begins a group; the one before it ends. */
    public SceneBuilder group(Group.Kind groupKind, String elementId, String groupName) {
        close();
        kind = groupKind;
        element = elementId;
        name = groupName;
        return this;
    }

    /** Adds a whole group; the one before it ends. */
    public SceneBuilder add(Group group) {
        close();
        element = null;
        name = null;
        kind = Group.Kind.GROUND;
        if (!group.marks().isEmpty()) {
            groups.add(group);
        }
        return this;
    }

    /** Adds a mark. */
    public SceneBuilder mark(Mark mark) {
        marks.add(mark);
        return this;
    }

    /** Adds marks, for example those of a symbol. */
    public SceneBuilder marks(List<? extends Mark> more) {
        marks.addAll(more);
        return this;
    }

    /** Adds a line. */
    public SceneBuilder line(Stroke stroke, Point... points) {
        marks.add(new Mark.Line(List.of(points), stroke));
        return this;
    }

    /** Adds a line. */
    public SceneBuilder line(Stroke stroke, List<Point> points) {
        marks.add(new Mark.Line(points, stroke));
        return this;
    }

    /** Adds a closed area. */
    public SceneBuilder area(Fill fill, Stroke stroke, List<Point> points) {
        marks.add(new Mark.Area(points, fill, stroke));
        return this;
    }

    /** Adds a rectangle. */
    public SceneBuilder rectangle(Fill fill, Stroke stroke, double x, double y, double width, double height) {
        return area(fill, stroke, List.of(new Point(x, y), new Point(x + width, y), new Point(x + width, y + height),
                new Point(x, y + height)));
    }

    /** Adds a circle. */
    public SceneBuilder disc(Fill fill, Stroke stroke, double x, double y, double radiusPx) {
        marks.add(new Mark.Disc(new Point(x, y), radiusPx, fill, stroke));
        return this;
    }

    /** Adds a text. */
    public SceneBuilder text(double x, double y, String text, double sizePx, boolean bold, Mark.Anchor anchor, Tone tone) {
        marks.add(new Mark.Text(new Point(x, y), text, sizePx, bold, anchor, tone));
        return this;
    }

    /** Adds a text on a plate. */
    public SceneBuilder platedText(double x, double y, String text, double sizePx, boolean bold, Mark.Anchor anchor, Tone tone) {
        marks.add(new Mark.Text(new Point(x, y), text, sizePx, bold, anchor, tone, true));
        return this;
    }

    /** The scene. */
    public Scene build() {
        close();
        return new Scene(title, widthPx, heightPx, groups);
    }

    private void close() {
        if (!marks.isEmpty()) {
            groups.add(new Group(element, name, kind, marks));
            marks = new ArrayList<>();
        }
    }
}
