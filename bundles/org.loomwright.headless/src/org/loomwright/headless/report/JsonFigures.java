// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/** Writes what all reports share as JSON in one form: figures that may be unknown, findings, derivations. */
public final class JsonFigures {
    private final JsonGenerator json;

    /** Writes into a document that is open. */
    public JsonFigures(JsonGenerator json) {
        this.json = json;
    }

    /** The findings at or above a threshold, as {@code findings}. */
    public void findings(List<Finding> findings, Severity threshold) throws IOException {
        json.writeArrayFieldStart("findings");
        for (Finding finding : findings) {
            if (finding.severity().atLeast(threshold)) {
                finding(finding);
            }
        }
        json.writeEndArray();
    }

    /** Figures of an element with their derivations, as {@code explained}. */
    public void explained(List<ElementFigures> explained) throws IOException {
        json.writeArrayFieldStart("explained");
        for (ElementFigures figures : explained) {
            json.writeStartObject();
            json.writeStringField("element", figures.element());
            optional("case", figures.caseName());
            derivations(figures.derivations());
            json.writeEndObject();
        }
        json.writeEndArray();
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

    /** Causes with their shares. */
    public void causes(String field, List<Cause> causes) throws IOException {
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
            } else if (change instanceof Mend.AddParallel add) {
                json.writeStringField("change", "add-parallel");
                json.writeStringField("cable", add.cable());
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
        if (quantity != null) {
            json.writeObjectFieldStart(field);
            number("value", quantity.value());
            json.writeStringField("unit", quantity.unit());
            json.writeEndObject();
        }
    }

    /** JSON has neither NaN nor infinity: a number that is not known is null. */
    public void number(String field, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumberField(field, value);
        } else {
            json.writeNullField(field);
        }
    }

    /** A text, left out when it is null. */
    public void optional(String field, String text) throws IOException {
        if (text != null) {
            json.writeStringField(field, text);
        }
    }
}
