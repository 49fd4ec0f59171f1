// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.OperatingPoint;

/** Reads the structure's potentials and currents out of a solved case. */
final class BodyLevels {
    private final Plan plan;

    BodyLevels(Plan plan) {
        this.plan = plan;
    }

    CaseEarth of(SolvedCase solved, EarthNetwork network) {
        SolvedCase.Solved running = solved.running();
        List<Double> bodyV = new ArrayList<>();
        for (int b = 0; b < plan.bodies().size(); b++) {
            bodyV.add(network.bodyV(b));
        }
        return new CaseEarth(solved.state().name(), cranking(solved.state()),
                running.point().status() == OperatingPoint.Status.SOLVED, bodyV, amps(running, running.at().bondItem()),
                amps(running, running.at().linkItem()), contacts(network));
    }

    static boolean cranking(Plan.Case state) {
        return "cranking".equals(state.kind());
    }

    private static List<Double> amps(SolvedCase.Solved solved, int[] items) {
        List<Double> amps = new ArrayList<>();
        for (int item : items) {
            amps.add(solved.itemA(item));
        }
        return amps;
    }

    private List<CaseEarth.ContactFlow> contacts(EarthNetwork network) {
        SolvedCase.Solved solved = network.solved();
        List<CaseEarth.ContactFlow> contacts = new ArrayList<>();
        for (int t = 0; t < plan.terminals().size(); t++) {
            int item = solved.at().earthItem()[t] >= 0 ? solved.at().earthItem()[t] : solved.at().caseItem()[t];
            if (item >= 0) {
                double amps = solved.itemA(item);
                double ohm = network.ohm(item);
                contacts.add(new CaseEarth.ContactFlow(t, amps, amps * ohm, amps * amps * ohm));
            }
        }
        return contacts;
    }
}
