// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.LoadVerdict;
import org.loomwright.engine.result.Severity;
import org.loomwright.headless.report.JsonDocument;
import org.loomwright.headless.report.JsonFigures;
import org.loomwright.model.files.ReadFault;

/** Writes the check as JSON; its form is told by {@code schema/check.schema.json} of this bundle. */
public final class CheckJson {
    private final Writer out;
    private final JsonGenerator json;
    private final JsonFigures figures;

    /** Opens a document on {@code out}, which is not closed. */
    public CheckJson(Writer out) throws IOException {
        this.out = out;
        json = JsonDocument.open(out, "check", Caution.TEXT);
        figures = new JsonFigures(json);
    }

    /**
     * Writes the whole document.
     *
     * @param checked   vehicles checked
     * @param threshold findings below it are left out
     * @param faults    what was wrong with the files
     * @param explain   element whose derivations are added, as a person wrote it, or null
     */
    public void write(List<CheckedVehicle> checked, Severity threshold, List<ReadFault> faults, String explain)
            throws IOException {
        json.writeArrayFieldStart("faults");
        for (ReadFault fault : faults) {
            fault(fault);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("vehicles");
        for (CheckedVehicle vehicle : checked) {
            vehicle(vehicle, threshold, explain);
        }
        json.writeEndArray();
        JsonDocument.close(json, out);
    }

    private void fault(ReadFault fault) throws IOException {
        json.writeStartObject();
        json.writeStringField("file", fault.file());
        json.writeNumberField("line", fault.line());
        json.writeNumberField("column", fault.column());
        figures.optional("element", fault.element());
        json.writeStringField("message", fault.message());
        figures.optional("expected", fault.expected());
        json.writeEndObject();
    }

    private void vehicle(CheckedVehicle checked, Severity threshold, String explain) throws IOException {
        Plan plan = checked.plan();
        json.writeStartObject();
        json.writeStringField("file", checked.file());
        json.writeStringField("vehicle", plan.vehicle());
        json.writeStringField("label", checked.label());
        json.writeStringField("arrangement", plan.arrangement());
        json.writeBooleanField("adopted", checked.adopted());
        json.writeStringField("practice", plan.practice().name());
        figures.findings(checked.result().findings(), threshold);
        json.writeArrayFieldStart("loads");
        for (LoadVerdict verdict : checked.result().verdicts()) {
            verdict(verdict);
        }
        json.writeEndArray();
        String element = explain == null ? null : checked.element(explain);
        if (element != null) {
            figures.explained(checked.result().explainer().explain(element));
        }
        json.writeEndObject();
    }

    private void verdict(LoadVerdict verdict) throws IOException {
        json.writeStartObject();
        json.writeStringField("load", verdict.load());
        figures.optional("case", verdict.caseName());
        figures.number("voltageV", verdict.voltageV());
        figures.number("currentA", verdict.currentA());
        figures.number("dropV", verdict.dropV());
        figures.number("dropShare", verdict.dropShare());
        figures.number("limitShare", verdict.limit());
        figures.causes("shares", verdict.shares());
        json.writeStringField("verdict", verdict.sentence());
        json.writeEndObject();
    }
}
