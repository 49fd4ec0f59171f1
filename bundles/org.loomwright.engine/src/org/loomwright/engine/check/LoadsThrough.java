// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.heat.DutyCycle;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Quantity;

/** Which loads' current passes which conductor in one case; found only when asked for. */
final class LoadsThrough {
    private static final int NAMED = 3;

    private final CheckContext context;
    private final SolvedCase solved;
    private Map<Integer, List<Plan.DemandState>> byConductor;

    LoadsThrough(CheckContext context, SolvedCase solved) {
        this.context = context;
        this.solved = solved;
    }

    /** Loads on in the case whose current passes a conductor on its way from or back to the source. */
    List<Plan.DemandState> of(int conductor) {
        if (byConductor == null) {
            byConductor = find();
        }
        return byConductor.getOrDefault(conductor, List.of());
    }

    /** The duty that covers the loads through a conductor, all taken to be on together; null when none of them comes and goes. */
    DutyCycle dutyOf(int conductor) {
        List<DutyCycle> duties = new ArrayList<>();
        List<Plan.DemandState> through = of(conductor);
        for (Plan.DemandState state : through.isEmpty() ? solved.state().demands() : through) {
            if (state.onS() > 0 && state.periodS() > state.onS()) {
                duties.add(new DutyCycle(state.onS(), state.periodS()));
            }
        }
        return duties.isEmpty() ? null : DutyCycle.covering(duties);
    }

    /** The loads with the largest currents through a conductor. */
    List<Cause> causes(int conductor) {
        List<Cause> causes = new ArrayList<>();
        of(conductor).stream()
                .sorted((a, b) -> Double.compare(solved.running().elementA(b.demand()), solved.running().elementA(a.demand())))
                .limit(NAMED).forEach(state -> causes.add(new Cause(context.names().element(state.demand()),
                        "current of the load",
                        Quantity.of(solved.running().elementA(state.demand()), "A"))));
        return causes;
    }

    private Map<Integer, List<Plan.DemandState>> find() {
        Map<Integer, List<Plan.DemandState>> found = new LinkedHashMap<>();
        CurrentPaths paths = CurrentPaths.of(context.plan(), solved.running());
        for (Plan.DemandState state : solved.state().demands()) {
            DropBreakdown parts = DropBreakdown.of(context.plan(), context.names(), solved.running(), paths, state.demand());
            if (parts == null) {
                continue;
            }
            Set<Integer> passed = new HashSet<>();
            for (DropBreakdown.Share share : parts.shares()) {
                if (share.part() == DropBreakdown.Part.CABLE && passed.add(share.index())) {
                    found.computeIfAbsent(share.index(), c -> new ArrayList<>()).add(state);
                }
            }
        }
        return found;
    }
}
