// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;
import org.loomwright.model.practice.Choice;
import org.loomwright.model.practice.Limit;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.practice.RuleSetting;
import org.loomwright.model.practice.provider.ChoiceItemProvider;
import org.loomwright.model.practice.provider.LimitItemProvider;
import org.loomwright.model.practice.provider.PracticeItemProvider;
import org.loomwright.model.practice.provider.RuleSettingItemProvider;

/** Item providers of a practice, with the labels of {@link PracticeLabels}. */
final class PracticeProviders {
    private PracticeProviders() {
    }

    static final class OfPractice extends PracticeItemProvider {
        OfPractice(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PracticeLabels.of((Practice) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfLimit extends LimitItemProvider {
        OfLimit(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PracticeLabels.of((Limit) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfChoice extends ChoiceItemProvider {
        OfChoice(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PracticeLabels.of((Choice) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }

    static final class OfRuleSetting extends RuleSettingItemProvider {
        OfRuleSetting(AdapterFactory factory) {
            super(factory);
        }

        @Override
        public String getText(Object object) {
            String text = PracticeLabels.of((RuleSetting) object);
            return text.isEmpty() ? super.getText(object) : text;
        }

        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            Shown.relabel(this, change);
        }
    }
}
