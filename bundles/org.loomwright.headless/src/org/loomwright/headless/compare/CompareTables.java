// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.compare.ArrangementFigures.LoadVoltage;
import org.loomwright.engine.compare.ComparedFigure;
import org.loomwright.engine.result.Designations;
import org.loomwright.export.table.Column;
import org.loomwright.export.table.Table;

/** The tables of a comparison: a column for each arrangement, then what each has more than the first. */
public final class CompareTables {
    private final ArrangementComparison comparison;
    private final List<String> names;

    /**
     * The tables of a comparison.
     *
     * @param names a name for each arrangement
     */
    public CompareTables(ArrangementComparison comparison, List<String> names) {
        this.comparison = comparison;
        this.names = List.copyOf(names);
    }

    /** All figures. */
    public Table figures() {
        return table("Figures", comparison.figures(), true);
    }

    /** Where the copper is. */
    public Table copper() {
        return table("Copper, where it is", comparison.copperByDuty(), true);
    }

    /** Conductor by section. */
    public Table sections() {
        return table("Conductor by section", comparison.metresBySection(), false);
    }

    private Table table(String title, List<ComparedFigure> figures, boolean judged) {
        List<Column> columns = columns("figure", "", judged);
        List<List<Object>> rows = new ArrayList<>();
        for (ComparedFigure figure : figures) {
            List<Object> row = new ArrayList<>(List.of(words(figure), unit(figure.unit())));
            for (double value : figure.values()) {
                row.add(value == 0 && !judged ? null : rounded(value, figure.unit()));
            }
            for (int i = 1; i < names.size(); i++) {
                row.add(signed(rounded(figure.difference(i), figure.unit())));
            }
            if (judged && names.size() > 1) {
                row.add(figure.best() < 0 ? "" : names.get(figure.best()));
            }
            rows.add(row);
        }
        return new Table(title, columns, rows, null);
    }

    private List<Column> columns(String key, String title, boolean judged) {
        List<Column> columns = new ArrayList<>(List.of(Column.text(key, title), Column.text("unit", "unit")));
        for (int i = 0; i < names.size(); i++) {
            columns.add(Column.number("value" + i, names.get(i), ""));
        }
        for (int i = 1; i < names.size(); i++) {
            columns.add(Column.number("difference" + i, names.size() == 2 ? "difference" : names.get(i) + " has more",
                    ""));
        }
        if (judged && names.size() > 1) {
            columns.add(Column.text("better", "better"));
        }
        return columns;
    }

    /** Loads by what the arrangements give them, the one with the least share of its nominal voltage first. */
    public Table voltages() {
        List<Column> columns = new ArrayList<>(List.of(Column.text("load", "load"), Column.text("label", "")));
        for (int i = 0; i < names.size(); i++) {
            columns.add(Column.number("volts" + i, names.get(i), "V"));
        }
        columns.add(Column.number("leastV", "works from", "V"));
        columns.add(Column.text("case", "case"));
        List<List<LoadVoltage>> loads = new ArrayList<>(comparison.loads().values());
        loads.sort(Comparator.comparingDouble(CompareTables::leastShare));
        List<List<Object>> rows = new ArrayList<>();
        for (List<LoadVoltage> load : loads) {
            List<Object> row = new ArrayList<>(List.of(new Designations(comparison.arrangements().get(0).arrangement())
                    .shown(load.get(0).load()), load.get(0).label()));
            load.forEach(each -> row.add(rounded(each.volts(), "V")));
            row.add(rounded(load.get(0).leastV(), "V"));
            List<String> cases = load.stream().map(LoadVoltage::caseName).distinct().toList();
            row.add(String.join(", ", cases));
            rows.add(row);
        }
        return new Table("Lowest voltage of each load", columns, rows, null);
    }

    private static double leastShare(List<LoadVoltage> load) {
        return load.stream().mapToDouble(each -> each.volts() / each.nominalV()).min().orElse(1);
    }

    private static String words(ComparedFigure figure) {
        return figure.key().startsWith("conductorM.") ? new BigDecimal(figure.words().replace(" mm2", "")).stripTrailingZeros()
                .toPlainString() + " mm2" : figure.words();
    }

    /** Unit as people read it. */
    static String unit(String unit) {
        return "money".equals(unit) || "1".equals(unit) ? "" : unit;
    }

    /** A figure with the digits that its unit deserves; null when it is not known. */
    static BigDecimal rounded(double value, String unit) {
        if (!Double.isFinite(value)) {
            return null;
        }
        int digits = switch (unit) {
            case "1", "cm2" -> 0;
            case "kg", "money", "V" -> 2;
            case "dm3" -> 3;
            case "mm2" -> 2;
            default -> 1;
        };
        BigDecimal number = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
        if ("mm2".equals(unit)) {
            BigDecimal bare = number.stripTrailingZeros();
            return bare.scale() < 0 ? bare.setScale(0) : bare;
        }
        return number;
    }

    private static Object signed(BigDecimal number) {
        return number != null && number.signum() == 0 ? null : number;
    }
}
