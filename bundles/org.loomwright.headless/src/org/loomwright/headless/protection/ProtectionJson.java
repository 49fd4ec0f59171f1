// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.protection;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.ElementNames;
import org.loomwright.engine.protection.Clearing;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.DeviceProtection;
import org.loomwright.engine.protection.Fault;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.protection.OverloadFigures;
import org.loomwright.engine.protection.ReturnDuty;
import org.loomwright.engine.protection.Selectivity;
import org.loomwright.engine.protection.ShortTransient;
import org.loomwright.engine.protection.Verdict;
import org.loomwright.engine.result.Severity;
import org.loomwright.headless.check.Caution;
import org.loomwright.headless.report.JsonDocument;
import org.loomwright.headless.report.JsonFigures;

/** Writes the protection study as JSON; its form is told by {@code schema/protection.schema.json} of this bundle. */
final class ProtectionJson {
    private final Writer out;
    private final JsonGenerator json;
    private final JsonFigures figures;
    private Plan plan;
    private ElementNames names;

    /** Opens a document on {@code out}, which is not closed. */
    ProtectionJson(Writer out) throws IOException {
        this.out = out;
        json = JsonDocument.open(out, "protection", Caution.TEXT);
        figures = new JsonFigures(json);
    }

    /**
     * Writes the whole document.
     *
     * @param studied   arrangements studied
     * @param threshold findings below it are left out
     * @param explain   element whose derivations are added, as a person wrote it, or null
     */
    void write(List<StudiedProtection> studied, Severity threshold, String explain) throws IOException {
        json.writeArrayFieldStart("vehicles");
        for (StudiedProtection each : studied) {
            vehicle(each, threshold, explain);
        }
        json.writeEndArray();
        JsonDocument.close(json, out);
    }

    private void vehicle(StudiedProtection studied, Severity threshold, String explain) throws IOException {
        plan = studied.vehicle().plan();
        names = studied.context().names();
        json.writeStartObject();
        json.writeStringField("file", studied.vehicle().file());
        json.writeStringField("vehicle", plan.vehicle());
        json.writeStringField("label", studied.vehicle().label());
        json.writeStringField("arrangement", plan.arrangement());
        json.writeBooleanField("adopted", studied.vehicle().adopted());
        json.writeStringField("practice", plan.practice().name());
        figures.findings(studied.vehicle().result().findings(), threshold);
        json.writeArrayFieldStart("conductors");
        for (ConductorProtection row : studied.table().conductors()) {
            if (!row.feeds().isEmpty() || !row.duties().isEmpty()) {
                conductor(row);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("devices");
        for (DeviceProtection row : studied.table().devices()) {
            device(row);
        }
        json.writeEndArray();
        String element = explain == null ? null : studied.vehicle().element(explain);
        if (element != null) {
            figures.explained(studied.table().explainer().explain(element));
        }
        json.writeEndObject();
    }

    private void conductor(ConductorProtection row) throws IOException {
        json.writeStartObject();
        json.writeStringField("conductor", names.conductor(row.conductor()));
        json.writeBooleanField("supply", row.supply());
        json.writeBooleanField("overloadPossible", row.overloadPossible());
        json.writeArrayFieldStart("feeds");
        for (Feed feed : row.feeds()) {
            json.writeStartObject();
            json.writeStringField("near", plan.terminals().get(feed.nearTerminal()).id());
            json.writeStringField("far", plan.terminals().get(feed.farTerminal()).id());
            devices("next", feed.next());
            devices("upstream", feed.upstream());
            json.writeArrayFieldStart("faults");
            for (Fault fault : feed.faults()) {
                fault(fault);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("duties");
        for (ReturnDuty duty : row.duties()) {
            json.writeStartObject();
            if (duty.protector() >= 0) {
                json.writeStringField("device", names.element(duty.protector()));
            }
            figures.number("smallestA", duty.smallestA());
            figures.number("largestA", duty.largestA());
            json.writeEndObject();
        }
        json.writeEndArray();
        overload(row.overload());
        heat(row.heat());
        json.writeObjectFieldStart("conditions");
        verdict("rating", row.conditions().rating());
        verdict("overload", row.conditions().overload());
        verdict("short", row.conditions().shortTime());
        verdict("cleared", row.conditions().clears());
        json.writeEndObject();
        json.writeEndObject();
    }

    private void fault(Fault fault) throws IOException {
        json.writeStartObject();
        json.writeStringField("end", fault.end() == Fault.End.NEAR ? "near" : "far");
        json.writeStringField("extreme", fault.extreme().word());
        json.writeStringField("to", fault.target() == Fault.Target.BODY ? plan.bodies().get(fault.partner()).id()
                : plan.terminals().get(fault.partner()).id());
        figures.number("totalA", fault.totalA());
        figures.number("throughA", fault.throughA());
        figures.number("openV", fault.openV());
        figures.number("loopOhm", fault.loopOhm());
        figures.number("clearsS", fault.clearing().seconds());
        figures.number("letThroughA2s", fault.clearing().letThroughA2s());
        json.writeArrayFieldStart("opens");
        for (Clearing.Step step : fault.clearing().steps()) {
            json.writeStartObject();
            json.writeStringField("device", names.element(step.protector()));
            figures.number("atS", step.atS());
            figures.number("currentA", step.currentA());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void overload(OverloadFigures overload) throws IOException {
        if (overload == null) {
            return;
        }
        if (overload.protector() >= 0) {
            json.writeStringField("device", names.element(overload.protector()));
        }
        figures.number("inA", overload.inA());
        figures.number("izA", overload.izA());
        figures.number("i2A", overload.i2A());
        figures.number("steadyBelowI2C", overload.steadyBelowC());
    }

    private void heat(ShortTransient heat) throws IOException {
        if (heat == null) {
            return;
        }
        json.writeObjectFieldStart("transient");
        figures.number("startC", heat.startC());
        figures.number("peakC", heat.peakC());
        figures.number("limitC", heat.limitC());
        figures.number("worstA", heat.worstA());
        figures.number("seconds", heat.seconds());
        figures.number("letThroughA2s", heat.letThroughA2s());
        figures.number("withstandA2s", heat.withstandA2s());
        json.writeEndObject();
    }

    private void device(DeviceProtection row) throws IOException {
        Plan.Protector device = (Plan.Protector) plan.elements().get(row.protector());
        json.writeStartObject();
        json.writeStringField("device", names.element(row.protector()));
        figures.optional("part", device.part());
        figures.number("ratingA", device.ratingA());
        figures.number("faultA", row.breakingA());
        figures.number("breakingA", device.breakingA());
        figures.number("highestV", row.highestV());
        verdict("breaking", row.breakingVerdict());
        json.writeArrayFieldStart("protects");
        for (int conductor : row.conductorsBelow()) {
            json.writeString(names.conductor(conductor));
        }
        json.writeEndArray();
        json.writeArrayFieldStart("selectivity");
        for (Selectivity pair : row.selectivity()) {
            json.writeStartObject();
            json.writeStringField("upstream", names.element(pair.upstream()));
            json.writeStringField("selective", word(pair.kind().name()));
            figures.number("limitA", pair.limitA());
            figures.number("largestA", pair.largestA());
            figures.number("share", pair.share());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void devices(String field, List<Integer> elements) throws IOException {
        json.writeArrayFieldStart(field);
        for (int e : elements) {
            json.writeString(names.element(e));
        }
        json.writeEndArray();
    }

    private void verdict(String field, Verdict verdict) throws IOException {
        json.writeStringField(field, word(verdict.name()));
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
