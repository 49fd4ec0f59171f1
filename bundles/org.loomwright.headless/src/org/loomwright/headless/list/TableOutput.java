// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.list;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.export.table.CsvTable;
import org.loomwright.export.table.JsonTables;
import org.loomwright.export.table.Table;
import org.loomwright.export.table.TextTable;
import org.loomwright.export.table.XlsxTables;
import org.loomwright.headless.Style;
import org.loomwright.headless.Version;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.check.Caution;

/** Writes a table in the form asked for. */
final class TableOutput {
    private final TableFormat format;
    private final String jsonName;
    private final Plan plan;

    TableOutput(TableFormat format, String jsonName, Plan plan) {
        this.format = format;
        this.jsonName = jsonName;
        this.plan = plan;
    }

    /** Writes text, CSV or JSON. */
    void write(Table table, List<String> notes, Style style, Writer out) throws IOException {
        switch (format) {
            case TEXT -> text(table, notes, style, out);
            case CSV -> CsvTable.write(table, out);
            case JSON -> json(table, out);
            case XLSX -> throw new IllegalStateException("a workbook is written as bytes");
        }
    }

    /** Writes a workbook. */
    static void workbook(List<Table> tables, OutputStream out) throws IOException {
        XlsxTables.write(tables, Version.majorMinor(), out);
    }

    private void text(Table table, List<String> notes, Style style, Writer out) throws IOException {
        out.write(style.strong(table.title()) + "  " + plan.vehicle()
                + (plan.arrangement().isEmpty() ? "" : ", arrangement " + plan.arrangement()) + "\n\n");
        TextTable text = new TextTable(table, "  ");
        for (String line : text.all()) {
            out.write(line + "\n");
        }
        out.write("\n");
        PrintWriter printer = new PrintWriter(out);
        for (String note : notes) {
            WrappedText.write(printer, "  ", "", note);
        }
        printer.println();
        WrappedText.write(printer, "", "", Caution.TEXT);
        printer.flush();
    }

    private void json(Table table, Writer out) throws IOException {
        JsonGenerator json = new JsonFactory().createGenerator(out);
        json.configure(JsonGenerator.Feature.AUTO_CLOSE_TARGET, false);
        json.setPrettyPrinter(new DefaultPrettyPrinter());
        json.writeStartObject();
        json.writeStringField("format", "loomwright-" + jsonName);
        json.writeStringField("formatVersion", "1.0");
        json.writeStringField("caution", Caution.TEXT);
        json.writeStringField("vehicle", plan.vehicle());
        json.writeStringField("arrangement", plan.arrangement());
        JsonTables.write(table, "lines", json);
        json.writeEndObject();
        json.flush();
        out.write("\n");
    }
}
