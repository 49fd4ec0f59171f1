// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;

/**
 * Finds free ground for the devices of each spot: on the spot where a run ends there, else as near as nothing is covered, with a
 * leader. The largest are placed first; the same input gives the same sheet.
 */
final class SeatPlanner {
    private static final int DIRECTIONS = 32;
    private static final double[] RINGS = {16, 26, 38, 54, 74, 98, 126, 160, 200, 250, 310, 380, 460, 560, 680, 820};
    private static final double LEADER_CROSSED = 90;
    private static final double DUCT_CROSSED = 34;
    private static final double EDGE_COVERED = 30;
    private static final double EDGE_UNDER_TEXT = 120;
    private static final double SLANTED = 16;
    /** A form that would lie on what is taken gives way to every other. */
    private static final double TAKEN = 10_000;
    private final Room room;

    SeatPlanner(Room room) {
        this.room = room;
    }

    /**
     * Devices that want a seat.
     *
     * @param anchor  their spot
     * @param forms   forms to choose from
     * @param ownRuns runs that end at the spot; none may run through a plate, but one may end under it
     * @param chosen  where a person wants the middle of the plate; null to let it be found
     * @param bends   bends of the leader that a person chose; empty for none
     */
    record Wish(Point anchor, List<SeatForm> forms, List<Integer> ownRuns, Point chosen, List<Point> bends) {
    }

    /**
     * The seats in the order of the wishes; null for what found no ground. What a person chose comes first, and is taken whatever
     * lies there.
     *
     * @param first wishes to be met before all others that are to be found
     */
    List<Seat> seats(List<Wish> wishes, Set<Integer> first) {
        List<Seat> seats = new ArrayList<>();
        wishes.forEach(wish -> seats.add(null));
        List<Integer> order = IntStream.range(0, wishes.size()).boxed()
                .sorted(Comparator.comparing((Integer w) -> wishes.get(w).chosen() == null).thenComparing(w -> !first.contains(w)).thenComparing(w -> -area(wishes.get(w)))
                        .thenComparing(w -> w)).toList();
        for (int w : order) {
            Seat seat = wishes.get(w).chosen() == null ? seat(wishes.get(w)) : chosen(wishes.get(w));
            if (seat != null) {
                seats.set(w, seat);
                room.take(seat.form().all());
                for (int i = 1; i < seat.leader().size(); i++) {
                    room.takeLeader(seat.leader().get(i - 1), seat.leader().get(i));
                }
            }
        }
        return seats;
    }

    private static double area(Wish wish) {
        Bounds all = wish.forms().get(0).all();
        return all.width() * all.height();
    }

    /** Where a person wants it, at the edge of the field where that is beyond, in a form that has free ground there if one has. */
    private Seat chosen(Wish wish) {
        Best best = new Best();
        for (SeatForm form : wish.forms()) {
            Point middle = room.inside(form.all().moved(wish.chosen().x(), wish.chosen().y()), wish.chosen());
            SeatForm there = form.moved(middle.x(), middle.y());
            if (room.within(there.all())) {
                Point end = onto(wish.bends().isEmpty() ? wish.anchor() : wish.bends().get(wish.bends().size() - 1), there.plate());
                List<Point> leader = new ArrayList<>(List.of(wish.anchor()));
                leader.addAll(wish.bends());
                leader.add(end);
                boolean on = wish.bends().isEmpty() && there.plate().holds(wish.anchor());
                best.offer(new Seat(wish.anchor(), there, on ? List.of() : leader), form.cost()
                        + (room.free(there.all(), wish.ownRuns()) ? 0 : TAKEN) + EDGE_COVERED * room.edgesCovered(there.plate())
                        + underText(there));
            }
        }
        return best.seat;
    }

    private static Point onto(Point from, Bounds plate) {
        return new Point(clamped(from.x(), plate.left(), plate.right()), clamped(from.y(), plate.top(), plate.bottom()));
    }

    private Seat seat(Wish wish) {
        Best best = new Best();
        if (wish.ownRuns().size() <= 1) {
            for (SeatForm form : wish.forms()) {
                SeatForm here = form.moved(wish.anchor().x(), wish.anchor().y());
                if (room.free(here.all(), wish.ownRuns())) {
                    best.offer(new Seat(wish.anchor(), here, List.of()),
                            form.cost() + EDGE_COVERED / 2 * room.edgesCovered(here.plate()) + underText(here));
                }
            }
        }
        for (double ring : RINGS) {
            if (best.cost <= ring) {
                break;
            }
            for (int d = 0; d < DIRECTIONS; d++) {
                double angle = 2 * StrictMath.PI * d / DIRECTIONS;
                for (SeatForm form : wish.forms()) {
                    if (form.cost() + ring < best.cost) {
                        offer(wish, form, StrictMath.cos(angle), StrictMath.sin(angle), ring, best);
                    }
                }
            }
        }
        return best.seat;
    }

    private void offer(Wish wish, SeatForm form, double dx, double dy, double ring, Best best) {
        Point anchor = wish.anchor();
        Bounds plate = form.plate();
        double reach = ring + StrictMath.min(dx == 0 ? Double.MAX_VALUE : plate.width() / 2 / StrictMath.abs(dx),
                dy == 0 ? Double.MAX_VALUE : plate.height() / 2 / StrictMath.abs(dy));
        SeatForm there = form.moved(anchor.x() + dx * reach, anchor.y() + dy * reach);
        if (!room.free(there.all(), List.of())) {
            return;
        }
        Point end = onto(anchor, there.plate());
        boolean ownText = there.texts().stream().anyMatch(text -> text.device() >= 0) && form.cells().size() == 1
                && coversText(there, anchor, end);
        if (ownText || !room.clear(anchor, end)) {
            return;
        }
        double slant = StrictMath.abs(anchor.x() - end.x()) > 1 && StrictMath.abs(anchor.y() - end.y()) > 1 ? SLANTED : 0;
        double cost = form.cost() + ring + slant + LEADER_CROSSED * room.leadersCrossed(anchor, end)
                + DUCT_CROSSED * room.ductsCrossed(anchor, end);
        if (cost < best.cost) {
            best.offer(new Seat(anchor, there, List.of(anchor, end)), cost + EDGE_COVERED * room.edgesCovered(there.plate())
                    + (there.cells().size() == 1 ? underText(there) : 0));
        }
    }

    /** What edges under the texts beside a plate cost. */
    private double underText(SeatForm form) {
        return room.edgesCovered(form.all()) == 0 ? 0
                : EDGE_UNDER_TEXT * aside(form).stream().filter(ground -> room.edgesCovered(ground) > 0).count();
    }

    /** The leader would run over the texts beside the plate. */
    private static boolean coversText(SeatForm form, Point from, Point to) {
        return aside(form).stream().anyMatch(ground -> ground.width() > 5 && ground.height() > 5 && ground.meets(from, to));
    }

    /** Ground of a form outside its plate, where its texts are. */
    private static List<Bounds> aside(SeatForm form) {
        Bounds all = form.all();
        Bounds plate = form.plate();
        return List.of(new Bounds(all.left(), all.top(), plate.left(), all.bottom()),
                new Bounds(plate.right(), all.top(), all.right(), all.bottom()),
                new Bounds(all.left(), all.top(), all.right(), plate.top()),
                new Bounds(all.left(), plate.bottom(), all.right(), all.bottom()));
    }

    private static double clamped(double value, double least, double most) {
        return StrictMath.min(most, StrictMath.max(least, value));
    }

    private static final class Best {
        private Seat seat;
        private double cost = Double.POSITIVE_INFINITY;

        void offer(Seat candidate, double candidateCost) {
            if (candidateCost < cost) {
                seat = candidate;
                cost = candidateCost;
            }
        }
    }
}
