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
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Quantity;
import org.loomwright.workbench.preference.ShownFigures;

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
        Designations names = new Designations(arrangement);
        return CardScene.of(names.shown(id), cut < 0 ? "" : label.substring(cut + 2).strip(), figures(id), findings(id), names,
                type);
    }

    private String label(EObject element) {
        Object adapter = document.domain().getAdapterFactory().adapt(element, IItemLabelProvider.class);
        return adapter instanceof IItemLabelProvider labels ? labels.getText(element) : element.eClass().getName();
    }

    /** Follows a link of the card. */
    void follow(String link) {
        CardLink.follow(link, document);
    }

    /** Figures of the case looked at. */
    List<CardScene.Line> figures(String id) {
        List<CardScene.Line> lines = new ArrayList<>();
        if (document.analysis() == null || !document.analysis().worked() || document.caseName() == null) {
            return lines;
        }
        CaseView view = document.analysis().view().caseView(document.caseName());
        if (view == null || !view.settled()) {
            return lines;
        }
        CaseView.Load load = view.loads().get(id);
        if (load != null) {
            add(lines, id, Quantity.of(load.volts(), "V"), Quantity.of(load.amps(), "A"), Quantity.of(100 * load.dropShare(), "%"));
        }
        CaseView.Conductor core = view.conductors().get(id);
        if (core != null) {
            add(lines, id, Quantity.of(Math.abs(core.amps()), "A"), Quantity.of(core.ratingA(), "A"),
                    Quantity.of(1000 * core.dropV(), "mV"), Quantity.of(core.temperatureC(), "degC"));
        }
        CaseView.Protector protector = view.protectors().get(id);
        if (protector != null) {
            add(lines, id, Quantity.of(protector.amps(), "A"), Quantity.of(protector.ratingA(), "A"));
        }
        CaseView.Strap strap = view.bonds().get(id);
        if (strap != null) {
            add(lines, id, Quantity.of(Math.abs(strap.amps()), "A"), Quantity.of(1000 * strap.dropV(), "mV"));
        }
        Double body = view.bodies().get(id);
        if (body != null) {
            add(lines, id, Quantity.of(1000 * body, "mV"));
        }
        Double source = view.sources().get(id);
        if (source != null) {
            add(lines, id, Quantity.of(source, "A"));
        }
        return lines;
    }

    /** Figures that are known; a second current is what is permitted. */
    private static void add(List<CardScene.Line> lines, String id, Quantity... figures) {
        List<String> texts = new ArrayList<>();
        List<String> links = new ArrayList<>();
        boolean current = false;
        for (Quantity figure : figures) {
            if (!Double.isNaN(figure.value())) {
                String text = ShownFigures.current().of(figure);
                texts.add("%".equals(figure.unit()) ? Words.of("card.drop", text)
                        : current && "A".equals(figure.unit()) ? Words.of("card.permitted", text) : text);
                links.add(CardLink.ask(figure, id));
                current |= "A".equals(figure.unit());
            }
        }
        lines.add(new CardScene.Line(texts, links));
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
}
