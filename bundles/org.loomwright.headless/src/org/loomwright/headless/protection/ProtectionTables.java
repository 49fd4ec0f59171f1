// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.protection;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.ElementNames;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.DeviceProtection;
import org.loomwright.engine.protection.Fault;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.protection.OverloadFigures;
import org.loomwright.engine.protection.ProtectionTable;
import org.loomwright.engine.protection.Selectivity;
import org.loomwright.engine.protection.ShortTransient;
import org.loomwright.engine.protection.Verdict;
import org.loomwright.export.table.Column;
import org.loomwright.export.table.Table;

/** The protection study as tables for people. */
public final class ProtectionTables {
    private final ProtectionTable table;
    private final Plan plan;
    private final ElementNames names;

    /** The tables of a study. */
    public ProtectionTables(ProtectionTable table, ElementNames names) {
        this.table = table;
        plan = table.plan();
        this.names = names;
    }

    /** Conductors that a source feeds. */
    public Table supplies() {
        return conductors("Conductors", row -> !row.feeds().isEmpty());
    }

    /** Conductors that carry faults back. */
    public Table returns() {
        return conductors("Returns", row -> !row.duties().isEmpty());
    }

    private Table conductors(String title, Predicate<ConductorProtection> wanted) {
        List<List<Object>> rows = new ArrayList<>();
        table.conductors().stream().filter(wanted).forEach(row -> rows.add(conductor(row)));
        return new Table(title, List.of(Column.text("conductor", "conductor"), Column.number("sectionMm2", "section", "mm2"),
                Column.text("device", "device"), Column.number("inA", "In", "A"), Column.number("izA", "Iz", "A"),
                Column.number("i2A", "I2", "A"), Column.number("smallestA", "smallest", "A"),
                Column.number("largestA", "largest", "A"), Column.text("clears", "clears in"),
                Column.number("peakC", "reaches", "degC"), Column.number("limitC", "bears", "degC"),
                Column.text("rating", "rating"), Column.text("overload", "overload"), Column.text("short", "short"),
                Column.text("cleared", "cleared"), Column.text("live", "live from")), rows, null);
    }

    private List<Object> conductor(ConductorProtection row) {
        OverloadFigures overload = row.overload();
        ShortTransient heat = row.heat();
        return Arrays.asList(names.shownConductor(row.conductor()),
                number(plan.conductors().get(row.conductor()).sectionMm2(), 2), devices(row),
                overload == null ? null : number(overload.inA(), 1), overload == null ? null : number(overload.izA(), 1),
                overload == null ? null : number(overload.i2A(), 1), heat == null ? null : number(heat.smallestA(), 0),
                heat == null ? null : number(heat.largestA(), 0), clears(row), heat == null ? null : number(heat.peakC(), 0),
                heat == null ? null : number(heat.limitC(), 0), word(row.conditions().rating()),
                word(row.conditions().overload()), word(row.conditions().shortTime()), word(row.conditions().clears()),
                row.bothEndsLive() ? "both ends" : "");
    }

    private String devices(ConductorProtection row) {
        List<String> found = new ArrayList<>();
        for (Feed feed : row.feeds()) {
            for (int e : feed.next()) {
                String shown = names.shown(names.element(e));
                if (!found.contains(shown)) {
                    found.add(shown);
                }
            }
        }
        if (row.feeds().isEmpty() && row.overload() != null && row.overload().protector() >= 0) {
            found.add(names.shown(names.element(row.overload().protector())));
        }
        return found.isEmpty() ? "none" : String.join(", ", found);
    }

    private static String clears(ConductorProtection row) {
        Fault fault = row.smallestFar();
        return fault == null ? "" : seconds(fault.clearing().seconds());
    }

    /** A time with its unit, as it reads in a column of text. */
    static String seconds(double seconds) {
        if (Double.isInfinite(seconds)) {
            return "never";
        }
        return seconds < 1 ? number(seconds * 1000, seconds < 0.01 ? 1 : 0).toPlainString() + " ms"
                : number(seconds, 1).toPlainString() + " s";
    }

    /** Protective devices. */
    public Table devices() {
        List<List<Object>> rows = new ArrayList<>();
        for (DeviceProtection row : table.devices()) {
            Plan.Protector device = (Plan.Protector) plan.elements().get(row.protector());
            String shown = names.shown(names.element(row.protector()));
            List<Selectivity> pairs = row.selectivity();
            for (int i = 0; i < StrictMath.max(1, pairs.size()); i++) {
                Selectivity pair = pairs.isEmpty() ? null : pairs.get(i);
                boolean first = i == 0;
                rows.add(Arrays.asList(first ? shown : "", first ? number(device.ratingA(), 1) : null,
                        first ? String.valueOf(device.part()) : "", first ? number(row.breakingA(), 0) : null,
                        first ? number(device.breakingA(), 0) : null, first ? number(row.highestV(), 1) : null,
                        first ? word(row.breakingVerdict()) : "",
                        first ? number(row.conductorsBelow().size(), 0) : null,
                        pair == null ? "" : names.shown(names.element(pair.upstream())), pair == null ? "" : selective(pair)));
            }
        }
        return new Table("Devices", List.of(Column.text("device", "device"), Column.number("ratingA", "In", "A"),
                Column.text("part", "part"), Column.number("faultA", "has to break", "A"),
                Column.number("breakingA", "breaks", "A"), Column.number("highestV", "at", "V"),
                Column.text("breaking", "breaks it"), Column.number("protects", "conductors", ""),
                Column.text("upstream", "upstream"), Column.text("selective", "selective")), rows, null);
    }

    private static String selective(Selectivity pair) {
        return switch (pair.kind()) {
            case FULL -> "fully";
            case UP_TO -> "up to " + number(pair.limitA(), 0).toPlainString() + " A of "
                    + number(pair.largestA(), 0).toPlainString() + " A";
            case NONE -> "not";
            case UNKNOWN -> "not known";
        };
    }

    /** A verdict as it reads in a narrow column. */
    static String word(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> "holds";
            case FAILS -> "FAILS";
            case NOT_NEEDED -> "-";
            case UNKNOWN -> "not known";
            case NO_DEVICE -> "no device";
        };
    }

    /** A number with fixed decimals; null, shown empty, for one that is not known. */
    private static BigDecimal number(double value, int decimals) {
        return Double.isFinite(value) ? BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP) : null;
    }
}
