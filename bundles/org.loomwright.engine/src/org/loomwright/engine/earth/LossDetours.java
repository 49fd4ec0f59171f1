// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.NetworkIndex.Owner;
import org.loomwright.engine.earth.LossCase.Detour;
import org.loomwright.engine.heat.ConductorRating;

/** Where the current goes once a strap is lost: what carries more than before, and the widest way round. */
final class LossDetours {
    /** Rises below this share of what the strap carried are not told. */
    private static final double TOLD = 0.01;

    private final Plan plan;
    private final PlanItems items;
    private final EarthNetwork before;
    private final EarthNetwork after;
    private final List<ConductorRating> ratings;
    private final double toldA;

    LossDetours(Plan plan, PlanItems items, EarthNetwork before, EarthNetwork after, List<ConductorRating> ratings,
            double carriedA) {
        this.plan = plan;
        this.items = items;
        this.before = before;
        this.after = after;
        this.ratings = ratings;
        toldA = TOLD * carriedA;
    }

    /** All that carry more than before, the largest rise first. */
    List<Detour> all() {
        List<Detour> found = new ArrayList<>();
        for (int item = 0; item < after.index().network().items().size(); item++) {
            Owner owner = after.index().owner(item);
            if (owner != null && after.index().passes(item)) {
                Detour detour = detour(owner, item);
                if (detour.afterA() > detour.beforeA() + toldA) {
                    found.add(detour);
                }
            }
        }
        found.sort((a, b) -> Double.compare(b.afterA() - b.beforeA(), a.afterA() - a.beforeA()));
        return found;
    }

    /**
     * The way from one end of a lost bond to the other, in the direction of its current, along which the least rise of current
     * is as large as can be; empty when no such way carries anything worth telling.
     */
    List<Detour> path(int bond) {
        Plan.Bond lost = plan.bonds().get(bond);
        int[] terminalNode = after.solved().at().terminalNode();
        boolean forward = before.solved().itemA(before.solved().at().bondItem()[bond]) >= 0;
        int from = terminalNode[forward ? lost.a() : lost.b()];
        int to = terminalNode[forward ? lost.b() : lost.a()];
        int[] by = widest(from, to);
        List<Detour> path = new ArrayList<>();
        for (int node = to; node != from && by[node] >= 0; node = after.other(by[node], node)) {
            Owner owner = after.index().owner(by[node]);
            if (owner != null) {
                path.add(detour(owner, by[node]));
            }
        }
        Collections.reverse(path);
        return path;
    }

    private int[] widest(int from, int to) {
        int[] by = new int[after.nodes()];
        Arrays.fill(by, -1);
        double[] width = new double[after.nodes()];
        boolean[] done = new boolean[after.nodes()];
        width[from] = Double.POSITIVE_INFINITY;
        for (int node = from; node >= 0 && node != to; node = largest(width, done)) {
            done[node] = true;
            for (int item : after.index().itemsAt(node)) {
                if (after.passes(item)) {
                    int other = after.other(item, node);
                    double wide = StrictMath.min(width[node], riseA(item, node));
                    if (!done[other] && wide > toldA && wide > width[other]) {
                        width[other] = wide;
                        by[other] = item;
                    }
                }
            }
        }
        return by;
    }

    private static int largest(double[] width, boolean[] done) {
        int best = -1;
        for (int node = 0; node < width.length; node++) {
            if (!done[node] && width[node] > 0 && (best < 0 || width[node] > width[best])) {
                best = node;
            }
        }
        return best;
    }

    /** Rise of the current that leaves a node through an item, A. */
    private double riseA(int item, int node) {
        Owner owner = after.index().owner(item);
        double rise = after.solved().itemA(item) - (owner == null ? 0 : beforeA(owner));
        return after.ends(item)[0] == node ? rise : -rise;
    }

    private double beforeA(Owner owner) {
        return before.solved().itemA(PlanItems.item(before.solved().at(), owner));
    }

    private Detour detour(Owner owner, int item) {
        return new Detour(owner.kind(), owner.index(), items.id(owner), StrictMath.abs(beforeA(owner)),
                StrictMath.abs(after.solved().itemA(item)), items.ratedA(owner, ratings));
    }
}
