// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.loomwright.engine.heat.ConductorAmbient;

/** What the sources of a plan can do in one case. */
final class NetworkSources {
    /** Stands for a limit that no part states. */
    private static final double NO_LIMIT_A = 1e9;
    private static final Set<String> LEAD = Set.of("flooded", "agm", "gel");
    /** Nominal voltage of one lead cell, V; a battery of 12 V nominal has six. */
    private static final double LEAD_CELL_V = 2;

    private final Plan plan;
    private final Plan.Case state;

    NetworkSources(Plan plan, Plan.Case state) {
        this.plan = plan;
        this.state = state;
    }

    /** State of a cell; charged, of the practice's age and at its ambient when the case says nothing. */
    Plan.CellState stateOf(int cell) {
        for (Plan.CellState each : state.cells()) {
            if (each.cell() == cell) {
                return each;
            }
        }
        int zone = plan.devices().get(plan.elements().get(cell).device()).zone();
        return new Plan.CellState(cell, plan.practice().value("state.full-charge"), ConductorAmbient.of(state, zone),
                plan.practice().value("state.age"));
    }

    /** Open-circuit voltage, V: on a straight line between the points of the part; the nominal voltage without points. */
    static double openV(Plan.Cell cell, double charge) {
        List<Double> points = cell.chargePoints();
        return points.isEmpty() ? cell.nominalV() : between(points, cell.ocvV(), charge);
    }

    /**
     * Internal resistance, ohm: the part's smallest (full, warm, new) plus its range times the mean of three shares, each
     * from 0 to 1: discharge from full to half, cooling from 25 degrees Celsius (where open-circuit voltages are stated) to
     * the practice's {@code state.cold}, and age. A simple rule that joins the two stated values and rises with each cause
     * (common practice); a case of smallest resistances has the smallest.
     */
    double ohm(Plan.Cell cell, Plan.CellState at) {
        double min = cell.rMinOhm() > 0 ? cell.rMinOhm() : cell.rMaxOhm();
        double max = cell.rMaxOhm() > 0 ? cell.rMaxOhm() : min;
        if (!(min > 0) || !(max >= min)) {
            throw new IllegalArgumentException(
                    cell.id() + ": internal resistance expected above 0, the largest not below the smallest");
        }
        if (state.resistancesColdMin()) {
            return min;
        }
        double coldC = plan.practice().value("state.cold");
        double discharge = share((1 - at.charge()) / 0.5);
        double cooling = share((25 - at.temperatureC()) / (25 - coldC));
        return min + (max - min) * (discharge + cooling + share(at.age())) / 3;
    }

    /**
     * Resistance to a charging current, ohm. A lead battery takes a limited current: the one that its part permits, else the
     * practice's share of its capacity, at the practice's absorption voltage, and in proportion less below it; at its
     * open-circuit voltage none. Never below its resistance to discharge, which is that of other chemistries both ways.
     *
     * @param ohm resistance to discharge, ohm
     */
    double chargeOhm(Plan.Cell cell, Plan.CellState at, double ohm) {
        if (!LEAD.contains(String.valueOf(cell.chemistry()))) {
            return ohm;
        }
        double absorptionV = plan.practice().value("battery.lead-absorption") * StrictMath.rint(cell.nominalV() / LEAD_CELL_V);
        double acceptedA = cell.chargeMaxA() > 0 ? cell.chargeMaxA()
                : plan.practice().value("battery.lead-acceptance") * cell.capacityAh();
        double charging = (absorptionV - openV(cell, at.charge())) / acceptedA;
        return acceptedA > 0 && charging > ohm ? charging : ohm;
    }

    /** Set voltage in the ambient of the case, V. */
    double setV(Plan.Regulated source) {
        double ambientC = ConductorAmbient.of(state, plan.devices().get(source.device()).zone());
        return Double.isNaN(source.temperatureVPerK()) || Double.isNaN(source.referenceC()) ? source.setV()
                : source.setV() + source.temperatureVPerK() * (ambientC - source.referenceC());
    }

    /** Largest current in the case, A; 0 when it cannot deliver. */
    double limitA(Plan.Regulated source) {
        double limitA = source.limits().isEmpty() ? source.limitA() : atSpeed(source);
        if (Double.isNaN(limitA)) {
            limitA = NO_LIMIT_A;
        }
        return "sun".equals(source.runsOn()) ? limitA * share(state.sun()) : available(source.runsOn()) ? limitA : 0;
    }

    double limitA(Plan.Converter converter) {
        return Double.isNaN(converter.limitA()) ? NO_LIMIT_A : converter.limitA();
    }

    /** Whether something that runs on that can work in the case. */
    boolean available(String runsOn) {
        if (runsOn == null || runsOn.equals("always")) {
            return true;
        }
        return switch (runsOn) {
            case "engine" -> state.engineRunning();
            case "sun" -> state.sun() > 0;
            case "shore" -> state.shore();
            default -> throw new IllegalArgumentException("runs on '" + runsOn + "'; expected always, engine, sun or shore");
        };
    }

    /** Limit between the points of the part: straight lines over speed, then over ambient, held at the ends. */
    private double atSpeed(Plan.Regulated source) {
        double rpm = state.engineRpm() > 0 ? state.engineRpm() : plan.practice().value("state.idle-rpm");
        double ambientC = ConductorAmbient.of(state, plan.devices().get(source.device()).zone());
        Map<Double, List<Plan.LimitPoint>> byAmbient = new TreeMap<>();
        for (Plan.LimitPoint point : source.limits()) {
            byAmbient.computeIfAbsent(point.ambientC(), k -> new ArrayList<>()).add(point);
        }
        if (byAmbient.size() > 1) {
            byAmbient.remove(Double.NaN);
        }
        List<Double> ambients = new ArrayList<>(byAmbient.keySet());
        List<Double> amps = new ArrayList<>();
        for (List<Plan.LimitPoint> points : byAmbient.values()) {
            points.sort((p, q) -> Double.compare(p.rpm(), q.rpm()));
            amps.add(between(points.stream().map(Plan.LimitPoint::rpm).toList(),
                    points.stream().map(Plan.LimitPoint::amps).toList(), rpm));
        }
        return between(ambients, amps, ambientC);
    }

    /** Straight lines between points, held at both ends; a single point holds everywhere. */
    private static double between(List<Double> xs, List<Double> ys, double x) {
        int last = xs.size() - 1;
        if (last == 0 || x <= xs.get(0)) {
            return ys.get(0);
        }
        for (int i = 1; i <= last; i++) {
            if (x <= xs.get(i)) {
                double share = (x - xs.get(i - 1)) / (xs.get(i) - xs.get(i - 1));
                return ys.get(i - 1) + share * (ys.get(i) - ys.get(i - 1));
            }
        }
        return ys.get(last);
    }

    private static double share(double value) {
        return value > 0 ? StrictMath.min(1, value) : 0;
    }
}
