// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/** What ground of a sheet is taken, while things are placed one after the other. */
final class Room {
    private final Bounds field;
    private final List<Bounds> solid = new ArrayList<>();
    private final List<Duct> ducts = new ArrayList<>();
    private final List<Segment> leaders = new ArrayList<>();
    private final List<Segment> edges = new ArrayList<>();

    /** Within a field of the sheet. */
    Room(Bounds field) {
        this.field = field;
    }

    /** The same ground, to be taken otherwise. */
    Room copy() {
        Room copy = new Room(field);
        copy.solid.addAll(solid);
        copy.ducts.addAll(ducts);
        copy.leaders.addAll(leaders);
        copy.edges.addAll(edges);
        return copy;
    }

    /** A straight line. */
    record Segment(Point a, Point b) {
        /** Far segments are told by their ends, without clipping. */
        boolean meets(Bounds ground) {
            return StrictMath.min(a.x(), b.x()) <= ground.right() && StrictMath.max(a.x(), b.x()) >= ground.left()
                    && StrictMath.min(a.y(), b.y()) <= ground.bottom() && StrictMath.max(a.y(), b.y()) >= ground.top()
                    && ground.meets(a, b);
        }

        boolean crosses(Segment other) {
            double d1 = side(other.a, other.b, a);
            double d2 = side(other.a, other.b, b);
            double d3 = side(a, b, other.a);
            double d4 = side(a, b, other.b);
            return d1 * d2 < 0 && d3 * d4 < 0;
        }

        private static double side(Point a, Point b, Point p) {
            return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
        }
    }

    private record Duct(int run, Bounds ground) {
    }

    /** Takes ground whole: devices, texts, places. */
    void take(Bounds ground) {
        solid.add(ground);
    }

    /** Takes the ground of a piece of a run's duct. */
    void takeDuct(int run, Bounds ground) {
        ducts.add(new Duct(run, ground));
    }

    /** Takes a leader's line. */
    void takeLeader(Point a, Point b) {
        leaders.add(new Segment(a, b));
    }

    /** A drawn edge of the vehicle, better not covered. */
    void edge(List<Point> closed) {
        for (int i = 0; i < closed.size(); i++) {
            edges.add(new Segment(closed.get(i), closed.get((i + 1) % closed.size())));
        }
    }

    /** True when the ground lies in the field. */
    boolean within(Bounds ground) {
        return field.holds(ground);
    }

    /** The point moved along with the ground around it as far as it takes to bring that into the field. */
    Point inside(Bounds ground, Point point) {
        double dx = StrictMath.max(0, field.left() - ground.left()) - StrictMath.max(0, ground.right() - field.right());
        double dy = StrictMath.max(0, field.top() - ground.top()) - StrictMath.max(0, ground.bottom() - field.bottom());
        return point.moved(dx, dy);
    }

    /** True when the ground lies in the field and nothing solid, no duct but those excepted and no leader is there. */
    boolean free(Bounds ground, List<Integer> exceptRuns) {
        if (!within(ground)) {
            return false;
        }
        for (Bounds taken : solid) {
            if (taken.meets(ground)) {
                return false;
            }
        }
        for (Duct duct : ducts) {
            if (duct.ground().meets(ground) && !exceptRuns.contains(duct.run())) {
                return false;
            }
        }
        for (Segment leader : leaders) {
            if (leader.meets(ground)) {
                return false;
            }
        }
        return true;
    }

    /** True when no solid ground lies on a leader's way; the ground around its own start does not count. */
    boolean clear(Point from, Point to) {
        Segment leader = new Segment(from, to);
        for (Bounds taken : solid) {
            if (leader.meets(taken) && !taken.holds(from)) {
                return false;
            }
        }
        return true;
    }

    /** How many leaders a new one would cross. */
    int leadersCrossed(Point from, Point to) {
        Segment own = new Segment(from, to);
        return (int) leaders.stream().filter(own::crosses).count();
    }

    /** How many pieces of ducts a leader would cross. */
    int ductsCrossed(Point from, Point to) {
        Segment leader = new Segment(from, to);
        return (int) ducts.stream().filter(duct -> leader.meets(duct.ground()) && !duct.ground().holds(from)).count();
    }

    /** How many drawn edges run through the ground. */
    int edgesCovered(Bounds ground) {
        int covered = 0;
        for (Segment edge : edges) {
            covered += edge.meets(ground) ? 1 : 0;
        }
        return covered;
    }

    /** True when the ground has a part of a duct, or of what is kept free around the ends of ducts. */
    boolean overDuct(Bounds ground) {
        return ducts.stream().anyMatch(duct -> duct.ground().meets(ground));
    }
}
