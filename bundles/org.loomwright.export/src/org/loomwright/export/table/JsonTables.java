// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;

/** Writes tables as arrays of JSON objects, keyed by the columns' keys; cells without a value are left out. */
public final class JsonTables {
    private JsonTables() {
    }

    /** Writes the rows as the value of {@code field}, and the totals as {@code fieldTotals} when there are any. */
    public static void write(Table table, String field, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(field);
        for (List<Object> row : table.rows()) {
            row(table, row, json);
        }
        json.writeEndArray();
        if (table.totals() != null) {
            json.writeFieldName(field + "Totals");
            row(table, table.totals(), json);
        }
    }

    private static void row(Table table, List<Object> row, JsonGenerator json) throws IOException {
        json.writeStartObject();
        for (int i = 0; i < row.size(); i++) {
            Object cell = row.get(i);
            String key = table.columns().get(i).key();
            if (cell instanceof BigDecimal number) {
                json.writeFieldName(key);
                json.writeNumber(number.toPlainString());
            } else if (cell != null) {
                json.writeStringField(key, (String) cell);
            }
        }
        json.writeEndObject();
    }
}
