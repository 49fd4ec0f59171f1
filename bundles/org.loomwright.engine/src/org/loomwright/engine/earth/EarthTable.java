// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.StudyResult;

/**
 * What the earth study finds out about one plan. Immutable.
 *
 * @param plan         the plan
 * @param minus        terminal against which potentials are given: the minus of the battery whose minus leads into the structure
 * @param cases        bodies, straps and contacts case by case, in the plan's order
 * @param straps       one a bond, in the plan's order
 * @param losses       each strap lost, the worst first
 * @param pairs        two straps lost together where that is worse than either alone, the worst first
 * @param returns      one a load that draws something in a case, in the plan's order
 * @param result       findings, and how every figure came about
 */
public record EarthTable(Plan plan, int minus, List<CaseEarth> cases, List<StrapRow> straps, List<LossRow> losses,
        List<LossRow> pairs, List<ReturnRow> returns, StudyResult result) {
    public EarthTable {
        cases = List.copyOf(cases);
        straps = List.copyOf(straps);
        losses = List.copyOf(losses);
        pairs = List.copyOf(pairs);
        returns = List.copyOf(returns);
    }
}
