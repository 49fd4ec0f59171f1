// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.loomwright.engine.compare.ArrangementFigures.LoadVoltage;
import org.loomwright.engine.compare.ComparedFigure.Better;
import org.loomwright.engine.result.Severity;

/**
 * Arrangements of one vehicle side by side.
 *
 * @param arrangements figures of each, in the order asked for
 */
public record ArrangementComparison(List<ArrangementFigures> arrangements) {
    public ArrangementComparison {
        arrangements = List.copyOf(arrangements);
        if (arrangements.isEmpty()) {
            throw new IllegalArgumentException("nothing to compare");
        }
    }

    /** The figures that say how arrangements differ, in the order of reports. */
    public List<ComparedFigure> figures() {
        List<ComparedFigure> all = new ArrayList<>();
        all.add(figure("conductorM", "conductor laid", "m", Better.LOWER, ArrangementFigures::conductorM));
        all.add(figure("copperKg", "copper", "kg", Better.LOWER, ArrangementFigures::copperKg));
        all.add(figure("copperDm3", "copper, volume", "dm3", Better.LOWER, ArrangementFigures::copperDm3));
        all.add(figure("largestMm2", "largest section", "mm2", Better.LOWER, ArrangementFigures::largestMm2));
        all.add(figure("sections", "different sections", "1", Better.LOWER, each -> each.metresBySection().size()));
        all.add(figure("cables", "cables", "1", Better.LOWER, ArrangementFigures::cables));
        all.add(figure("joints", "conductor ends", "1", Better.LOWER, ArrangementFigures::joints));
        all.add(figure("devices", "devices", "1", Better.LOWER, ArrangementFigures::devices));
        all.add(figure("boxes", "boxes and holders", "1", Better.LOWER, ArrangementFigures::boxes));
        all.add(figure("protectors", "fuses and breakers", "1", Better.LOWER, ArrangementFigures::protectors));
        all.add(figure("spareWays", "spare ways", "1", Better.HIGHER, ArrangementFigures::spareWays));
        all.add(figure("areaCm2", "mounting area of boxes", "cm2", Better.LOWER, each -> each.areaCm2().known()));
        all.add(figure("massKg", "mass", "kg", Better.LOWER, each -> each.massKg().known()));
        for (ArrangementFigures.Priced kind : ArrangementFigures.Priced.values()) {
            all.add(figure("price." + kind.name().toLowerCase(Locale.ROOT), "price, " + kind.words(), "money",
                    Better.LOWER, each -> each.price().get(kind).known()));
        }
        all.add(figure("price", "price", "money", Better.LOWER, each -> each.totalPrice().known()));
        all.add(figure("weakestShare", "lowest voltage, share of nominal", "%", Better.HIGHER, each -> each.weakest() == null
                ? Double.NaN : 100 * each.weakest().volts() / each.weakest().nominalV()));
        all.add(figure("hottestC", "hottest conductor", "degC", Better.LOWER,
                each -> each.hottest() == null ? Double.NaN : each.hottest().hotC()));
        for (Severity severity : Severity.values()) {
            all.add(figure(severity.slug() + "s", severity.slug() + "s", "1", Better.LOWER,
                    each -> each.findings().get(severity)));
        }
        return all;
    }

    /** Copper by duty, kg, one figure for each duty that any arrangement has. */
    public List<ComparedFigure> copperByDuty() {
        List<ComparedFigure> all = new ArrayList<>();
        for (CopperDuty duty : CopperDuty.values()) {
            ComparedFigure kg = figure("copperKg." + duty.name().toLowerCase(Locale.ROOT), duty.words(), "kg",
                    Better.LOWER, each -> each.copperKgByDuty().get(duty));
            if (kg.values().stream().anyMatch(value -> value > 0)) {
                all.add(kg);
            }
        }
        return all;
    }

    /** Length of conductors by section, m, one figure for each section that any arrangement has, sections rising. */
    public List<ComparedFigure> metresBySection() {
        List<ComparedFigure> all = new ArrayList<>();
        for (double section : sections()) {
            all.add(figure("conductorM." + section, section + " mm2", "m", Better.NEITHER,
                    each -> each.metresBySection().getOrDefault(section, 0.0)));
        }
        return all;
    }

    /** All sections in use, mm2, rising. */
    public Set<Double> sections() {
        Set<Double> sections = new TreeSet<>();
        arrangements.forEach(each -> sections.addAll(each.metresBySection().keySet()));
        return sections;
    }

    /** Ids of the loads that have the same name in every arrangement, in the order of the plans. */
    public Map<String, List<LoadVoltage>> loads() {
        Set<String> ids = new LinkedHashSet<>();
        arrangements.forEach(each -> each.voltages().forEach(load -> ids.add(load.load())));
        Map<String, List<LoadVoltage>> loads = new LinkedHashMap<>();
        for (String id : ids) {
            List<LoadVoltage> row = new ArrayList<>();
            for (ArrangementFigures each : arrangements) {
                each.voltages().stream().filter(load -> load.load().equals(id)).findFirst().ifPresent(row::add);
            }
            if (row.size() == arrangements.size()) {
                loads.put(id, List.copyOf(row));
            }
        }
        return loads;
    }

    private ComparedFigure figure(String key, String words, String unit, Better better,
            ToDoubleFunction<ArrangementFigures> value) {
        return new ComparedFigure(key, words, unit, better, arrangements.stream().map(value::applyAsDouble).toList());
    }
}
