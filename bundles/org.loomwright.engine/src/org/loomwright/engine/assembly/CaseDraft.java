// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A case while it is put together: everything at rest, nothing on, batteries full, of the practice's age and at the ambient
 * where they sit, until told otherwise.
 */
final class CaseDraft {
    private final Plan plan;
    final String id;
    String kind = "parked";
    boolean byEngine;
    String ignition = "off";
    boolean engineRunning;
    double engineRpm;
    boolean shore;
    double sun;
    double outsideC;
    final double[] ambientC;
    final double[] charge;
    final double[] cellC;
    final double[] age;
    final boolean[] closed;
    private final Map<Integer, Plan.DemandState> on = new TreeMap<>();

    CaseDraft(Plan plan, String id) {
        this.plan = plan;
        this.id = id;
        int elements = plan.elements().size();
        outsideC = plan.practice().value("state.outside-hot");
        ambientC = plan.zones().stream().mapToDouble(Plan.Zone::ambientMaxC).toArray();
        charge = new double[elements];
        Arrays.fill(charge, plan.practice().value("state.full-charge"));
        cellC = new double[elements];
        Arrays.fill(cellC, Double.NaN);
        age = new double[elements];
        Arrays.fill(age, plan.practice().value("state.age"));
        closed = new boolean[elements];
        for (int e = 0; e < elements; e++) {
            closed[e] = plan.elements().get(e) instanceof Plan.Contact contact && contact.restClosed();
        }
    }

    /** Turns a load on; a factor of 0 turns it off. */
    void on(int demand, double factor, double onS, double periodS) {
        if (factor == 0) {
            on.remove(demand);
        } else {
            on.put(demand, new Plan.DemandState(demand, factor, onS, periodS));
        }
    }

    /** Turns a load on all the time. */
    void on(int demand) {
        on(demand, 1, Double.NaN, Double.NaN);
    }

    /** Turns a load on as in another case. */
    void on(Plan.DemandState as) {
        on(as.demand(), as.factor(), as.onS(), as.periodS());
    }

    /**
     * Turns the starter motors on, for the practice's cranking time out of each cranking period where it gives both: cables and
     * contacts carry their current for seconds only.
     */
    void crank() {
        boolean timed = plan.practice().limits().containsKey("state.crank-time")
                && plan.practice().limits().containsKey("state.crank-period");
        double onS = timed ? plan.practice().value("state.crank-time") : Double.NaN;
        double periodS = timed ? plan.practice().value("state.crank-period") : Double.NaN;
        for (int e = 0; e < plan.elements().size(); e++) {
            if (isStarter(e)) {
                on(e, 1, onS, periodS);
            }
        }
    }

    /** True for the motor of a starter. */
    boolean isStarter(int element) {
        return plan.elements().get(element) instanceof Plan.Demand demand
                && "starter".equals(plan.devices().get(demand.device()).kind());
    }

    /** How the switches stand. */
    Reach.Stand stand() {
        return new Reach.Stand(ignition, engineRunning, closed);
    }

    /** Sets the charge of all cells. */
    void allCharged(double share) {
        Arrays.fill(charge, share);
    }

    /** Sets the temperature of all cells. */
    void allCellsAt(double temperatureC) {
        Arrays.fill(cellC, temperatureC);
    }

    /** The case. */
    Plan.Case build() {
        List<Plan.CellState> cells = new ArrayList<>();
        List<Plan.ContactState> contacts = new ArrayList<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Cell cell) {
                int zone = plan.devices().get(cell.device()).zone();
                double here = zone < 0 ? outsideC : ambientC[zone];
                cells.add(new Plan.CellState(e, charge[e], Double.isNaN(cellC[e]) ? here : cellC[e], age[e]));
            } else if (plan.elements().get(e) instanceof Plan.Contact contact && "hand".equals(contact.driver())) {
                contacts.add(new Plan.ContactState(e, closed[e]));
            }
        }
        return new Plan.Case(id, id, kind, byEngine, ignition, engineRunning, engineRpm, shore, sun, outsideC,
                Arrays.stream(ambientC).boxed().toList(), List.copyOf(cells), List.copyOf(contacts),
                List.copyOf(on.values()), false);
    }
}
