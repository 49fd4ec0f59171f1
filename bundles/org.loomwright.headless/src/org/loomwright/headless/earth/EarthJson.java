// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.earth;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.ElementNames;
import org.loomwright.engine.earth.CaseEarth;
import org.loomwright.engine.earth.EarthTable;
import org.loomwright.engine.earth.LossCase;
import org.loomwright.engine.earth.LossRow;
import org.loomwright.engine.earth.ReturnRow;
import org.loomwright.engine.earth.StrapRow;
import org.loomwright.engine.result.Severity;
import org.loomwright.headless.check.Caution;
import org.loomwright.headless.report.JsonDocument;
import org.loomwright.headless.report.JsonFigures;

/** Writes the earth study as JSON; its form is told by {@code schema/earth.schema.json} of this bundle. */
final class EarthJson {
    private final Writer out;
    private final JsonGenerator json;
    private final JsonFigures figures;

    /** Opens a document on {@code out}, which is not closed. */
    EarthJson(Writer out) throws IOException {
        this.out = out;
        json = JsonDocument.open(out, "earth", Caution.TEXT);
        figures = new JsonFigures(json);
    }

    /**
     * Writes the whole document.
     *
     * @param studied   arrangements studied
     * @param threshold findings below it are left out
     * @param explain   element whose derivations are added, as a person wrote it, or null
     */
    void write(List<StudiedEarth> studied, Severity threshold, String explain) throws IOException {
        json.writeArrayFieldStart("vehicles");
        for (StudiedEarth each : studied) {
            vehicle(each, threshold, explain);
        }
        json.writeEndArray();
        JsonDocument.close(json, out);
    }

    private void vehicle(StudiedEarth studied, Severity threshold, String explain) throws IOException {
        EarthTable earth = studied.table();
        Plan plan = earth.plan();
        json.writeStartObject();
        json.writeStringField("file", studied.vehicle().file());
        json.writeStringField("vehicle", plan.vehicle());
        json.writeStringField("label", studied.vehicle().label());
        json.writeStringField("arrangement", plan.arrangement());
        json.writeBooleanField("adopted", studied.vehicle().adopted());
        json.writeStringField("practice", plan.practice().name());
        if (earth.minus() >= 0) {
            json.writeStringField("minus", plan.terminals().get(earth.minus()).id());
        }
        figures.findings(studied.vehicle().result().findings(), threshold);
        json.writeArrayFieldStart("cases");
        for (CaseEarth at : earth.cases()) {
            levels(plan, at);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("straps");
        for (StrapRow row : earth.straps()) {
            strap(plan, row);
        }
        json.writeEndArray();
        losses("losses", plan, earth.losses());
        losses("pairs", plan, earth.pairs());
        json.writeArrayFieldStart("returns");
        for (ReturnRow row : earth.returns()) {
            back(ElementNames.of(plan), row);
        }
        json.writeEndArray();
        String element = explain == null ? null : studied.vehicle().element(explain);
        if (element != null) {
            figures.explained(earth.result().explainer().explain(element));
        }
        json.writeEndObject();
    }

    private void levels(Plan plan, CaseEarth at) throws IOException {
        json.writeStartObject();
        json.writeStringField("case", at.caseName());
        json.writeBooleanField("cranking", at.cranking());
        json.writeBooleanField("settled", at.settled());
        json.writeArrayFieldStart("bodies");
        for (int b = 0; b < plan.bodies().size(); b++) {
            entry("body", plan.bodies().get(b).id(), "potentialV", at.bodyV().get(b));
        }
        json.writeEndArray();
        json.writeArrayFieldStart("straps");
        for (int b = 0; b < plan.bonds().size(); b++) {
            entry("strap", plan.bonds().get(b).id(), "currentA", at.bondA().get(b));
        }
        json.writeEndArray();
        json.writeArrayFieldStart("seams");
        for (int s = 0; s < plan.bodyLinks().size(); s++) {
            entry("seam", plan.bodyLinks().get(s).id(), "currentA", at.seamA().get(s));
        }
        json.writeEndArray();
        json.writeArrayFieldStart("contacts");
        for (CaseEarth.ContactFlow contact : at.contacts()) {
            json.writeStartObject();
            json.writeStringField("terminal", plan.terminals().get(contact.terminal()).id());
            figures.number("currentA", contact.currentA());
            figures.number("dropV", contact.dropV());
            figures.number("heatW", contact.heatW());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void entry(String kind, String id, String figure, double value) throws IOException {
        json.writeStartObject();
        json.writeStringField(kind, id);
        figures.number(figure, value);
        json.writeEndObject();
    }

    private void strap(Plan plan, StrapRow row) throws IOException {
        Plan.Bond bond = plan.bonds().get(row.bond());
        json.writeStartObject();
        json.writeStringField("strap", bond.id());
        figures.number("ohm", bond.ohm());
        figures.number("sectionMm2", bond.sectionMm2());
        figures.number("currentMaxA", bond.currentMaxA());
        json.writeStringField("verdict", word(row.verdict()));
        figures.optional("worstCase", row.worst() == null ? null : row.worst().caseName());
        if (row.sufficient() != null) {
            figures.number("sufficientMm2", row.sufficient().sectionMm2());
        }
        json.writeArrayFieldStart("cases");
        for (StrapRow.StrapState state : row.states()) {
            json.writeStartObject();
            json.writeStringField("case", state.caseName());
            figures.number("currentA", state.currentA());
            figures.number("dropV", state.dropV());
            figures.number("limitV", state.limitV());
            figures.number("heatW", state.heatW());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void losses(String field, Plan plan, List<LossRow> rows) throws IOException {
        json.writeArrayFieldStart(field);
        for (LossRow row : rows) {
            json.writeStartObject();
            json.writeArrayFieldStart("straps");
            for (int bond : row.bonds()) {
                json.writeString(plan.bonds().get(bond).id());
            }
            json.writeEndArray();
            json.writeStringField("rank", word(row.rank()));
            json.writeStringField("symptom", row.symptom());
            figures.optional("worstCase", row.worst() == null ? null : row.worst().caseName());
            json.writeArrayFieldStart("uncleared");
            for (LossRow.Uncleared fault : row.uncleared()) {
                uncleared(plan, fault);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("cases");
            for (LossCase at : row.cases()) {
                loss(plan, at);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void uncleared(Plan plan, LossRow.Uncleared fault) throws IOException {
        ElementNames names = ElementNames.of(plan);
        json.writeStartObject();
        json.writeStringField("conductor", names.conductor(fault.conductor()));
        json.writeStringField("body", plan.bodies().get(fault.body()).id());
        json.writeStringField("protector", names.element(fault.protector()));
        figures.number("beforeA", fault.beforeA());
        figures.number("afterA", fault.afterA());
        figures.number("beforeS", fault.beforeS());
        figures.number("afterS", fault.afterS());
        json.writeEndObject();
    }

    private void loss(Plan plan, LossCase at) throws IOException {
        ElementNames names = ElementNames.of(plan);
        json.writeStartObject();
        json.writeStringField("case", at.caseName());
        json.writeStringField("status", word(at.status()));
        json.writeStringField("rank", word(at.rank()));
        figures.number("carriedA", at.carriedA());
        figures.number("strandedA", at.strandedA());
        detours("path", at.path());
        detours("detours", at.detours());
        json.writeArrayFieldStart("tooMuch");
        for (LossCase.HotPart part : at.hot()) {
            json.writeStartObject();
            json.writeStringField("element", part.detour().element());
            figures.number("countsA", part.countsA());
            figures.number("ratedA", part.detour().ratedA());
            figures.number("beforeC", part.beforeC());
            figures.number("afterC", part.afterC());
            figures.number("maxC", part.maxC());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("bodies");
        for (LossCase.BodyShift shift : at.bodies()) {
            json.writeStartObject();
            json.writeStringField("body", plan.bodies().get(shift.body()).id());
            figures.number("beforeV", shift.beforeV());
            figures.number("afterV", shift.afterV());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("loads");
        for (LossCase.LostLoad load : at.loads()) {
            json.writeStartObject();
            json.writeStringField("load", names.element(load.demand()));
            figures.number("beforeV", load.beforeV());
            figures.number("afterV", load.afterV());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("sources");
        for (int source : at.sources()) {
            json.writeString(names.element(source));
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void detours(String field, List<LossCase.Detour> detours) throws IOException {
        json.writeArrayFieldStart(field);
        for (LossCase.Detour at : detours) {
            json.writeStartObject();
            json.writeStringField("element", at.element());
            json.writeStringField("kind", word(at.kind()));
            figures.number("beforeA", at.beforeA());
            figures.number("afterA", at.afterA());
            figures.number("ratedA", at.ratedA());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void back(ElementNames names, ReturnRow row) throws IOException {
        json.writeStartObject();
        json.writeStringField("load", names.element(row.demand()));
        json.writeStringField("way", word(row.way()));
        json.writeStringField("case", row.caseName());
        figures.number("currentA", row.currentA());
        figures.number("returnV", row.returnV());
        figures.number("ownV", row.ownV());
        figures.number("othersV", row.othersV());
        figures.number("selfOhm", row.selfOhm());
        if (row.sharedWith() >= 0) {
            json.writeStringField("sharedWith", names.element(row.sharedWith()));
            figures.number("sharedOhm", row.sharedOhm());
            figures.number("sharedV", row.sharedV());
        }
        json.writeArrayFieldStart("path");
        for (String element : row.path()) {
            json.writeString(element);
        }
        json.writeEndArray();
        json.writeBooleanField("ownReturnAsked", row.asked());
        json.writeBooleanField("structurePermitted", row.permitted());
        if (row.other() != null) {
            json.writeObjectFieldStart("other");
            json.writeStringField("way", word(row.other().way()));
            figures.optional("at", row.other().at());
            figures.number("lengthMm", row.other().lengthMm());
            figures.number("sectionMm2", row.other().sectionMm2());
            figures.number("returnV", row.other().returnV());
            figures.number("moreCopperKg", row.other().moreCopperKg());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
