// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.loomwright.engine.result.Severity;
import org.loomwright.engine.sizing.Constraint;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.headless.check.Caution;
import org.loomwright.headless.report.JsonDocument;
import org.loomwright.headless.report.JsonFigures;

/** Writes a sizing as JSON; its form is told by {@code schema/size.schema.json} of this bundle. */
final class SizeJson {
    private final Writer out;
    private final JsonGenerator json;
    private final JsonFigures figures;

    /** Opens a document on {@code out}, which is not closed. */
    SizeJson(Writer out) throws IOException {
        this.out = out;
        json = JsonDocument.open(out, "size", Caution.TEXT);
        figures = new JsonFigures(json);
    }

    /** Writes the whole document; {@code explain} is the id of a cable, empty for all, null for none. */
    void write(List<SizedVehicle> sized, boolean applied, String explain) throws IOException {
        json.writeBooleanField("applied", applied);
        json.writeArrayFieldStart("vehicles");
        for (SizedVehicle each : sized) {
            vehicle(each, explain);
        }
        json.writeEndArray();
        JsonDocument.close(json, out);
    }

    private void vehicle(SizedVehicle sized, String explain) throws IOException {
        SizingResult result = sized.result();
        json.writeStartObject();
        json.writeStringField("file", sized.file());
        json.writeStringField("vehicle", sized.plan().vehicle());
        json.writeStringField("label", sized.label());
        json.writeStringField("arrangement", sized.plan().arrangement());
        json.writeBooleanField("adopted", sized.adopted());
        json.writeStringField("practice", sized.plan().practice().name());
        json.writeStringField("objective", result.objective().word());
        json.writeStringField("unit", result.objective().unit());
        figures.number("cost", result.cost());
        figures.number("bound", result.bound());
        figures.number("gap", result.gap());
        json.writeNumberField("rounds", result.rounds());
        totals("before", result.before());
        totals("after", result.after());
        if (result.alone() != null) {
            totals("alone", result.alone());
        }
        json.writeArrayFieldStart("cables");
        for (SizingResult.SizedCable cable : result.cables()) {
            cable(cable);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("protectors");
        for (SizingResult.SizedProtector each : result.protectors()) {
            json.writeStartObject();
            json.writeStringField("way", each.way());
            figures.optional("beforePart", each.beforePart());
            figures.number("beforeA", each.beforeA());
            figures.optional("afterPart", each.afterPart());
            figures.number("afterA", each.afterA());
            figures.number("currentA", each.currentA());
            limiting(each.limiting());
            figures.optional("why", each.why());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("limits");
        for (SizingResult.LimitCost each : result.sensitivity()) {
            json.writeStartObject();
            json.writeStringField("element", each.element());
            figures.number("limit", each.limit().value());
            json.writeStringField("unit", each.limit().unit());
            figures.number("wholeKg", each.wholeKg());
            figures.number("pointKg", each.pointKg());
            figures.number("pointMoney", each.pointMoney());
            json.writeEndObject();
        }
        json.writeEndArray();
        figures.findings(result.troubles(), Severity.NOTE);
        if (explain != null) {
            figures.explained(new SizeFigures(sized).of(explain).toList());
        }
        json.writeEndObject();
    }

    private void cable(SizingResult.SizedCable cable) throws IOException {
        json.writeStartObject();
        json.writeStringField("cable", cable.id());
        figures.optional("part", cable.part());
        figures.number("lengthMm", cable.lengthMm());
        figures.number("currentA", cable.currentA());
        figures.optional("case", cable.currentCase());
        figures.number("beforeMm2", cable.beforeMm2());
        figures.number("afterMm2", cable.afterMm2());
        figures.number("dropV", cable.dropV());
        figures.number("hotC", cable.hotC());
        limiting(cable.limiting());
        figures.optional("why", cable.why());
        figures.optional("protector", cable.protector());
        json.writeEndObject();
    }

    private void limiting(Constraint limiting) throws IOException {
        if (limiting == null) {
            return;
        }
        json.writeObjectFieldStart("limiting");
        json.writeStringField("rule", limiting.rule());
        figures.optional("element", limiting.element());
        figures.optional("case", limiting.caseName());
        if (limiting.limit() != null) {
            figures.number("limit", limiting.limit().value());
            json.writeStringField("unit", limiting.limit().unit());
        }
        json.writeEndObject();
    }

    private void totals(String field, SizingResult.Totals totals) throws IOException {
        json.writeObjectFieldStart(field);
        figures.number("copperKg", totals.copperKg());
        figures.number("money", totals.money());
        json.writeNumberField("sections", totals.sections());
        json.writeEndObject();
    }
}
