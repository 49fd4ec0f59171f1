// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.CaseView;
import org.loomwright.diagram.services.FindingMark;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Finding;

/** What a card tells of an element of a document. */
final class ElementCard {
    private final VehicleDocument document;

    ElementCard(VehicleDocument document) {
        this.document = document;
    }

    /** The card; null for an element that is gone. */
    Scene of(String id, TextMeasure type) {
        EObject element = document.element(id);
        if (element == null) {
            return null;
        }
        String label = label(element);
        int cut = label.indexOf("  ");
        String arrangement = document.arrangement() == null ? "" : document.arrangement().getName();
        return CardScene.of(new Designations(arrangement).shown(id), cut < 0 ? "" : label.substring(cut + 2).strip(),
                figures(id), findings(id), type);
    }

    private String label(EObject element) {
        Object adapter = document.domain().getAdapterFactory().adapt(element, IItemLabelProvider.class);
        return adapter instanceof IItemLabelProvider labels ? labels.getText(element) : element.eClass().getName();
    }

    /** Figures of the case looked at. */
    List<String> figures(String id) {
        List<String> lines = new ArrayList<>();
        if (document.analysis() == null || !document.analysis().worked() || document.caseName() == null) {
            return lines;
        }
        CaseView view = document.analysis().view().caseView(document.caseName());
        if (view == null || !view.settled()) {
            return lines;
        }
        CaseView.Load load = view.loads().get(id);
        if (load != null) {
            lines.add(figure(load.volts(), "V") + ", " + figure(load.amps(), "A") + (Double.isNaN(load.dropShare()) ? ""
                    : ", drop " + figure(100 * load.dropShare(), "%")));
        }
        CaseView.Conductor core = view.conductors().get(id);
        if (core != null) {
            String rating = Double.isNaN(core.ratingA()) ? "" : " of " + figure(core.ratingA(), "A");
            lines.add(figure(Math.abs(core.amps()), "A") + rating + ", " + figure(1000 * core.dropV(), "mV") + ", " + figure(core.temperatureC(), "\u00B0C"));
        }
        CaseView.Protector protector = view.protectors().get(id);
        if (protector != null) {
            lines.add(figure(protector.amps(), "A") + " of " + figure(protector.ratingA(), "A"));
        }
        CaseView.Strap strap = view.bonds().get(id);
        if (strap != null) {
            lines.add(figure(Math.abs(strap.amps()), "A") + ", " + figure(1000 * strap.dropV(), "mV"));
        }
        Double body = view.bodies().get(id);
        if (body != null) {
            lines.add(figure(1000 * body, "mV"));
        }
        Double source = view.sources().get(id);
        if (source != null) {
            lines.add(figure(source, "A"));
        }
        return lines;
    }

    /** Findings about the element and what lies in it, in the case looked at, the worst first. */
    List<Finding> findings(String id) {
        if (document.analysis() == null || !document.analysis().worked()) {
            return List.of();
        }
        FindingMark mark = document.analysis().view().markWithin(id);
        return mark == null ? List.of()
                : mark.findings().stream().filter(each -> FindingCount.inCase(each, document.caseName())).toList();
    }

    private static String figure(double value, String unit) {
        return Figures.three(value).replace("-", "\u2212") + " " + unit;
    }
}
