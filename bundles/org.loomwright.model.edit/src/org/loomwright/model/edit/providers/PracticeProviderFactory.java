// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import org.eclipse.emf.common.notify.Adapter;
import org.loomwright.model.practice.provider.PracticeItemProviderAdapterFactory;

/** Item providers of practices: the generated ones, with labels as people read them. */
public final class PracticeProviderFactory extends PracticeItemProviderAdapterFactory {

    @Override
    public Adapter createPracticeAdapter() {
        if (practiceItemProvider == null) {
            practiceItemProvider = new PracticeProviders.OfPractice(this);
        }
        return practiceItemProvider;
    }

    @Override
    public Adapter createLimitAdapter() {
        if (limitItemProvider == null) {
            limitItemProvider = new PracticeProviders.OfLimit(this);
        }
        return limitItemProvider;
    }

    @Override
    public Adapter createChoiceAdapter() {
        if (choiceItemProvider == null) {
            choiceItemProvider = new PracticeProviders.OfChoice(this);
        }
        return choiceItemProvider;
    }

    @Override
    public Adapter createRuleSettingAdapter() {
        if (ruleSettingItemProvider == null) {
            ruleSettingItemProvider = new PracticeProviders.OfRuleSetting(this);
        }
        return ruleSettingItemProvider;
    }
}
