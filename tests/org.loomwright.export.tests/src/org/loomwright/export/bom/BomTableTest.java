// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.export.table.Column;
import org.loomwright.export.table.Table;

/** The bill as a table. */
class BomTableTest {
    private static BigDecimal decimal(String number) {
        return new BigDecimal(number);
    }

    private static Table table(BomLine... lines) {
        return BomTable.of(new BillOfMaterials("wren", "near", List.of(lines), List.of()));
    }

    @Test
    void keysOfTheColumnsCarryTheirUnits() {
        assertEquals(List.of("group", "part", "label", "orderCode", "sectionMm2", "colour", "needed", "unit",
                "fromStock", "toBuy",
                "unitPrice", "price", "massKg", "cuts"), table().columns().stream().map(Column::key).toList());
    }

    @Test
    void emptyBillHasTotalsOfNothing() {
        Table table = table();
        assertEquals(List.of(), table.rows());
        assertEquals(Arrays.asList("total", "", "", "", null, "", null, "", null, null, null, decimal("0.00"), decimal("0.000"),
                ""),
                table.totals());
    }

    @Test
    void lengthsHaveTwoDecimalsAndEqualCutsStandTogether() {
        BomLine line = new BomLine("cable", "single", "Single core", "C-1", decimal("10"), "RD", "m", decimal("4.3"),
                decimal("1.5"), decimal("0.6"), decimal("26"), List.of(decimal("1.50"), decimal("1.50"), decimal("1.3")));
        assertEquals(Arrays.asList("cable", "single", "Single core", "C-1", decimal("10"), "RD", decimal("4.30"), "m",
                decimal("1.50"), decimal("2.80"), decimal("0.60"), decimal("1.68"), decimal("0.112"), "2 x 1.50, 1.30"),
                table(line).rows().get(0));
    }

    @Test
    void piecesHaveNoDecimals() {
        BomLine line = new BomLine("device", "lamp", "", "", null, "", "pcs", decimal("20"), decimal("0"), null, null, List.of());
        assertEquals(Arrays.asList("device", "lamp", "", "", null, "", decimal("20"), "pcs", decimal("0"), decimal("20"),
                null, null, null, ""), table(line).rows().get(0));
    }

    @Test
    void totalsAreThoseOfTheLines() {
        BomLine lamp = new BomLine("device", "lamp", "", "", null, "", "pcs", decimal("3"), decimal("1"), decimal("12.495"),
                decimal("210"), List.of());
        BomLine horn = new BomLine("device", "horn", "", "", null, "", "pcs", decimal("1"), decimal("0"), null, null, List.of());
        Table table = table(lamp, horn);
        assertEquals(decimal("24.99"), table.totals().get(11));
        assertEquals(decimal("0.630"), table.totals().get(12));
    }
}
