// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.engine.sizing.SizingResult.LimitCost;
import org.loomwright.engine.sizing.SizingResult.SizedCable;
import org.loomwright.engine.sizing.SizingResult.SizedProtector;
import org.loomwright.export.table.Column;
import org.loomwright.export.table.Table;

/** The tables of a sizing: cables, protectors, what limits cost. */
public final class SizeTables {
    private final SizingResult result;
    private final Plan plan;
    private final Designations shown;

    /** The tables of a sizing of a plan. */
    public SizeTables(SizingResult result, Plan plan) {
        this.result = result;
        this.plan = plan;
        shown = new Designations(plan.arrangement());
    }

    /** Cables whose section was open. */
    public Table cables() {
        List<Column> columns = List.of(Column.text("cable", "cable"), Column.text("ends", "from - to"),
                Column.number("lengthM", "length", "m"), Column.number("currentA", "load", "A"),
                Column.number("beforeMm2", "before", "mm2"), Column.number("afterMm2", "after", "mm2"),
                Column.text("fuse", "fuse"),
                Column.number("fuseBeforeA", "before", "A"), Column.number("fuseAfterA", "after", "A"),
                Column.number("dropV", "drop", "V"), Column.number("hotC", "hottest", "degC"),
                Column.text("limiting", "what holds against less"));
        List<List<Object>> rows = new ArrayList<>();
        for (SizedCable cable : result.cables()) {
            List<Object> row = new ArrayList<>();
            row.add(shown.shown(cable.id()));
            row.add(ends(cable.id()));
            row.add(number(cable.lengthMm() / 1000, 2));
            row.add(number(cable.currentA(), 1));
            row.add(section(cable.beforeMm2()));
            row.add(section(cable.afterMm2()));
            fuse(cable.protector(), row);
            row.add(number(cable.dropV(), 3));
            row.add(number(cable.hotC(), 0));
            row.add(limiting(cable));
            rows.add(row);
        }
        return new Table("Cables", columns, rows, null);
    }

    /** The fuse or breaker before a cable, sized or not. */
    private void fuse(String id, List<Object> row) {
        row.add(id == null ? "" : shown.shown(id));
        SizedProtector sized = result.protectors().stream().filter(each -> each.way().equals(id)).findFirst().orElse(null);
        double fixedA = Double.NaN;
        for (Plan.Element element : plan.elements()) {
            fixedA = element instanceof Plan.Protector protector && (element.id().equals(id) || id != null
                    && id.equals(protector.way())) ? protector.ratingA() : fixedA;
        }
        row.add(section(sized == null ? fixedA : sized.beforeA()));
        row.add(section(sized == null ? fixedA : sized.afterA()));
    }

    private String limiting(SizedCable cable) {
        if (cable.limiting() != null) {
            return cable.limiting().rule() + (cable.limiting().element() == null
                    || cable.limiting().element().startsWith(cable.id()) ? "" : " of " + shown.shown(cable.limiting().element()));
        }
        return cable.why().contains("elsewhere") ? "dearer elsewhere" : "smallest on offer";
    }

    private String ends(String cable) {
        for (int w = 0; w < plan.cables().size(); w++) {
            if (plan.cables().get(w).id().equals(cable)) {
                int index = w;
                return plan.conductors().stream().filter(each -> each.cable() == index).findFirst()
                        .map(each -> shown.shown(plan.terminals().get(each.a()).id()) + " "
                                + shown.shown(plan.terminals().get(each.b()).id())).orElse("");
            }
        }
        return "";
    }

    /** Protectors whose rating was open. */
    public Table protectors() {
        List<Column> columns = List.of(Column.text("way", "way"), Column.number("currentA", "load", "A"),
                Column.number("beforeA", "before", "A"), Column.number("afterA", "after", "A"), Column.text("part", "part"));
        List<List<Object>> rows = new ArrayList<>();
        Set<String> listed = result.cables().stream().map(SizedCable::protector).filter(Objects::nonNull)
                .collect(Collectors.toSet());
        for (SizedProtector each : result.protectors().stream().filter(one -> !listed.contains(one.way())).toList()) {
            List<Object> row = new ArrayList<>();
            row.add(shown.shown(each.way()));
            row.add(number(each.currentA(), 1));
            row.add(section(each.beforeA()));
            row.add(section(each.afterA()));
            row.add(each.afterPart() == null ? "" : each.afterPart());
            rows.add(row);
        }
        return new Table("Fuses and breakers", columns, rows, null);
    }

    /** What the limits of single loads cost. */
    public Table limits() {
        List<Column> columns = List.of(Column.text("load", "load"), Column.text("limit", "limit"),
                Column.number("wholeKg", "without it", "kg"), Column.number("pointKg", "1 % more", "kg"),
                Column.number("pointMoney", "1 % more, price", ""));
        List<List<Object>> rows = new ArrayList<>();
        for (LimitCost each : result.sensitivity()) {
            List<Object> row = new ArrayList<>();
            row.add(shown.shown(each.element()));
            row.add(String.valueOf(each.limit()));
            row.add(number(each.wholeKg(), 3));
            row.add(number(each.pointKg(), 3));
            row.add(number(each.pointMoney(), 2));
            rows.add(row);
        }
        return new Table("What limits cost", columns, rows, null);
    }

    static BigDecimal number(double value, int digits) {
        return Double.isFinite(value) ? BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP) : null;
    }

    private static BigDecimal section(double value) {
        if (!Double.isFinite(value)) {
            return null;
        }
        BigDecimal plain = BigDecimal.valueOf(value).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }
}
