// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Finds what lies at a point of a scene, by a grid of squares, so that a look-up does not go through the whole scene. Groups
 * without an element and the ground are not found.
 */
public final class HitIndex {
    private static final double CELL_PX = 64;

    private final Scene scene;
    private final TextMeasure type;
    private final int columns;
    private final int rows;
    private final Map<Integer, int[]> cells = new LinkedHashMap<>();
    private final Map<String, List<Group>> byElement = new LinkedHashMap<>();
    private final Map<String, Bounds> bounds = new LinkedHashMap<>();

    private HitIndex(Scene scene, TextMeasure type) {
        this.scene = scene;
        this.type = type;
        columns = 1 + (int) (scene.widthPx() / CELL_PX);
        rows = 1 + (int) (scene.heightPx() / CELL_PX);
    }

    /** The index of a scene. */
    public static HitIndex of(Scene scene, TextMeasure type) {
        HitIndex index = new HitIndex(scene, type);
        for (int g = 0; g < scene.groups().size(); g++) {
            Group group = scene.groups().get(g);
            if (group.element() != null && group.kind() != Group.Kind.GROUND) {
                index.add(g, group);
            }
        }
        return index;
    }

    private void add(int g, Group group) {
        byElement.computeIfAbsent(group.element(), id -> new ArrayList<>()).add(group);
        for (Mark mark : group.marks()) {
            Bounds room = type.bounds(mark);
            bounds.merge(group.element(), room, (a, b) -> a.with(b));
            cells(g, room);
        }
        if (group.kind() == Group.Kind.NODE && group.shape() != null) {
            cells(g, group.shape());
        }
    }

    private void cells(int g, Bounds room) {
        for (int row = row(room.top()); row <= row(room.bottom()); row++) {
            for (int column = column(room.left()); column <= column(room.right()); column++) {
                cells.merge(row * columns + column, new int[] {g}, HitIndex::joined);
            }
        }
    }

    private static int[] joined(int[] known, int[] more) {
        if (known[known.length - 1] == more[0]) {
            return known;
        }
        int[] all = Arrays.copyOf(known, known.length + 1);
        all[known.length] = more[0];
        return all;
    }

    private int row(double y) {
        return (int) StrictMath.min(rows - 1, StrictMath.max(0, y / CELL_PX));
    }

    private int column(double x) {
        return (int) StrictMath.min(columns - 1, StrictMath.max(0, x / CELL_PX));
    }

    /**
     * What is there.
     *
     * @param element id
     * @param kind    what part of it is there
     */
    public record Hit(String element, Group.Kind kind) {
    }

    /**
     * What lies at a point: a badge before a terminal, before what is painted last among nodes and labels that hold the point; an
     * edge within the tolerance, the nearest, before the nodes that were painted earlier than it. Where there is nothing of all
     * that,
     * the smallest node around the point: symbols are made of lines with air between.
     *
     * @param at        point of the sheet
     * @param toleranceScreenPx how far from a line or terminal still counts, screen px
     * @param viewport  how large the sheet is shown
     * @return null for nothing
     */
    public Hit at(Point at, double toleranceScreenPx, Viewport viewport) {
        return at(at, toleranceScreenPx, viewport, id -> true);
    }

    /** What lies at a point, of the elements that are wanted; see {@link #at(Point, double, Viewport)}. */
    public Hit at(Point at, double toleranceScreenPx, Viewport viewport, Predicate<String> wanted) {
        double reach = toleranceScreenPx / viewport.scale();
        Bounds near = Bounds.around(at, reach);
        Group badge = null;
        Group port = null;
        Group edge = null;
        Group area = null;
        Group around = null;
        int edgeOrder = -1;
        int areaOrder = -1;
        double edgePx = Double.POSITIVE_INFINITY;
        double portPx = Double.POSITIVE_INFINITY;
        for (int g : candidates(near)) {
            Group group = scene.groups().get(g);
            if (!wanted.test(group.element())) {
                continue;
            }
            double px = distance(group, at);
            switch (group.kind()) {
                case BADGE -> badge = px == 0 ? group : badge;
                case PORT -> {
                    if (px <= reach && px <= portPx) {
                        port = group;
                        portPx = px;
                    }
                }
                case EDGE -> {
                    if (px <= reach && px <= edgePx) {
                        edge = group;
                        edgePx = px;
                        edgeOrder = g;
                    }
                }
                case NODE, LABEL, OVERLAY -> {
                    if (px == 0) {
                        area = group;
                        areaOrder = g;
                    }
                    around = group.kind() == Group.Kind.NODE && holds(group, at) ? smaller(around, group) : around;
                }
                case GROUND -> {
                }
            }
        }
        Group found = badge != null ? badge
                : port != null ? port
                : edge != null && (area == null || area.kind() == Group.Kind.OVERLAY || edgeOrder > areaOrder) ? edge
                : area != null ? area : around;
        return found == null ? null : new Hit(found.element(), found.kind());
    }

    private static boolean holds(Group node, Point at) {
        return node.shape() != null && node.shape().holds(at);
    }

    private static Group smaller(Group a, Group b) {
        return a == null || b.shape().width() * b.shape().height() < a.shape().width() * a.shape().height() ? b : a;
    }

    /** Elements whose nodes and edges lie wholly in a rectangle. */
    public Set<String> inside(Bounds rectangle) {
        Set<String> found = new LinkedHashSet<>();
        for (int g : candidates(rectangle)) {
            Group group = scene.groups().get(g);
            if (group.kind() == Group.Kind.NODE || group.kind() == Group.Kind.EDGE) {
                found.add(group.element());
            }
        }
        found.removeIf(id -> !byElement.get(id).stream().filter(group -> group.kind() == Group.Kind.NODE
                || group.kind() == Group.Kind.EDGE).allMatch(group -> rectangle.holds(group.shape() == null ? rectangle
                        : group.shape())));
        return found;
    }

    /** Elements of which something lies in a rectangle. */
    public Set<String> touched(Bounds rectangle) {
        Set<String> found = new LinkedHashSet<>();
        for (int g : candidates(rectangle)) {
            Group group = scene.groups().get(g);
            if (group.marks().stream().anyMatch(mark -> meets(mark, rectangle))) {
                found.add(group.element());
            }
        }
        return found;
    }

    /** All elements that are drawn. */
    public Set<String> elements() {
        return Collections.unmodifiableSet(byElement.keySet());
    }

    /** The scene. */
    public Scene scene() {
        return scene;
    }

    /** Metrics of the typeface the scene is painted with. */
    public TextMeasure measure() {
        return type;
    }

    /** The groups of an element, in the order of painting. */
    public List<Group> groups(String element) {
        return List.copyOf(byElement.getOrDefault(element, List.of()));
    }

    /** The room of an element's own shape, without labels, lines and badges; null when it has none. */
    public Bounds shape(String element) {
        Bounds room = null;
        for (Group.Kind kind : new Group.Kind[] {Group.Kind.NODE, Group.Kind.PORT}) {
            for (Group group : byElement.getOrDefault(element, List.of())) {
                if (group.kind() == kind && group.shape() != null) {
                    room = group.shape().with(room);
                }
            }
            if (room != null) {
                return room;
            }
        }
        return null;
    }

    /** The lines of an edge, in the order of painting. */
    public List<List<Point>> lines(String element) {
        List<List<Point>> lines = new ArrayList<>();
        for (Group group : byElement.getOrDefault(element, List.of())) {
            for (Mark mark : group.kind() == Group.Kind.EDGE ? group.marks() : List.<Mark>of()) {
                if (mark instanceof Mark.Line line) {
                    lines.add(line.points());
                }
            }
        }
        return lines;
    }

    /** The room an element takes with its labels; null when it is not drawn. */
    public Bounds bounds(String element) {
        return bounds.get(element);
    }

    /** The room elements take together; null when none is drawn. */
    public Bounds bounds(Set<String> elements) {
        Bounds all = null;
        for (String element : elements) {
            Bounds room = bounds.get(element);
            all = room == null ? all : room.with(all);
        }
        return all;
    }

    private Set<Integer> candidates(Bounds area) {
        Set<Integer> found = new TreeSet<>();
        for (int row = row(area.top()); row <= row(area.bottom()); row++) {
            for (int column = column(area.left()); column <= column(area.right()); column++) {
                for (int g : cells.getOrDefault(row * columns + column, new int[0])) {
                    found.add(g);
                }
            }
        }
        return found;
    }

    private boolean meets(Mark mark, Bounds rectangle) {
        if (mark instanceof Mark.Line line) {
            for (int i = 1; i < line.points().size(); i++) {
                if (rectangle.meets(line.points().get(i - 1), line.points().get(i))) {
                    return true;
                }
            }
            return false;
        }
        return type.bounds(mark).meets(rectangle);
    }

    /** Distance of a point from a group, px; 0 within an area, circle or text, or on a line. */
    private double distance(Group group, Point at) {
        double least = Double.POSITIVE_INFINITY;
        for (Mark mark : group.marks()) {
            double px;
            if (mark instanceof Mark.Line line) {
                px = Segments.distance(line.points(), at) - line.stroke().widthPx() / 2;
            } else if (mark instanceof Mark.Disc disc) {
                px = disc.centre().distance(at) - disc.radiusPx();
            } else {
                px = type.bounds(mark).distance(at);
            }
            least = StrictMath.min(least, StrictMath.max(0, px));
        }
        return least;
    }
}
