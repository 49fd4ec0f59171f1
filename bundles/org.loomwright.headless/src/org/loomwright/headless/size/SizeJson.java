// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.size;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.loomwright.engine.result.Severity;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.engine.sizing.Constraint;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.headless.check.Caution;
import org.loomwright.headless.earth.JsonFigures;

/** Writes a sizing as JSON; its form is told by {@code schema/size.schema.json} of this bundle. */
final class SizeJson {
    private final JsonGenerator json;

    /** Opens a document on {@code out}, which is not closed. */
    SizeJson(Writer out) throws IOException {
        json = new JsonFactory().createGenerator(out);
        json.configure(JsonGenerator.Feature.AUTO_CLOSE_TARGET, false);
        json.setPrettyPrinter(new DefaultPrettyPrinter());
    }

    /** Writes the whole document; {@code explain} is the id of a cable, empty for all, null for none. */
    void write(List<SizedVehicle> sized, boolean applied, String explain) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", "loomwright-size");
        json.writeStringField("formatVersion", "1.0");
        json.writeStringField("caution", Caution.TEXT);
        json.writeBooleanField("applied", applied);
        json.writeArrayFieldStart("vehicles");
        for (SizedVehicle each : sized) {
            vehicle(each, explain);
        }
        json.writeEndArray();
        json.writeEndObject();
        json.flush();
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
        number("cost", result.cost());
        number("bound", result.bound());
        number("gap", result.gap());
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
            optional("beforePart", each.beforePart());
            number("beforeA", each.beforeA());
            optional("afterPart", each.afterPart());
            number("afterA", each.afterA());
            number("currentA", each.currentA());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("limits");
        for (SizingResult.LimitCost each : result.sensitivity()) {
            json.writeStartObject();
            json.writeStringField("element", each.element());
            number("limit", each.limit().value());
            json.writeStringField("unit", each.limit().unit());
            number("wholeKg", each.wholeKg());
            number("pointKg", each.pointKg());
            number("pointMoney", each.pointMoney());
            json.writeEndObject();
        }
        json.writeEndArray();
        new JsonFigures(json).findings(result.troubles(), Severity.NOTE);
        if (explain != null) {
            new JsonFigures(json).explained(result.cables().stream()
                    .filter(cable -> explain.isEmpty() || cable.id().equals(explain))
                    .map(cable -> new ElementFigures(cable.id(), null, cable.derivations())).toList());
        }
        json.writeEndObject();
    }

    private void cable(SizingResult.SizedCable cable) throws IOException {
        json.writeStartObject();
        json.writeStringField("cable", cable.id());
        optional("part", cable.part());
        number("lengthMm", cable.lengthMm());
        number("currentA", cable.currentA());
        optional("case", cable.currentCase());
        number("beforeMm2", cable.beforeMm2());
        number("afterMm2", cable.afterMm2());
        number("dropV", cable.dropV());
        number("hotC", cable.hotC());
        Constraint limiting = cable.limiting();
        if (limiting != null) {
            json.writeObjectFieldStart("limiting");
            json.writeStringField("rule", limiting.rule());
            optional("element", limiting.element());
            optional("case", limiting.caseName());
            if (limiting.limit() != null) {
                number("limit", limiting.limit().value());
                json.writeStringField("unit", limiting.limit().unit());
            }
            json.writeEndObject();
        }
        optional("why", cable.why());
        json.writeEndObject();
    }

    private void totals(String field, SizingResult.Totals totals) throws IOException {
        json.writeObjectFieldStart(field);
        number("copperKg", totals.copperKg());
        number("money", totals.money());
        json.writeNumberField("sections", totals.sections());
        json.writeEndObject();
    }

    private void number(String field, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumberField(field, value);
        } else {
            json.writeNullField(field);
        }
    }

    private void optional(String field, String value) throws IOException {
        if (value != null) {
            json.writeStringField(field, value);
        }
    }
}
