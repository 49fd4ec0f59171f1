// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.compare.ArrangementFigures.Priced;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Counts and measures an arrangement that was solved and checked. */
public final class FigureStudy {
    private final CheckContext context;
    private final Plan plan;
    private final DeviceSheet.Sheets sheets;
    private final Map<Priced, Tally> price = new EnumMap<>(Priced.class);
    private Tally massKg = Tally.ZERO;
    private Tally areaCm2 = Tally.ZERO;
    private int protectors;
    private int boxes;
    private int spareWays;
    private int devices;

    private FigureStudy(CheckContext context, DeviceSheet.Sheets sheets) {
        this.context = context;
        this.plan = context.plan();
        this.sheets = sheets;
        for (Priced each : Priced.values()) {
            price.put(each, Tally.ZERO);
        }
    }

    /**
     * The figures of an arrangement.
     *
     * @param context  the plan with its cases solved
     * @param sheets   what the library states of its devices
     * @param findings what the check found
     */
    public static ArrangementFigures of(CheckContext context, DeviceSheet.Sheets sheets, List<Finding> findings) {
        FigureStudy study = new FigureStudy(context, sheets);
        int cables = study.cables();
        study.devices();
        study.price.put(Priced.ENDS, sheets.endsFor(study.plan));
        int joints = (int) study.plan.conductors().stream().filter(c -> !study.plan.cables().get(c.cable()).existing()).count() * 2;
        Map<Severity, Integer> counts = new EnumMap<>(Severity.class);
        for (Severity severity : Severity.values()) {
            counts.put(severity, (int) findings.stream()
                    .filter(each -> each.accepted() == null && each.severity() == severity).count());
        }
        int accepted = (int) findings.stream().filter(each -> each.accepted() != null).count();
        return new ArrangementFigures(study.plan.vehicle(), study.plan.arrangement(), study.copper(), cables, joints,
                study.devices, study.protectors, study.boxes, study.spareWays, study.areaCm2, study.price, study.massKg,
                study.voltages(), study.hottest(), counts, accepted);
    }

    private int cables() {
        int count = 0;
        for (Plan.Cable cable : plan.cables()) {
            if (!cable.existing()) {
                count++;
                Plan.SectionOption row = cable.options().stream().filter(each -> each.sectionMm2() == cable.sectionMm2())
                        .findFirst().orElse(null);
                double metres = cable.lengthMm() / 1000;
                massKg = massKg.with(row == null ? Double.NaN : row.massGPerM() * metres / 1000);
                add(Priced.CABLE, row == null ? Double.NaN : row.pricePerM() * metres);
            }
        }
        return count;
    }

    private void add(Priced kind, double figure) {
        price.merge(kind, Tally.ZERO.with(figure), Tally::with);
    }

    private List<CopperRow> copper() {
        List<CopperDuty> duties = ConductorDuties.of(context);
        Map<Double, Map<CopperDuty, Double>> metres = new TreeMap<>();
        int[] connected = new int[plan.cables().size()];
        for (int c = 0; c < plan.conductors().size(); c++) {
            Plan.Conductor conductor = plan.conductors().get(c);
            connected[conductor.cable()]++;
            add(metres, plan.cables().get(conductor.cable()), conductor.sectionMm2(), duties.get(c), 1);
        }
        for (int w = 0; w < connected.length; w++) {
            Plan.Cable cable = plan.cables().get(w);
            if (cable.cores() > connected[w]) {
                add(metres, cable, cable.sectionMm2(), CopperDuty.OTHER, cable.cores() - connected[w]);
            }
        }
        List<CopperRow> rows = new ArrayList<>();
        metres.forEach((section, byDuty) -> byDuty.forEach((duty, m) -> rows.add(new CopperRow(section, duty, m))));
        return rows;
    }

    private static void add(Map<Double, Map<CopperDuty, Double>> metres, Plan.Cable cable, double section, CopperDuty duty,
            int cores) {
        if (!cable.existing() && section > 0 && cable.lengthMm() > 0) {
            metres.computeIfAbsent(section, s -> new EnumMap<>(CopperDuty.class)).merge(duty, cores * cable.lengthMm() / 1000,
                    Double::sum);
        }
    }

    private void devices() {
        Map<Integer, Integer> fitted = new HashMap<>();
        for (Plan.Element element : plan.elements()) {
            if (element instanceof Plan.Protector protector && protector.way() != null
                    && isCounted(protector.device())) {
                protectors++;
                fitted.merge(protector.device(), 1, Integer::sum);
                add(Priced.PROTECTORS, protector.options().stream().filter(each -> each.part().equals(protector.part()))
                        .mapToDouble(Plan.ProtectorOption::price).findFirst().orElse(Double.NaN));
            }
        }
        for (int d = 0; d < plan.devices().size(); d++) {
            DeviceSheet sheet = sheets.of(plan.devices().get(d).id());
            if (!isCounted(d)) {
                continue;
            }
            devices++;
            massKg = massKg.with(sheet.massKg());
            add(sheet.ways() > 0 ? Priced.BOXES : Priced.DEVICES, sheet.price());
            if (sheet.ways() > 0) {
                boxes++;
                areaCm2 = areaCm2.with(sheet.areaCm2());
                spareWays += StrictMath.max(0, sheet.ways() - fitted.getOrDefault(d, 0));
            }
        }
    }

    private boolean isCounted(int device) {
        Plan.Device each = plan.devices().get(device);
        return !each.existing() && (plan.arrangement().isEmpty() || each.id().startsWith(plan.arrangement() + "/"));
    }

    private List<ArrangementFigures.LoadVoltage> voltages() {
        Map<String, ArrangementFigures.LoadVoltage> lowest = new LinkedHashMap<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Demand demand && !plan.devices().get(demand.device()).existing()) {
                lowest(e, demand).ifPresent(found -> lowest.put(found.load(), found));
            }
        }
        return new ArrayList<>(lowest.values());
    }

    private Optional<ArrangementFigures.LoadVoltage> lowest(int element, Plan.Demand demand) {
        SolvedCase worst = null;
        double volts = Double.POSITIVE_INFINITY;
        for (SolvedCase solved : context.settled()) {
            boolean on = solved.state().demands().stream().anyMatch(state -> state.demand() == element);
            double here = solved.running().voltage(demand.a(), demand.b());
            if (on && solved.running().elementA(element) > 0 && here < volts) {
                worst = solved;
                volts = here;
            }
        }
        if (worst == null) {
            return Optional.empty();
        }
        String label = plan.devices().get(demand.device()).label();
        return Optional.of(new ArrangementFigures.LoadVoltage(context.names().element(element),
                label == null ? "" : label, worst.state().name(), volts, demand.minV(),
                nominal(Double.isNaN(demand.refV()) ? volts : demand.refV())));
    }

    /** The level whose nominal voltage is nearest to what the load is made for. */
    private double nominal(double madeForV) {
        return plan.domains().stream().map(Plan.Domain::nominalV)
                .min(Comparator.comparingDouble(v -> StrictMath.abs(v - madeForV))).orElse(Double.NaN);
    }

    private ArrangementFigures.HotConductor hottest() {
        ArrangementFigures.HotConductor hottest = null;
        for (SolvedCase solved : context.settled()) {
            for (int c = 0; c < plan.conductors().size(); c++) {
                Plan.Cable cable = plan.cables().get(plan.conductors().get(c).cable());
                double hotC = solved.running().conductorC(c);
                if (!cable.existing() && solved.running().conductorA(c) != 0 && (hottest == null || hotC > hottest.hotC())) {
                    hottest = new ArrangementFigures.HotConductor(context.names().conductor(c), solved.state().name(), hotC,
                            solved.ratings().get(c).maxC());
                }
            }
        }
        return hottest;
    }
}
