// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CurrentPaths;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.earth.ReturnRow.Way;
import org.loomwright.engine.flow.OperatingPoint;

/** How each load returns, in the case in which it draws most, what it shares with others, and what the other way would give. */
final class LoadReturns {
    static final String THRESHOLD = "own-return.threshold";

    private final Plan plan;
    private final PlanItems items;
    private final OtherReturns others;
    private final ReturnPermits permits;

    LoadReturns(Plan plan, PlanItems items) {
        this.plan = plan;
        this.items = items;
        permits = new ReturnPermits(plan);
        others = new OtherReturns(plan, permits);
    }

    /** One row a load that draws something in a case with an operating point, in the plan's order. */
    List<ReturnRow> rows(List<SolvedCase> cases, List<EarthNetwork> networks) {
        ReturnImpedance[] impedances = new ReturnImpedance[cases.size()];
        CurrentPaths[] paths = new CurrentPaths[cases.size()];
        List<ReturnRow> rows = new ArrayList<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            int k = plan.elements().get(e) instanceof Plan.Demand ? telling(cases, e) : -1;
            if (k >= 0) {
                if (impedances[k] == null) {
                    impedances[k] = new ReturnImpedance(networks.get(k));
                    paths[k] = CurrentPaths.of(plan, cases.get(k).running());
                }
                ReturnRow row = row(cases.get(k), impedances[k], paths[k], e);
                if (row != null) {
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    private static int telling(List<SolvedCase> cases, int demand) {
        int best = -1;
        double most = StrapLoads.NOTHING_A;
        for (int k = 0; k < cases.size(); k++) {
            SolvedCase.Solved running = cases.get(k).running();
            double amps = StrictMath.abs(running.elementA(demand));
            if (running.point().status() == OperatingPoint.Status.SOLVED && amps > most) {
                most = amps;
                best = k;
            }
        }
        return best;
    }

    private ReturnRow row(SolvedCase solved, ReturnImpedance impedance, CurrentPaths paths, int e) {
        Plan.Demand load = (Plan.Demand) plan.elements().get(e);
        SolvedCase.Solved running = solved.running();
        int plus = running.at().terminalNode()[load.a()];
        int minus = running.at().terminalNode()[load.b()];
        CurrentPaths.Path supply = paths.supplyOf(plus);
        int source = paths.sourceAt(supply.end());
        CurrentPaths.Path back = paths.returnOf(minus, source < 0 ? -1 : paths.minusOf(source));
        int home = back.end();
        if (!impedance.joined(minus, home)) {
            return null;
        }
        double amps = StrictMath.abs(running.elementA(e));
        double[] column = impedance.column(minus, home);
        double selfOhm = StrictMath.max(0, column[minus]);
        double returnV = running.point().voltage(minus, home);
        int mover = mover(running, column, e);
        double movesOhm = mover < 0 ? 0 : column[minusNode(running, mover)];
        Way way = way(running, impedance.network(), minus);
        boolean asked = way != Way.OWN && amps > plan.practice().value(THRESHOLD)
                && !plan.devices().get(load.device()).existing();
        List<String> path = new ArrayList<>();
        for (CurrentPaths.Step step : back.steps()) {
            String id = step.owner() == null ? null : items.id(step.owner());
            if (id != null && (path.isEmpty() || !path.get(path.size() - 1).equals(id))) {
                path.add(id);
            }
        }
        return new ReturnRow(e, way, solved.state().name(), amps, returnV, selfOhm * amps, returnV - selfOhm * amps, selfOhm,
                movesOhm, mover, mover < 0 ? 0 : movesOhm * running.elementA(mover), path,
                others.of(running, impedance, e, way, supply, back), asked, permits.permitted(e));
    }

    /** The other load whose current moves the minus most, -1 for none. */
    private int mover(SolvedCase.Solved running, double[] column, int of) {
        int mover = -1;
        double most = 0;
        for (int e = 0; e < plan.elements().size(); e++) {
            if (e != of && plan.elements().get(e) instanceof Plan.Demand && running.at().elementItem()[e] >= 0) {
                double volts = StrictMath.abs(column[minusNode(running, e)] * running.elementA(e));
                if (volts > most) {
                    most = volts;
                    mover = e;
                }
            }
        }
        return mover;
    }

    private int minusNode(SolvedCase.Solved running, int demand) {
        return running.at().terminalNode()[((Plan.Demand) plan.elements().get(demand)).b()];
    }

    /** By conductors to a battery; else by the first contact with a body, whichever has fewer steps. */
    private Way way(SolvedCase.Solved running, EarthNetwork network, int minus) {
        boolean[] source = new boolean[network.nodes()];
        for (Plan.Element element : plan.elements()) {
            int at = element instanceof Plan.Cell cell ? cell.b()
                    : element instanceof Plan.Converter converter && converter.isolated() ? converter.outB() : -1;
            if (at >= 0) {
                source[running.at().terminalNode()[at]] = true;
            }
        }
        boolean[] seen = new boolean[network.nodes()];
        Deque<Integer> open = new ArrayDeque<>(List.of(minus));
        seen[minus] = true;
        Way way = null;
        while (!open.isEmpty()) {
            int node = open.remove();
            if (source[node]) {
                return Way.OWN;
            }
            for (int item : network.index().itemsAt(node)) {
                NetworkIndex.Owner owner = network.index().owner(item);
                if (owner != null && owner.kind() == NetworkIndex.Kind.EARTH_CONTACT) {
                    way = way == null ? Way.STRUCTURE : way;
                } else if (owner != null && owner.kind() == NetworkIndex.Kind.CASE_CONTACT) {
                    way = way == null ? Way.CASE : way;
                } else if (network.passes(item) && (owner == null || owner.kind() == NetworkIndex.Kind.CONDUCTOR
                        || owner.kind() == NetworkIndex.Kind.ELEMENT) && !seen[network.other(item, node)]) {
                    seen[network.other(item, node)] = true;
                    open.add(network.other(item, node));
                }
            }
        }
        return way == null ? Way.OWN : way;
    }
}
