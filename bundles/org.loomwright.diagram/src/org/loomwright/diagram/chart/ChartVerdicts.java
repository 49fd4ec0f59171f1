// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.DeviceProtection;
import org.loomwright.engine.protection.Fault;
import org.loomwright.engine.protection.OverloadFigures;
import org.loomwright.engine.protection.Selectivity;
import org.loomwright.engine.protection.ShortTransient;
import org.loomwright.engine.protection.Verdict;
import org.loomwright.engine.result.Finding;

/** The verdicts beside a chart: those that are needed and known, with their figures. */
final class ChartVerdicts {
    private final CheckContext context;
    private final ConductorProtection row;
    private final DeviceProtection device;
    private final List<Finding> findings;
    private final List<TimeCurrentChart.Band> bands;
    private final List<TimeCurrentChart.Spot> inrushes;
    private final List<TimeCurrentChart.Verdict> verdicts = new ArrayList<>();

    ChartVerdicts(CheckContext context, ConductorProtection row, DeviceProtection device, List<Finding> findings,
            List<TimeCurrentChart.Band> bands, List<TimeCurrentChart.Spot> inrushes) {
        this.context = context;
        this.row = row;
        this.device = device;
        this.findings = findings;
        this.bands = bands;
        this.inrushes = inrushes;
    }

    List<TimeCurrentChart.Verdict> all() {
        if (row != null && row.overload() != null) {
            conductor(row.overload(), row.heat());
        }
        if (device != null) {
            device();
        }
        return verdicts;
    }

    private void conductor(OverloadFigures figures, ShortTransient heat) {
        add("Rating", row.conditions().rating(), "In " + ChartWords.amps(figures.inA()) + ", permitted "
                + ChartWords.amps(figures.ratio() * figures.izA()));
        add("Overload", row.conditions().overload(), "I2 " + ChartWords.amps(figures.i2A()) + ", permitted "
                + ChartWords.amps(figures.overloadFactor() * figures.izA()));
        if (heat != null) {
            add("Short circuit", row.conditions().shortTime(), heat(heat) + ", bears " + ChartWords.celsius(heat.limitC()));
        }
        Fault small = row.smallestFar();
        double limitS = context.practice().value("fault-clears.time");
        if (small != null) {
            double seconds = small.clearing().seconds();
            add("Clearing", row.conditions().clears(), ChartWords.amps(small.throughA()) + (Double.isInfinite(seconds)
                    ? " never" : " in " + ChartWords.seconds(seconds)) + ", permitted " + ChartWords.seconds(limitS));
        }
    }

    private static String heat(ShortTransient heat) {
        if (heat.startC() >= heat.limitC()) {
            return "begins at " + ChartWords.celsius(heat.startC());
        }
        return (heat.peakC() >= FlowOptions.COPPER_MELTS_C ? "melts" : "reaches " + ChartWords.celsius(heat.peakC())) + " at "
                + ChartWords.amps(heat.worstA());
    }

    private void device() {
        Plan.Protector protector = (Plan.Protector) context.plan().elements().get(device.protector());
        if (device.breakingVerdict() == Verdict.HOLDS || device.breakingVerdict() == Verdict.FAILS) {
            boolean found = found("breaking-capacity");
            boolean eased = device.breakingVerdict() == Verdict.FAILS && !found;
            verdicts.add(new TimeCurrentChart.Verdict("Breaking capacity", ChartWords.amps(device.breakingA())
                    + " at its terminals, breaks " + ChartWords.amps(protector.breakingA())
                    + (eased ? "; enough after the practice" : ""), !found));
        }
        for (Selectivity pair : device.selectivity().stream().filter(Selectivity::alone).toList()) {
            String upstream = context.names().shown(context.names().element(pair.upstream()));
            switch (pair.kind()) {
                case FULL -> verdicts.add(new TimeCurrentChart.Verdict("Selectivity", "fully, to " + upstream, true));
                case UP_TO -> verdicts.add(new TimeCurrentChart.Verdict("Selectivity", "to " + upstream + " up to "
                        + ChartWords.amps(pair.limitA()) + " of " + ChartWords.amps(pair.largestA()), false));
                case NONE -> verdicts.add(new TimeCurrentChart.Verdict("Selectivity", "none to " + upstream, false));
                default -> { }
            }
        }
        if (!inrushes.isEmpty() && !bands.isEmpty()) {
            boolean meets = inrushes.stream().anyMatch(spot -> spot.seconds() >= bands.get(0).fastestS(spot.amps()));
            boolean found = found("inrush-margin");
            verdicts.add(new TimeCurrentChart.Verdict("Inrush", meets ? "reaches the fastest curve"
                    : found ? "too near to the fastest curve, with what else flows" : "clear of the fastest curve"
                            + (inrushes.size() > 1 ? ", all " + inrushes.size() + " loads" : ""),
                    !meets && !found));
        }
    }

    private boolean found(String rule) {
        String element = context.names().element(device.protector());
        return findings.stream().anyMatch(finding -> finding.rule().equals(rule) && finding.element().equals(element));
    }

    private void add(String name, Verdict verdict, String figures) {
        if (verdict == Verdict.NO_DEVICE) {
            verdicts.add(new TimeCurrentChart.Verdict(name, "no protective device", false));
        } else if (verdict == Verdict.HOLDS || verdict == Verdict.FAILS) {
            verdicts.add(new TimeCurrentChart.Verdict(name, figures, verdict == Verdict.HOLDS));
        }
    }
}
