// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.DropBreakdown.Part;
import org.loomwright.engine.check.DropBreakdown.Share;

/** The drop of each load in each case, after the design's definition, against what the practice permits. */
final class LoadDrops {
    /** Currents closer than this share of the load's count as the load's alone. */
    private static final double SAME_CURRENT = 1e-6;

    private final CheckContext context;
    private final PartWords words;
    private final Map<SolvedCase, CurrentPaths> paths = new IdentityHashMap<>();

    LoadDrops(CheckContext context) {
        this.context = context;
        words = new PartWords(context.plan(), context.names());
    }

    /**
     * The drop of a load in a case.
     *
     * @param nominalV nominal voltage of its domain, V
     * @param limit    permitted share of it
     */
    record LoadDrop(SolvedCase solved, DropBreakdown breakdown, double nominalV, double share, double limit, String limitName) {
    }

    /** The drop, or null when the load is off or not supplied in the case or belongs to no domain. */
    LoadDrop of(SolvedCase solved, int demand) {
        Plan plan = context.plan();
        Plan.Demand load = (Plan.Demand) plan.elements().get(demand);
        int domain = context.nets().nets().get(context.nets().netOf()[load.a()]).domain();
        if (domain < 0 || solved.design().at().elementItem()[demand] < 0) {
            return null;
        }
        DropBreakdown breakdown = DropBreakdown.of(plan, context.names(), solved.design(),
                paths.computeIfAbsent(solved, s -> CurrentPaths.of(plan, s.design())), demand);
        if (breakdown == null) {
            return null;
        }
        double nominalV = plan.domains().get(domain).nominalV();
        Practice.Limit limit = context.practice().limit(limitName(load));
        return new LoadDrop(solved, breakdown, nominalV, breakdown.dropV() / nominalV, limit.value(), limit.name());
    }

    /** Name of the limit that holds for a load. */
    static String limitName(Plan.Demand load) {
        return load.critical() ? "drop-class.critical" : "drop-class.other";
    }

    /** Words for what makes up a drop. */
    PartWords words() {
        return words;
    }

    /** Ids of the cables on the way that carry no other current than the load's. */
    static Set<String> ownCables(DropBreakdown parts, double loadA) {
        Set<String> own = new LinkedHashSet<>();
        Set<String> shared = new LinkedHashSet<>();
        for (Share share : parts.shares()) {
            if (share.part() == Part.CABLE) {
                boolean alone = StrictMath.abs(share.amps() - loadA) <= SAME_CURRENT * loadA;
                (alone ? own : shared).add(share.element());
            }
        }
        own.removeAll(shared);
        return own;
    }

    /** Volts lost in the cables that carry this load alone. */
    double ownCablesV(LoadDrop drop) {
        return ownCables(drop.breakdown(), amps(drop)).stream().mapToDouble(drop.breakdown()::ofElement).sum();
    }

    /** True when the element is a cable that carries this load alone. */
    boolean isOwnCable(LoadDrop drop, String element) {
        return ownCables(drop.breakdown(), amps(drop)).contains(element);
    }

    /** The strap, seam or earth contact with the largest share, or null. */
    Map.Entry<String, Double> largestInStructure(DropBreakdown parts) {
        List<Part> structure = List.of(Part.BOND, Part.SEAM, Part.EARTH_CONTACT, Part.CASE_CONTACT);
        Set<String> ids = new LinkedHashSet<>();
        parts.shares().stream().filter(s -> structure.contains(s.part())).forEach(s -> ids.add(s.element()));
        return parts.byElement().stream().filter(entry -> ids.contains(entry.getKey())).findFirst().orElse(null);
    }

    /** Current of the load in the drop's network, A. */
    double amps(LoadDrop drop) {
        return StrictMath.abs(drop.solved().design().elementA(drop.breakdown().demand()));
    }
}
