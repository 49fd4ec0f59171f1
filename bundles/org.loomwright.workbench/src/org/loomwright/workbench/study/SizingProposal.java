// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.engine.sizing.SizingResult;
import org.loomwright.model.edits.SizingEdits;

/**
 * What sizing proposes, and for which state of the vehicle.
 *
 * @param result            what was chosen
 * @param openPersonChoices what a person chose was open as well
 * @param state             the state of the vehicle that was sized, see {@link StudySource#state()}
 */
public record SizingProposal(SizingResult result, boolean openPersonChoices, Object state) {

    /** The choices as edits of a vehicle. */
    public List<SizingEdits.Choice> choices() {
        List<SizingEdits.Choice> choices = new ArrayList<>();
        result.cables().forEach(cable -> choices.add(new SizingEdits.Section(cable.id(), cable.afterMm2())));
        result.protectors().stream().filter(each -> each.afterPart() != null)
                .forEach(each -> choices.add(new SizingEdits.Fitted(each.way(), each.afterPart())));
        return choices;
    }

    /** What was to be least, in words. */
    public static String words(SizingObjective objective) {
        return switch (objective) {
            case COPPER -> Messages.Objective_copper;
            case PRICE -> Messages.Objective_price;
            case SECTIONS -> Messages.Objective_sections;
            case STOCK -> Messages.Objective_stock;
        };
    }

    /** Elements that would be changed. */
    public int changed() {
        return (int) (result.cables().stream().filter(SizingResult.SizedCable::changed).count()
                + result.protectors().stream().filter(SizingResult.SizedProtector::changed).count());
    }
}
