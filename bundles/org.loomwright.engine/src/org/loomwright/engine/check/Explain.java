// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/**
 * Derives the figures of an element when asked. A device answers for all its elements, a cable for all its cores.
 */
final class Explain implements StudyResult.Explainer {
    private final CheckContext context;

    Explain(CheckContext context) {
        this.context = context;
    }

    @Override
    public List<ElementFigures> explain(String element) {
        Plan plan = context.plan();
        List<ElementFigures> figures = new ArrayList<>();
        ConductorFigures conductors = new ConductorFigures(context);
        for (int c = 0; c < plan.conductors().size(); c++) {
            String cable = plan.cables().get(plan.conductors().get(c).cable()).id();
            if (plan.conductors().get(c).id().equals(element) || cable.equals(element)) {
                figures.addAll(conductors.of(c));
            }
        }
        for (int e = 0; e < plan.elements().size(); e++) {
            if (isOf(e, element)) {
                figures.addAll(ofElement(e));
            }
        }
        BondFigures bonds = new BondFigures(context);
        for (int b = 0; b < plan.bonds().size(); b++) {
            if (plan.bonds().get(b).id().equals(element)) {
                figures.addAll(bonds.of(b));
            }
        }
        return figures.stream().filter(each -> !each.derivations().isEmpty()).toList();
    }

    private boolean isOf(int e, String id) {
        Plan.Element element = context.plan().elements().get(e);
        return element.id().equals(id) || context.names().element(e).equals(id)
                || context.plan().devices().get(element.device()).id().equals(id);
    }

    private List<ElementFigures> ofElement(int e) {
        Plan.Element element = context.plan().elements().get(e);
        if (element instanceof Plan.Demand) {
            return new LoadFigures(context).of(e);
        } else if (element instanceof Plan.Protector protector) {
            return new ProtectorFigures(context).of(e, protector);
        }
        return new SourceFigures(context).of(e);
    }
}
