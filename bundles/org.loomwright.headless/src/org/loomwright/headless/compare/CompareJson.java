// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.compare;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.compare.ArrangementFigures;
import org.loomwright.engine.compare.ComparedFigure;
import org.loomwright.engine.compare.CopperRow;
import org.loomwright.engine.compare.FigureDerivations;
import org.loomwright.engine.compare.Tally;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.headless.check.Caution;
import org.loomwright.headless.report.JsonDocument;
import org.loomwright.headless.report.JsonFigures;

/** Writes a comparison as JSON; its form is told by {@code schema/compare.schema.json} of this bundle. */
final class CompareJson {
    private final Writer out;
    private final JsonGenerator json;
    private final JsonFigures written;

    /** Opens a document on {@code out}, which is not closed. */
    CompareJson(Writer out) throws IOException {
        this.out = out;
        json = JsonDocument.open(out, "compare", Caution.TEXT);
        written = new JsonFigures(json);
    }

    /** Writes the whole document; {@code sizedFor} is the word of the objective, or null when nothing was sized. */
    void write(List<StudiedArrangement> studied, String sizedFor, boolean explain) throws IOException {
        json.writeStringField("file", studied.get(0).checked().file());
        json.writeStringField("vehicle", studied.get(0).checked().plan().vehicle());
        json.writeStringField("label", studied.get(0).checked().label());
        json.writeStringField("practice", studied.get(0).checked().plan().practice().name());
        if (sizedFor != null) {
            json.writeStringField("sizedFor", sizedFor);
        }
        json.writeArrayFieldStart("arrangements");
        for (StudiedArrangement each : studied) {
            arrangement(each, explain);
        }
        json.writeEndArray();
        ArrangementComparison comparison = new ArrangementComparison(studied.stream().map(StudiedArrangement::figures).toList());
        compared("figures", comparison.figures());
        compared("copperByDuty", comparison.copperByDuty());
        compared("metresBySection", comparison.metresBySection());
        JsonDocument.close(json, out);
    }

    private void arrangement(StudiedArrangement studied, boolean explain) throws IOException {
        ArrangementFigures figures = studied.figures();
        json.writeStartObject();
        json.writeStringField("arrangement", figures.arrangement());
        json.writeStringField("label", studied.label());
        json.writeBooleanField("adopted", studied.checked().adopted());
        json.writeArrayFieldStart("copper");
        for (CopperRow row : figures.copper()) {
            json.writeStartObject();
            json.writeNumberField("sectionMm2", row.sectionMm2());
            json.writeStringField("duty", row.duty().name().toLowerCase(Locale.ROOT));
            json.writeNumberField("conductorM", row.conductorM());
            json.writeNumberField("copperKg", row.copperKg());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeObjectFieldStart("price");
        for (ArrangementFigures.Priced kind : ArrangementFigures.Priced.values()) {
            tally(kind.name().toLowerCase(Locale.ROOT), figures.price().get(kind));
        }
        json.writeEndObject();
        tally("massKg", figures.massKg());
        tally("areaCm2", figures.areaCm2());
        if (figures.hottest() != null) {
            json.writeObjectFieldStart("hottest");
            json.writeStringField("conductor", figures.hottest().conductor());
            json.writeStringField("case", figures.hottest().caseName());
            written.number("hotC", figures.hottest().hotC());
            written.number("maxC", figures.hottest().maxC());
            json.writeEndObject();
        }
        json.writeArrayFieldStart("loads");
        for (ArrangementFigures.LoadVoltage load : figures.voltages()) {
            json.writeStartObject();
            json.writeStringField("load", load.load());
            json.writeStringField("label", load.label());
            json.writeStringField("case", load.caseName());
            written.number("volts", load.volts());
            written.number("leastV", load.leastV());
            written.number("nominalV", load.nominalV());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeNumberField("accepted", figures.accepted());
        if (explain) {
            written.explained(List.of(new ElementFigures("sums", null, FigureDerivations.of(figures))));
        }
        json.writeEndObject();
    }

    private void compared(String field, List<ComparedFigure> figures) throws IOException {
        json.writeArrayFieldStart(field);
        for (ComparedFigure figure : figures) {
            json.writeStartObject();
            json.writeStringField("key", figure.key());
            json.writeStringField("unit", figure.unit());
            json.writeArrayFieldStart("values");
            for (double value : figure.values()) {
                if (Double.isFinite(value)) {
                    json.writeNumber(value);
                } else {
                    json.writeNull();
                }
            }
            json.writeEndArray();
            if (figure.best() >= 0) {
                json.writeNumberField("best", figure.best());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void tally(String field, Tally tally) throws IOException {
        json.writeObjectFieldStart(field);
        json.writeNumberField("known", tally.known());
        json.writeNumberField("unknown", tally.unknown());
        json.writeEndObject();
    }
}
