// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.protection.ProtectionStudy;
import org.loomwright.engine.protection.ProtectionTable;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.StudyResult;

/**
 * The study of the earth return: potentials of the bodies, load of the straps, what happens when one strap or two are lost, and
 * how each load returns.
 */
public final class EarthStudy {
    /** Name of the study. */
    public static final String STUDY = "earth";
    /** Slug of the rule on lost bonds. */
    public static final String BOND_LOSS = LossFindings.RULE;

    private EarthStudy() {
    }

    /**
     * Studies the earth return of a plan, and runs the protection study for the faults that a lost strap keeps from clearing; see
     * {@link #of(CheckContext, ProtectionTable, Monitor)}.
     */
    public static EarthTable of(CheckContext context, Monitor monitor) {
        return of(context, ProtectionStudy.of(context, monitor), monitor);
    }

    /**
     * Studies the earth return of a plan in its solved cases. The same plan gives the same table, to the bit.
     *
     * @param context    plan, its cases solved, and names
     * @param protection what the protection study says of the same plan
     * @param monitor    progress, one unit a strap, and cancel
     * @return the table; its findings are sorted by severity, then by weight
     * @throws java.util.concurrent.CancellationException when the monitor is cancelled
     * @throws org.loomwright.engine.assembly.Practice.MissingLimitException when the practice lacks a limit
     */
    public static EarthTable of(CheckContext context, ProtectionTable protection, Monitor monitor) {
        Plan plan = context.plan();
        int minus = context.cases().isEmpty() ? -1 : BatteryMinus.terminal(plan, context.cases().get(0).running());
        EarthNames names = new EarthNames(plan, context.names());
        PlanItems items = new PlanItems(plan, context.names());
        LossWords words = new LossWords(plan, names);
        List<EarthNetwork> networks = new ArrayList<>();
        List<CaseEarth> levels = new ArrayList<>();
        for (SolvedCase solved : context.cases()) {
            EarthNetwork network = new EarthNetwork(plan, solved.running(), minus);
            networks.add(network);
            levels.add(new BodyLevels(plan).of(solved, network));
        }
        List<SolvedCase> settled = new ArrayList<>();
        List<EarthNetwork> settledNetworks = new ArrayList<>();
        for (int k = 0; k < networks.size(); k++) {
            if (networks.get(k).solved().point().status() == OperatingPoint.Status.SOLVED) {
                settled.add(context.cases().get(k));
                settledNetworks.add(networks.get(k));
            }
        }
        BondLosses losses = new BondLosses(plan, settled, settledNetworks,
                new LossEffects(plan, items, new LossSolver(monitor), minus), new FaultClearing(protection), words,
                        monitor);
        List<LossRow> singles = losses.singles();
        List<LossRow> pairs = BondLosses.ranked(losses.pairs(singles));
        List<LossRow> ranked = BondLosses.ranked(singles);
        List<StrapRow> straps = new StrapLoads(plan).rows(settled);
        List<ReturnRow> returns = new LoadReturns(plan, items).rows(settled, settledNetworks);
        List<Finding> findings = new ArrayList<>(new MissingBonds(plan, names, items).findings(networks, levels));
        LossFindings lost = new LossFindings(plan, names, words);
        findings.addAll(lost.of(ranked));
        findings.addAll(lost.of(pairs));
        StudyResult result = new StudyResult(STUDY, plan.vehicle(), plan.arrangement(), FindingSettings.settle(findings, plan),
                List.of(), new EarthExplain(plan, names, items, networks, levels, straps, ranked, returns));
        return new EarthTable(plan, minus, levels, straps, ranked, pairs, returns, result);
    }
}
