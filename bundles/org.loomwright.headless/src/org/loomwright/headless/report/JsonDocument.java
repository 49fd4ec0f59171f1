// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;

/** A report as a JSON document with the head that all of them have. */
public final class JsonDocument {
    private static final String VERSION = "1.0";

    private JsonDocument() {
    }

    /**
     * Opens a document and writes its head.
     *
     * @param out     where it goes; not closed
     * @param report  name of the report
     * @param caution what to beware of
     */
    public static JsonGenerator open(Writer out, String report, String caution) throws IOException {
        JsonGenerator json = new JsonFactory().createGenerator(out);
        json.configure(JsonGenerator.Feature.AUTO_CLOSE_TARGET, false);
        json.setPrettyPrinter(new DefaultPrettyPrinter());
        json.writeStartObject();
        json.writeStringField("format", "loomwright-" + report);
        json.writeStringField("formatVersion", VERSION);
        json.writeStringField("caution", caution);
        return json;
    }

    /** Ends the document with a line end. */
    public static void close(JsonGenerator json, Writer out) throws IOException {
        json.writeEndObject();
        json.flush();
        out.write("\n");
    }
}
