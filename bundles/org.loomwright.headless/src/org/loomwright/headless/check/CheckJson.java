// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.check;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.LoadVerdict;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.model.files.ReadFault;

/** Writes the check as JSON; its form is told by {@code schema/check.schema.json} of this bundle. */
public final class CheckJson {
    private final JsonGenerator json;

    /** Opens a document on {@code out}, which is not closed. */
    public CheckJson(Writer out) throws IOException {
        json = new JsonFactory().createGenerator(out);
        json.configure(JsonGenerator.Feature.AUTO_CLOSE_TARGET, false);
        json.setPrettyPrinter(new DefaultPrettyPrinter());
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
        json.writeStartObject();
        json.writeStringField("format", "loomwright-check");
        json.writeStringField("formatVersion", "1.0");
        json.writeStringField("caution", Caution.TEXT);
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
        json.writeEndObject();
        json.flush();
    }

    private void fault(ReadFault fault) throws IOException {
        json.writeStartObject();
        json.writeStringField("file", fault.file());
        json.writeNumberField("line", fault.line());
        json.writeNumberField("column", fault.column());
        optional("element", fault.element());
        json.writeStringField("message", fault.message());
        optional("expected", fault.expected());
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
        json.writeArrayFieldStart("findings");
        for (Finding finding : checked.result().findings()) {
            if (finding.severity().atLeast(threshold)) {
                finding(finding);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("loads");
        for (LoadVerdict verdict : checked.result().verdicts()) {
            verdict(verdict);
        }
        json.writeEndArray();
        String element = explain == null ? null : checked.element(explain);
        if (element != null) {
            json.writeArrayFieldStart("explained");
            for (StudyResult.ElementFigures figures : checked.result().explainer().explain(element)) {
                figures(figures);
            }
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    private void finding(Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("rule", finding.rule());
        json.writeStringField("severity", finding.severity().slug());
        json.writeStringField("element", finding.element());
        optional("case", finding.caseName());
        json.writeStringField("title", finding.title());
        quantity("is", finding.is());
        quantity("limit", finding.wanted());
        json.writeArrayFieldStart("why");
        for (String why : finding.why()) {
            json.writeString(why);
        }
        json.writeEndArray();
        causes("causes", finding.causes());
        json.writeArrayFieldStart("mends");
        for (Mend mend : finding.mends()) {
            mend(mend);
        }
        json.writeEndArray();
        derivations(finding.derivations());
        optional("accepted", finding.accepted());
        json.writeEndObject();
    }

    private void mend(Mend mend) throws IOException {
        json.writeStartObject();
        json.writeStringField("text", mend.text());
        json.writeArrayFieldStart("changes");
        for (Mend.Change change : mend.changes()) {
            json.writeStartObject();
            if (change instanceof Mend.UseSection use) {
                json.writeStringField("change", "use-section");
                json.writeStringField("cable", use.cable());
                json.writeNumberField("sectionMm2", use.sectionMm2());
            } else if (change instanceof Mend.FitProtector fit) {
                json.writeStringField("change", "fit-protector");
                json.writeStringField("way", fit.way());
                json.writeStringField("protector", fit.protectorPart());
            } else if (change instanceof Mend.AddBond bond) {
                json.writeStringField("change", "add-bond");
                json.writeStringField("bodyA", bond.bodyA());
                json.writeStringField("bodyB", bond.bodyB());
                json.writeNumberField("sectionMm2", bond.sectionMm2());
                json.writeNumberField("lengthMm", bond.lengthMm());
            } else if (change instanceof Mend.SetValue set) {
                json.writeStringField("change", "set-value");
                json.writeStringField("device", set.device());
                json.writeStringField("element", set.element());
                json.writeStringField("quantity", set.quantity());
                json.writeNumberField("value", set.value());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void verdict(LoadVerdict verdict) throws IOException {
        json.writeStartObject();
        json.writeStringField("load", verdict.load());
        optional("case", verdict.caseName());
        number("voltageV", verdict.voltageV());
        number("currentA", verdict.currentA());
        number("dropV", verdict.dropV());
        number("dropShare", verdict.dropShare());
        number("limitShare", verdict.limit());
        causes("shares", verdict.shares());
        json.writeStringField("verdict", verdict.sentence());
        json.writeEndObject();
    }

    private void causes(String field, List<Cause> causes) throws IOException {
        json.writeArrayFieldStart(field);
        for (Cause cause : causes) {
            json.writeStartObject();
            json.writeStringField("element", cause.element());
            json.writeStringField("what", cause.what());
            quantity("share", cause.share());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void figures(StudyResult.ElementFigures figures) throws IOException {
        json.writeStartObject();
        json.writeStringField("element", figures.element());
        optional("case", figures.caseName());
        derivations(figures.derivations());
        json.writeEndObject();
    }

    private void derivations(List<Derivation> derivations) throws IOException {
        json.writeArrayFieldStart("derivations");
        for (Derivation derivation : derivations) {
            json.writeStartObject();
            json.writeStringField("figure", derivation.figure());
            quantity("value", derivation.value());
            json.writeStringField("formula", derivation.formula());
            json.writeArrayFieldStart("inputs");
            for (Derivation.Input input : derivation.inputs()) {
                json.writeStartObject();
                json.writeStringField("name", input.name());
                quantity("value", input.value());
                json.writeStringField("origin", input.origin());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeStringField("source", derivation.source());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void quantity(String field, Quantity quantity) throws IOException {
        if (quantity == null) {
            return;
        }
        json.writeObjectFieldStart(field);
        number("value", quantity.value());
        json.writeStringField("unit", quantity.unit());
        json.writeEndObject();
    }

    /** JSON has neither NaN nor infinity: a number that is not known is null. */
    private void number(String field, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumberField(field, value);
        } else {
            json.writeNullField(field);
        }
    }

    private void optional(String field, String text) throws IOException {
        if (text != null) {
            json.writeStringField(field, text);
        }
    }
}
