// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows become objects by the keys of the columns. */
class JsonTablesTest {
    private static final List<Column> COLUMNS = List.of(Column.text("name", "Name for people"),
            Column.number("lengthM", "length", "m"));

    private static String json(List<List<Object>> rows, List<Object> totals) throws IOException {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.writeStartObject();
            JsonTables.write(new Table("Lengths", COLUMNS, rows, totals), "lines", json);
            json.writeEndObject();
        }
        return out.toString();
    }

    @Test
    void keysOfTheColumnsAndNoCellsWithoutValue() throws IOException {
        assertEquals("{\"lines\":[{\"name\":\"W1\",\"lengthM\":1.50},{\"name\":\"\"}]}",
                json(List.of(Arrays.asList("W1", new BigDecimal("1.50")), Arrays.asList("", null)), null));
    }

    @Test
    void totalsStandBesideTheRows() throws IOException {
        assertEquals("{\"lines\":[],\"linesTotals\":{\"name\":\"sum\",\"lengthM\":0}}",
                json(List.of(), Arrays.asList("sum", BigDecimal.ZERO)));
    }

    @Test
    void emptyTableIsAnEmptyArray() throws IOException {
        assertEquals("{\"lines\":[]}", json(List.of(), null));
    }

    @Test
    void numbersArePlain() throws IOException {
        assertEquals("{\"lines\":[{\"lengthM\":1000},{\"lengthM\":0.0000001}]}", json(List.of(
                Arrays.asList(null, new BigDecimal("1E+3")), Arrays.asList(null, new BigDecimal("1E-7"))), null));
    }

    @Test
    void textIsEscaped() throws IOException {
        assertEquals("{\"lines\":[{\"name\":\"a\\\"b\\\\c\\nK\u00fchlbox =1\"}]}",
                json(List.of(Arrays.asList("a\"b\\c\nK\u00fchlbox =1", null)), null));
    }
}
