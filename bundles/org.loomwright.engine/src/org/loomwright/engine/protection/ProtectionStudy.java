// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.Monitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;

/**
 * The protection study: faults at both ends of every supply conductor, what clears them and when, how hot conductors get, what
 * devices have to break and how selective they are.
 */
public final class ProtectionStudy {
    /** Name of the study. */
    public static final String STUDY = "protection";

    private ProtectionStudy() {
    }

    /**
     * Runs the study.
     *
     * @param context the plan with its cases solved; ratings and temperatures before a fault are the worst of those that have
     *                an operating point
     * @param monitor progress and cancel
     * @throws CancellationException when the monitor is cancelled
     * @throws org.loomwright.engine.assembly.Practice.MissingLimitException when the practice lacks a limit
     */
    public static ProtectionTable of(CheckContext context, Monitor monitor) {
        Plan plan = context.plan();
        SupplyGraph graph = new SupplyGraph(plan, context.circuits().graph());
        ReturnPoints points = new ReturnPoints(plan, graph);
        DeviceCurves curves = new DeviceCurves(plan);
        FaultNetworks networks = new FaultNetworks(plan);
        Faults faults = new Faults(plan, networks, graph, points, curves);
        ReturnDuties duties = new ReturnDuties(plan, graph);
        List<List<Feed>> feeds = new ArrayList<>();
        for (int c = 0; c < plan.conductors().size(); c++) {
            if (monitor.isCanceled()) {
                throw new CancellationException("cancelled while working out faults");
            }
            feeds.add(graph.supply(plan.conductors().get(c).a()) ? faults.feeds(c, duties) : List.of());
        }
        ConductorRows rows = new ConductorRows(plan, context.settled(), graph, curves);
        List<ConductorProtection> conductors = new ArrayList<>();
        for (int c = 0; c < plan.conductors().size(); c++) {
            conductors.add(rows.row(c, feeds.get(c), duties.of(c)));
        }
        List<DeviceProtection> devices = new DeviceRows(plan, networks, points, curves).rows(conductors);
        List<UnclearedFault> uncleared = new ArrayList<>();
        double limitS = plan.practice().value(ConductorRows.CLEARING_TIME);
        for (ConductorProtection row : conductors) {
            for (Feed feed : row.feeds()) {
                if (ConductorRows.mayExceed(feed, row.overload().izA())) {
                    uncleared(feed, limitS, faults, curves, uncleared);
                }
            }
        }
        return new ProtectionTable(plan, conductors, devices, uncleared,
                new ProtectionFigures(context, conductors, devices, curves));
    }

    private static void uncleared(Feed feed, double limitS, Faults faults, DeviceCurves curves, List<UnclearedFault> found) {
        for (Fault.Target target : Fault.Target.values()) {
            Fault fault = feed.fault(Extreme.SMALLEST, Fault.End.FAR, target);
            boolean noWayBack = fault != null && !fault.wayBack() && target == Fault.Target.RETURN;
            if (fault != null && (noWayBack || fault.throughA() > 0 && !fault.clearing().within(limitS))) {
                FaultFlow flow = faults.flow(fault);
                int protector = faults.device(feed, fault);
                if (protector < 0 && !noWayBack) {
                    continue;
                }
                CurvePair curve = protector < 0 ? null : curves.cold(protector);
                double neededA = curve == null ? Double.NaN : curve.clearingA(limitS);
                found.add(UnclearedFault.of(fault, protector, neededA, limitS, flow));
            }
        }
    }

    /** The study for a plan and its solved cases; see {@link #of(CheckContext, Monitor)}. */
    public static ProtectionTable of(Plan plan, List<SolvedCase> cases, Monitor monitor) {
        return of(new CheckContext(plan, cases, org.loomwright.engine.nets.NetFinder.find(plan)), monitor);
    }
}
