// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CurrentPaths;
import org.loomwright.engine.check.DropBreakdown;

/**
 * What each conductor is there for, told by the loads whose current passes it in any case: a shared one is a feeder, one with
 * a single load a branch, one with none serves charging, control or measuring.
 */
final class ConductorDuties {
    private final Plan plan;
    private final List<Set<Integer>> loads = new ArrayList<>();
    private final boolean[] returns;

    private ConductorDuties(Plan plan) {
        this.plan = plan;
        returns = new boolean[plan.conductors().size()];
        plan.conductors().forEach(conductor -> loads.add(new HashSet<>()));
    }

    /** The duty of each conductor of the plan, in its order. */
    static List<CopperDuty> of(CheckContext context) {
        ConductorDuties duties = new ConductorDuties(context.plan());
        for (SolvedCase solved : context.settled()) {
            duties.see(context, solved);
        }
        duties.shareParallel();
        List<CopperDuty> found = new ArrayList<>();
        for (int c = 0; c < duties.returns.length; c++) {
            found.add(duties.duty(c));
        }
        return Collections.unmodifiableList(found);
    }

    private void see(CheckContext context, SolvedCase solved) {
        CurrentPaths paths = CurrentPaths.of(plan, solved.running());
        for (Plan.DemandState state : solved.state().demands()) {
            DropBreakdown parts = DropBreakdown.of(plan, context.names(), solved.running(), paths, state.demand());
            for (DropBreakdown.Share share : parts == null ? List.<DropBreakdown.Share>of() : parts.shares()) {
                if (share.part() == DropBreakdown.Part.CABLE) {
                    loads.get(share.index()).add(plan.elements().get(state.demand()).device());
                    returns[share.index()] |= share.returns();
                }
            }
        }
    }

    /** A path is followed through one of the conductors that share a current by intent; the others do the same. */
    private void shareParallel() {
        Map<List<Object>, Integer> first = new HashMap<>();
        for (int c = 0; c < returns.length; c++) {
            Plan.Conductor conductor = plan.conductors().get(c);
            if (conductor.parallelGroup() != null && !loads.get(c).isEmpty()) {
                first.putIfAbsent(key(conductor), c);
            }
        }
        for (int c = 0; c < returns.length; c++) {
            Plan.Conductor conductor = plan.conductors().get(c);
            Integer like = conductor.parallelGroup() == null ? null : first.get(key(conductor));
            if (like != null) {
                loads.get(c).addAll(loads.get(like));
                returns[c] = returns[like];
            }
        }
    }

    private static List<Object> key(Plan.Conductor conductor) {
        return List.of(conductor.parallelGroup(), StrictMath.min(conductor.a(), conductor.b()),
                StrictMath.max(conductor.a(), conductor.b()));
    }

    private CopperDuty duty(int conductor) {
        if (loads.get(conductor).isEmpty()) {
            return CopperDuty.OTHER;
        }
        if (loads.get(conductor).size() > 1) {
            return returns[conductor] ? CopperDuty.FEEDER_RETURN : CopperDuty.FEEDER;
        }
        return returns[conductor] ? CopperDuty.BRANCH_RETURN : CopperDuty.BRANCH;
    }
}
