// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.loomwright.model.practice.Limit;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.practice.PracticeFactory;
import org.loomwright.model.practice.RuleSetting;

class PracticeRulesTest {
    private final Practice common = practice("common");
    private final Limit limit = PracticeFactory.eINSTANCE.createLimit();

    PracticeRulesTest() {
        limit.setName("length.tail");
        limit.setValue(BigDecimal.TEN);
        limit.setUnit("mm");
        limit.setSource("common practice");
        common.getLimits().add(limit);
    }

    private static Practice practice(String name) {
        Practice practice = PracticeFactory.eINSTANCE.createPractice();
        practice.setName(name);
        practice.setFormat("1.0");
        return practice;
    }

    private List<String> rules(Practice practice) {
        return new PracticeRules(common, Set.of("drop-class")).check(practice).stream().map(Violation::rule).toList();
    }

    @Test
    void aKnownLimitInItsUnitIsFine() {
        Practice own = practice("own");
        own.getLimits().add(EcoreUtil.copy(limit));
        assertEquals(List.of(), rules(own));
    }

    @Test
    void aLimitThatNoStudyKnowsIsReported() {
        Practice own = practice("own");
        own.getLimits().add(EcoreUtil.copy(limit));
        own.getLimits().get(0).setName("length.tial");
        assertEquals(List.of("practice-limit"), rules(own));
    }

    @Test
    void aLimitInAnotherUnitIsReported() {
        Practice own = practice("own");
        own.getLimits().add(EcoreUtil.copy(limit));
        own.getLimits().get(0).setUnit("m");
        assertEquals(List.of("practice-unit"), rules(own));
    }

    @Test
    void aLimitBelowZeroIsReportedUnlessItIsATemperature() {
        Practice own = practice("own");
        own.getLimits().add(EcoreUtil.copy(limit));
        own.getLimits().get(0).setValue(BigDecimal.valueOf(-1));
        assertEquals(List.of("range"), rules(own));
        limit.setUnit("degC");
        own.getLimits().get(0).setUnit("degC");
        assertEquals(List.of(), rules(own));
    }

    @Test
    void aSettingOfAnUnknownRuleIsReported() {
        Practice own = practice("own");
        RuleSetting setting = PracticeFactory.eINSTANCE.createRuleSetting();
        setting.setRule("drop-clas");
        setting.setEnabled(false);
        own.getRuleSettings().add(setting);
        assertEquals(List.of("practice-rule"), rules(own));
        setting.setRule("drop-class");
        assertEquals(List.of(), rules(own));
    }
}
