// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.earth;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.earth.CaseEarth;
import org.loomwright.engine.earth.CaseEarth.ContactFlow;
import org.loomwright.engine.earth.EarthTable;
import org.loomwright.engine.earth.ReturnRow;
import org.loomwright.engine.earth.StrapRow;
import org.loomwright.engine.earth.StrapRow.StrapState;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.check.ElementNames;
import org.loomwright.export.table.Column;
import org.loomwright.export.table.Table;

/** The tables of the earth report for people. */
public final class EarthTables {
    private final EarthTable earth;
    private final Plan plan;
    private final Designations shown;
    private final ElementNames names;

    /** The tables of a study. */
    public EarthTables(EarthTable earth) {
        this.earth = earth;
        plan = earth.plan();
        shown = new Designations(plan.arrangement());
        names = ElementNames.of(plan);
    }

    /** Potential of each body in each case, V. */
    public Table bodies() {
        List<Column> columns = new ArrayList<>(List.of(Column.text("case", "case")));
        plan.bodies().forEach(body -> columns.add(Column.number(body.id(), body.id(), "V")));
        return byCase("Bodies", columns, at -> at.bodyV().stream().map(volt -> fixed(volt, 3)).toList());
    }

    /** Current of each strap and seam in each case, A. */
    public Table currents() {
        List<Column> columns = new ArrayList<>(List.of(Column.text("case", "case")));
        plan.bonds().forEach(bond -> columns.add(Column.number(bond.id(), shown.shown(bond.id()), "A")));
        plan.bodyLinks().forEach(link -> columns.add(Column.number(link.id(), shown.shown(link.id()), "A")));
        return byCase("Currents", columns, at -> {
            List<BigDecimal> cells = new ArrayList<>();
            at.bondA().forEach(amps -> cells.add(current(StrictMath.abs(amps))));
            at.seamA().forEach(amps -> cells.add(current(StrictMath.abs(amps))));
            return cells;
        });
    }

    private interface Cells {
        List<BigDecimal> of(CaseEarth at);
    }

    private Table byCase(String title, List<Column> columns, Cells cells) {
        List<List<Object>> rows = new ArrayList<>();
        for (CaseEarth at : earth.cases()) {
            List<Object> row = new ArrayList<>();
            row.add(at.caseName() + (at.settled() ? "" : " (no operating point)"));
            cells.of(at).forEach(row::add);
            rows.add(row);
        }
        return new Table(title, columns, rows, null);
    }

    /** Each strap in the case that is nearest to its limits. */
    public Table straps() {
        List<List<Object>> rows = new ArrayList<>();
        for (StrapRow row : earth.straps()) {
            Plan.Bond bond = plan.bonds().get(row.bond());
            StrapState at = row.worst();
            rows.add(Arrays.asList(shown.shown(bond.id()), between(bond), fixed(bond.sectionMm2(), 0), fixed(1000 * bond.ohm(),
                    2),
                    at == null || at.currentA() == 0 ? "" : at.caseName(), at == null ? null : current(at.currentA()),
                    at == null ? null : fixed(at.dropV(), 3), at == null ? null : fixed(at.limitV(), 1),
                    current(row.mostHeatW()), word(row.verdict()),
                    row.sufficient() == null || Double.isInfinite(row.sufficient().sectionMm2()) ? null
                            : fixed(row.sufficient().sectionMm2(), 0)));
        }
        return new Table("Straps", List.of(Column.text("strap", "strap"), Column.text("between", "between"),
                Column.number("sectionMm2", "section", "mm2"), Column.number("milliohm", "", "mohm"),
                Column.text("case", "case"), Column.number("currentA", "current", "A"), Column.number("dropV", "drop", "V"),
                Column.number("limitV", "limit", "V"), Column.number("heatW", "most heat", "W"), Column.text("verdict",
                        "verdict"),
                Column.number("sufficientMm2", "would do", "mm2")), rows, null);
    }

    /** Each earth point and case contact in the case in which it carries most. */
    public Table contacts() {
        List<List<Object>> rows = new ArrayList<>();
        for (int t = 0; t < plan.terminals().size(); t++) {
            ContactFlow most = null;
            String caseName = "";
            for (CaseEarth at : earth.cases()) {
                for (ContactFlow contact : at.contacts()) {
                    boolean more = contact.terminal() == t && at.settled()
                            && (most == null || StrictMath.abs(contact.currentA()) > StrictMath.abs(most.currentA()));
                    most = more ? contact : most;
                    caseName = more ? at.caseName() : caseName;
                }
            }
            if (most != null) {
                Plan.Terminal point = plan.terminals().get(t);
                int body = point.device() < 0 ? point.body() : plan.devices().get(point.device()).body();
                rows.add(Arrays.asList(shown.shown(point.id()), plan.bodies().get(body).id(), caseName,
                        current(StrictMath.abs(most.currentA())), fixed(1000 * StrictMath.abs(most.dropV()), 1),
                        current(most.heatW())));
            }
        }
        return new Table("Earth points", List.of(Column.text("point", "point"), Column.text("body", "body"),
                Column.text("case", "case"), Column.number("currentA", "current", "A"), Column.number("dropMv", "drop", "mV"),
                Column.number("heatW", "heat", "W")), rows, null);
    }

    /** The return of each load. */
    public Table returns() {
        List<List<Object>> rows = new ArrayList<>();
        for (ReturnRow row : earth.returns()) {
            boolean other = row.other() != null;
            rows.add(Arrays.asList(names.shownElement(row.demand()), row.way().name().toLowerCase(Locale.ROOT), row.caseName(),
                    current(row.currentA()), fixed(1000 * row.returnV(), 0), fixed(1000 * row.othersV(), 0),
                    row.sharedWith() < 0 ? "" : shown.shown(names.element(row.sharedWith())),
                    row.sharedWith() < 0 ? null : fixed(1000 * row.sharedOhm(), 2),
                    other ? fixed(1000 * row.other().returnV(), 0) : null, other ? fixed(row.other().moreCopperKg(), 2) : null,
                    practice(row)));
        }
        return new Table("Returns", List.of(Column.text("load", "load"), Column.text("way", "return"), Column.text("case",
                "case"),
                Column.number("currentA", "load", "A"), Column.number("returnMv", "loses", "mV"),
                Column.number("othersMv", "others", "mV"), Column.text("sharedWith", "with"),
                Column.number("sharedMilliohm", "shares", "mohm"), Column.number("otherMv", "other", "mV"),
                Column.number("moreCopperKg", "copper", "kg"), Column.text("practice", "practice")), rows, null);
    }

    private static String practice(ReturnRow row) {
        return row.asked() ? "asks for own" : row.way() == ReturnRow.Way.OWN && !row.permitted() ? "own only" : "";
    }

    private String between(Plan.Bond bond) {
        return bodyOf(bond.a()) + " - " + bodyOf(bond.b());
    }

    private String bodyOf(int terminal) {
        int body = plan.terminals().get(terminal).body();
        return body < 0 ? "?" : plan.bodies().get(body).id();
    }

    private static String word(StrapRow.Verdict verdict) {
        return switch (verdict) {
            case IDLE -> "carries nothing";
            case HOLDS -> "holds";
            case LOSSY -> "loses too much";
            case OVERLOADED -> "overloaded";
        };
    }

    /** Small figures would be lost behind one decimal. */
    private static BigDecimal current(double value) {
        return fixed(value, StrictMath.abs(value) < 1 ? 2 : 1);
    }

    /** A number with fixed decimals; null, shown empty, for one that is not known. */
    private static BigDecimal fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return null;
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs() : rounded;
    }
}
