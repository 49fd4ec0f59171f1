// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomwright.diagram.chart.TimeCurrentChart.At;
import org.loomwright.diagram.chart.TimeCurrentChart.Band;
import org.loomwright.diagram.chart.TimeCurrentChart.Current;
import org.loomwright.diagram.chart.TimeCurrentChart.Field;
import org.loomwright.diagram.chart.TimeCurrentChart.Limit;
import org.loomwright.diagram.chart.TimeCurrentChart.Spot;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.heat.Ratings;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.CurvePair;
import org.loomwright.engine.protection.DeviceProtection;
import org.loomwright.engine.protection.Fault;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.protection.ReturnDuty;
import org.loomwright.engine.protection.Selectivity;
import org.loomwright.engine.result.Finding;

/**
 * The time-current chart of a protective device of a vehicle: its curves and those of the device upstream, each between fastest
 * in the hottest and slowest in the coldest ambient; how long the conductor behind it bears each current, after the thermal
 * equation; inrush, fault currents, verdicts.
 */
public final class ProtectionChart {
    private static final int DAMAGE_POINTS = 240;
    private static final double DAMAGE_TIMES = 3000;
    private static final double TAIL_TIMES = 1000;
    private static final int DRAWN = 2;
    private static final double SHORTEST_S = 1e-4;

    private final CheckContext context;
    private final Plan plan;
    private final ChartSubject subject;
    private final ConductorProtection row;
    private final DeviceProtection device;

    private ProtectionChart(CheckContext context, ChartSubject subject) {
        this.context = context;
        plan = context.plan();
        this.subject = subject;
        row = subject.conductor() < 0 ? null : context.protection().conductor(subject.conductor());
        device = subject.protector() < 0 ? null : context.protection().device(subject.protector()).orElse(null);
    }

    /**
     * The chart.
     *
     * @param findings what the rules on protection found, accepted findings included
     */
    public static TimeCurrentChart of(CheckContext context, ChartSubject subject, List<Finding> findings) {
        ProtectionChart chart = new ProtectionChart(context, subject);
        return new TimeCurrentChart(chart.title(), chart.subtitle(), chart.bands(), chart.limits(), chart.nearest(),
                chart.faults(), chart.loads(), new ChartVerdicts(context, chart.row, chart.device, findings,
                        chart.bands(), chart.inrushes()).all(), chart.footer());
    }

    private String title() {
        String conductor = row == null ? "" : context.names().shownConductor(row.conductor());
        if (device == null) {
            return conductor + ", no protective device before it";
        }
        return deviceName(device.protector()) + (row == null ? "" : " and " + conductor);
    }

    private String subtitle() {
        String behind = device == null ? "" : String.join(", ", context.circuits().consumersBelow(device.protector()).stream()
                .map(e -> context.names().shownElement(e)).distinct().limit(3).toList());
        int more = device == null ? 0 : context.circuits().consumersBelow(device.protector()).size() - 3;
        return behind.isEmpty() ? "Bands from the fastest curve when hot to the slowest when cold"
                : "For " + behind + (more > 0 ? " and " + more + " more" : "")
                        + ". Bands from the fastest curve when hot to the slowest when cold";
    }

    private String deviceName(int element) {
        Plan.Protector protector = (Plan.Protector) plan.elements().get(element);
        return context.names().shown(context.names().element(element)) + " (" + ChartWords.amps(protector.ratingA()) + " "
                + protector.kind() + ")";
    }

    private List<Band> bands() {
        List<Band> bands = new ArrayList<>();
        if (device != null) {
            band(device.protector()).ifPresent(bands::add);
            device.selectivity().stream().filter(Selectivity::alone).forEach(pair -> band(pair.upstream()).ifPresent(bands::add));
        }
        return bands;
    }

    private Optional<Band> band(int element) {
        Plan.Protector protector = (Plan.Protector) plan.elements().get(element);
        double[] ambientC = ambients(protector.device());
        return CurvePair.of(protector).map(curve -> {
            CurvePair hot = curve.at(ambientC[1]);
            CurvePair cold = curve.at(ambientC[0]);
            List<At> fastest = new ArrayList<>();
            for (double amps : hot.fastestGatesA()) {
                fastest.add(new At(amps, hot.fastestS(amps)));
            }
            List<At> slowest = new ArrayList<>();
            for (double amps : cold.slowestGatesA()) {
                slowest.add(new At(amps, cold.slowestS(amps)));
            }
            tail(fastest);
            tail(slowest);
            return new Band(context.names().element(element), deviceName(element) + ", " + protector.part(), fastest, slowest);
        });
    }

    /** Above the last gate I2t is constant. */
    private static void tail(List<At> points) {
        At last = points.get(points.size() - 1);
        points.add(new At(last.amps() * TAIL_TIMES, last.seconds() / (TAIL_TIMES * TAIL_TIMES)));
    }

    private double[] ambients(int deviceIndex) {
        int at = deviceIndex;
        while (plan.devices().get(at).zone() < 0 && plan.devices().get(at).mountedIn() >= 0) {
            at = plan.devices().get(at).mountedIn();
        }
        int zone = plan.devices().get(at).zone();
        return zone < 0 ? new double[] {plan.practice().value("state.cold"), plan.practice().value("state.outside-hot")}
                : new double[] {plan.zones().get(zone).ambientMinC(), plan.zones().get(zone).ambientMaxC()};
    }

    private List<Limit> limits() {
        ConductorTemperature thermal = row == null || row.heat() == null ? null : thermal();
        if (thermal == null || Double.isNaN(row.heat().limitC())) {
            return List.of();
        }
        List<At> points = new ArrayList<>();
        double fromA = thermal.currentA(row.heat().limitC());
        for (int i = 0; i <= DAMAGE_POINTS; i++) {
            double amps = fromA * StrictMath.pow(DAMAGE_TIMES, (double) i / DAMAGE_POINTS);
            double seconds = thermal.secondsTo(row.heat().startC(), row.heat().limitC(), amps);
            if (Double.isFinite(seconds) && seconds > SHORTEST_S) {
                points.add(new At(amps, seconds));
            }
        }
        return points.size() < 2 ? List.of() : List.of(new Limit(context.names().conductor(row.conductor()),
                context.names().shownConductor(row.conductor()) + ", "
                        + ChartWords.three(plan.conductors().get(row.conductor()).sectionMm2()) + " mm\u00B2, bears it so long: "
                        + ChartWords.celsius(row.heat().startC()) + " to " + ChartWords.celsius(row.heat().limitC()), points));
    }

    /** The thermal equation in the case with the smallest rating. */
    private ConductorTemperature thermal() {
        ConductorRating smallest = null;
        for (SolvedCase solved : context.cases()) {
            ConductorRating here = solved.ratings().get(row.conductor());
            smallest = smallest == null || here.correctedA() < smallest.correctedA() ? here : smallest;
        }
        return smallest == null ? null : Ratings.thermal(plan, row.conductor(), smallest);
    }

    /** The inrush points nearest to the fastest curve; more would hide it. */
    private List<Spot> nearest() {
        List<Band> bands = bands();
        List<Spot> spots = new ArrayList<>(inrushes());
        if (!bands.isEmpty()) {
            spots.sort(Comparator.comparingDouble(spot -> bands.get(0).fastestS(spot.amps()) / spot.seconds()));
        }
        return spots.subList(0, StrictMath.min(DRAWN, spots.size()));
    }

    private List<Spot> inrushes() {
        List<Spot> spots = new ArrayList<>();
        if (device != null) {
            for (int e : context.circuits().consumersBelow(device.protector())) {
                if (plan.elements().get(e) instanceof Plan.Demand load && load.inrushA() > 0 && load.inrushS() > 0) {
                    spots.add(new Spot("inrush of " + context.names().shownElement(e) + ", " + ChartWords.amps(load.inrushA())
                            + " for " + ChartWords.seconds(load.inrushS()), load.inrushA(), load.inrushS()));
                }
            }
        }
        return spots;
    }

    private List<Current> faults() {
        List<Current> faults = new ArrayList<>();
        if (row == null) {
            if (device != null && device.breakingA() > 0) {
                add(faults, "largest", device.breakingA());
            }
            return faults;
        }
        if (row.feeds().isEmpty()) {
            for (ReturnDuty duty : row.duties().subList(0, StrictMath.min(1, row.duties().size()))) {
                add(faults, "smallest", duty.smallestA());
                add(faults, "largest", duty.largestA());
            }
            return faults;
        }
        Fault small = row.smallestFar();
        add(faults, "smallest, far end", small == null ? 0 : small.throughA());
        double farA = 0;
        for (Feed feed : row.feeds()) {
            farA = feed.largestFar() == null ? farA : StrictMath.max(farA, feed.largestFar().throughA());
        }
        add(faults, "largest, far end", farA);
        Fault near = row.largestNear();
        add(faults, "near end", near == null ? 0 : near.throughA());
        return faults;
    }

    private static void add(List<Current> faults, String name, double amps) {
        if (amps > 0 && Double.isFinite(amps)) {
            faults.add(new Current(name + " " + ChartWords.amps(amps), amps));
        }
    }

    private List<Current> loads() {
        List<Current> loads = new ArrayList<>();
        double most = 0;
        for (SolvedCase solved : context.settled()) {
            double amps = subject.protector() >= 0 ? solved.running().elementA(subject.protector())
                    : solved.running().conductorA(subject.conductor());
            most = "cranking".equals(solved.state().kind()) ? most : StrictMath.max(most, StrictMath.abs(amps));
        }
        if (most > 0) {
            loads.add(new Current("load " + ChartWords.amps(most), most));
        }
        if (row != null && row.overload() != null && row.overload().izA() > 0) {
            loads.add(new Current("Iz " + ChartWords.amps(row.overload().izA()), row.overload().izA()));
        }
        return loads;
    }

    private List<Field> footer() {
        List<Field> fields = new ArrayList<>();
        fields.add(new Field("vehicle", plan.vehicle()));
        if (!plan.arrangement().isEmpty()) {
            fields.add(new Field("arrangement", plan.arrangement()));
        }
        fields.add(new Field("practice", plan.practice().name()));
        if (device != null) {
            fields.add(new Field("device", context.names().shown(context.names().element(device.protector()))));
        }
        if (row != null) {
            fields.add(new Field("conductor", context.names().shownConductor(row.conductor())));
        }
        return fields;
    }
}
