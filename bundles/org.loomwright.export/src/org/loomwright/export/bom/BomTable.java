// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.export.table.Column;
import org.loomwright.export.table.Table;

/** The bill of materials as a table. */
public final class BomTable {
    private static final BigDecimal G_PER_KG = BigDecimal.valueOf(1000);
    private static final List<Column> COLUMNS = List.of(Column.text("group", "kind"), Column.text("part", "part"),
            Column.text("label", ""), Column.text("orderCode", "order code"), Column.number("sectionMm2", "section", "mm2"),
            Column.text("colour", "colour"), Column.number("needed", "needed", ""), Column.text("unit", ""),
            Column.number("fromStock", "in stock", ""), Column.number("toBuy", "to buy", ""),
            Column.number("unitPrice", "each", ""), Column.number("price", "price", ""), Column.number("massKg", "mass", "kg"),
            Column.text("cuts", "cut, m"));

    private BomTable() {
    }

    /** The table, with totals of price and mass. */
    public static Table of(BillOfMaterials bill) {
        List<List<Object>> rows = new ArrayList<>();
        for (BomLine line : bill.lines()) {
            rows.add(Arrays.asList(line.group(), line.part(), line.label(), line.orderCode(), plain(line.sectionMm2()),
                    line.colour(), quantity(line, line.needed()), line.unit(), quantity(line, line.fromStock()),
                    quantity(line, line.toBuy()), money(line.unitPrice()), money(line.price()), kilograms(line.massG()),
                    cuts(line.cuts())));
        }
        List<Object> totals = Arrays.asList("total", "", "", "", null, "", null, "", null, null, null, money(bill.price()),
                kilograms(bill.massG()), "");
        return new Table("Bill of materials", COLUMNS, rows, totals);
    }

    private static BigDecimal plain(BigDecimal number) {
        return number == null ? null : new BigDecimal(number.toPlainString());
    }

    private static BigDecimal quantity(BomLine line, BigDecimal quantity) {
        return !BomItem.PIECES.equals(line.unit()) ? quantity.setScale(2, RoundingMode.HALF_UP)
                : new BigDecimal(quantity.stripTrailingZeros().toPlainString());
    }

    private static BigDecimal money(BigDecimal amount) {
        return amount == null ? null : amount.setScale(2, RoundingMode.HALF_UP);
    }

    private static BigDecimal kilograms(BigDecimal grams) {
        return grams == null ? null : grams.divide(G_PER_KG, 3, RoundingMode.HALF_UP);
    }

    /** Equal lengths together: {@code 2 x 1.25, 0.80}. */
    private static String cuts(List<BigDecimal> cuts) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        cuts.forEach(cut -> counts.merge(cut.setScale(2, RoundingMode.HALF_UP).toPlainString(), 1, Integer::sum));
        return String.join(", ", counts.entrySet().stream()
                .map(entry -> (entry.getValue() > 1 ? entry.getValue() + " x " : "") + entry.getKey()).toList());
    }
}
