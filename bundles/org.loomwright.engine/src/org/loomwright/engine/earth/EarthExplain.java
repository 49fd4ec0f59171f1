// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/** Derives the figures of bodies, straps, earth points and loads when asked. */
final class EarthExplain implements StudyResult.Explainer {
    private final Plan plan;
    private final EarthNames names;
    private final List<EarthNetwork> networks;
    private final List<CaseEarth> levels;
    private final List<StrapRow> straps;
    private final List<LossRow> losses;
    private final List<ReturnRow> returns;
    private final LevelDerivations level;
    private final StrapDerivations strap;
    private final LossDerivations loss;
    private final ReturnDerivations back;

    EarthExplain(Plan plan, EarthNames names, PlanItems items, List<EarthNetwork> networks, List<CaseEarth> levels,
            List<StrapRow> straps, List<LossRow> losses, List<ReturnRow> returns) {
        this.plan = plan;
        this.names = names;
        this.networks = List.copyOf(networks);
        this.levels = List.copyOf(levels);
        this.straps = straps;
        this.losses = losses;
        this.returns = returns;
        level = new LevelDerivations(plan, names, items);
        strap = new StrapDerivations(plan);
        loss = new LossDerivations(plan, names);
        back = new ReturnDerivations(plan, names);
    }

    @Override
    public List<ElementFigures> explain(String element) {
        List<ElementFigures> figures = new ArrayList<>();
        for (int k = 0; k < levels.size(); k++) {
            figures.addAll(level.of(element, levels.get(k), networks.get(k)));
        }
        figures.addAll(strap(element));
        for (ReturnRow row : returns) {
            Plan.Element load = plan.elements().get(row.demand());
            if (load.id().equals(element) || names.id(row.demand()).equals(element)
                    || plan.devices().get(load.device()).id().equals(element)) {
                figures.add(new ElementFigures(names.id(row.demand()), row.caseName(), back.of(row)));
            }
        }
        return figures.stream().filter(each -> !each.derivations().isEmpty()).toList();
    }

    /** Figures of a strap: what would do, then case by case what its loss comes to and what it carries. */
    private List<ElementFigures> strap(String element) {
        Map<String, List<Derivation>> byCase = new LinkedHashMap<>();
        byCase.put("", new ArrayList<>());
        for (LossRow row : losses) {
            if (plan.bonds().get(row.bonds().get(0)).id().equals(element)) {
                byCase.get("").addAll(loss.faults(row));
                row.cases().forEach(at -> byCase.computeIfAbsent(at.caseName(), name -> new ArrayList<>()).addAll(loss.of(at)));
            }
        }
        for (StrapRow row : straps) {
            if (plan.bonds().get(row.bond()).id().equals(element)) {
                strap.of(row).forEach(each -> byCase.computeIfAbsent(each.caseName() == null ? "" : each.caseName(),
                        name -> new ArrayList<>()).addAll(each.derivations()));
            }
        }
        List<ElementFigures> figures = new ArrayList<>();
        byCase.forEach((name, found) -> figures.add(new ElementFigures(element, name.isEmpty() ? null : name, found)));
        return figures;
    }
}
