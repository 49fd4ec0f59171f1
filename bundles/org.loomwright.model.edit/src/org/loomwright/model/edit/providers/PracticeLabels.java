// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.loomwright.model.practice.Choice;
import org.loomwright.model.practice.Limit;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.practice.RuleSetting;

/** Labels of a practice. */
final class PracticeLabels {
    private PracticeLabels() {
    }

    /** {@code team  Practice of the river survey}. */
    static String of(Practice practice) {
        return new LabelText(practice.getName()).add(practice.getLabel()).text();
    }

    /** {@code length.tail  Tail at each end of a cable, 150 mm}; ratios without a unit. */
    static String of(Limit limit) {
        String unit = limit.getUnit() == null || "1".equals(limit.getUnit()) ? "" : limit.getUnit();
        String value = LabelText.quantity(limit.getValue(), unit);
        return new LabelText(limit.getName()).add(limit.getLabel()).add(value == null ? null : value.strip()).text();
    }

    /** {@code structure-return  Return through the structure, forbidden}. */
    static String of(Choice choice) {
        return new LabelText(choice.getName()).add(choice.getLabel()).add(choice.getValue()).text();
    }

    /** {@code section-min  off}; {@code way-limit  warning}. */
    static String of(RuleSetting setting) {
        return new LabelText(setting.getRule()).add(Boolean.FALSE.equals(setting.getEnabled()) ? "off" : null)
                .add(setting.isSetSeverity() ? setting.getSeverity() : null).add(setting.getReason()).text();
    }
}
