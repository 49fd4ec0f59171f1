// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.loomwright.engine.result.Severity;
import org.loomwright.model.practice.Choice;
import org.loomwright.model.practice.Limit;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.practice.PracticeFactory;
import org.loomwright.model.practice.RuleSetting;
import org.loomwright.model.practice.RuleSeverity;
import org.loomwright.model.vehicle.ReturnPolicy;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

class PracticeReaderTest {
    private final Problems problems = new Problems();
    private final Vehicle vehicle = VehicleFactory.eINSTANCE.createVehicle();
    private final Practice base = practice("base");
    private final Practice workshop = practice("workshop");

    PracticeReaderTest() {
        vehicle.setName("van");
        limit(base, "length.tail", "150", "mm", "common practice");
        limit(base, "length.slack", "0.05", "1", "common practice");
        workshop.setBasedOn(base);
    }

    private static Practice practice(String name) {
        Practice practice = PracticeFactory.eINSTANCE.createPractice();
        practice.setName(name);
        return practice;
    }

    private static void limit(Practice practice, String name, String value, String unit, String source) {
        Limit limit = PracticeFactory.eINSTANCE.createLimit();
        limit.setName(name);
        limit.setValue(TestParts.number(value));
        limit.setUnit(unit);
        limit.setSource(source);
        practice.getLimits().add(limit);
    }

    private org.loomwright.engine.assembly.Practice read(Practice adopted) {
        return PracticeReader.read(adopted, PracticeReader.read(base, problems), vehicle, problems);
    }

    @Test
    void theAdoptedPracticeGoesBeforeTheOneItIsBasedOn() {
        limit(workshop, "length.tail", "200", "mm", "measured on five builds");
        org.loomwright.engine.assembly.Practice read = read(workshop);
        assertEquals("workshop", read.name());
        assertEquals(200, read.value("length.tail"));
        assertEquals("practice workshop: measured on five builds", read.limit("length.tail").source());
        assertEquals(0.05, read.value("length.slack"));
        assertEquals("practice base: common practice", read.limit("length.slack").source());
    }

    @Test
    void withoutPracticeTheCommonOneHolds() {
        assertEquals("base", read(null).name());
        assertEquals(150, read(null).value("length.tail"));
    }

    @Test
    void theCommonPracticeHoldsBelowAPracticeThatIsBasedOnNone() {
        workshop.setBasedOn(null);
        assertEquals(150, read(workshop).value("length.tail"));
    }

    @Test
    void aLimitInAnotherUnitIsToldAndNotTaken() {
        limit(workshop, "length.tail", "0.2", "m", "own");
        assertEquals(150, read(workshop).value("length.tail"));
        assertTrue(problems.all().get(0).message().contains("length.tail is given in m; expected mm"), problems.all()::toString);
    }

    @Test
    void aLimitWithoutUnitIsTakenInTheUnitOfTheBase() {
        limit(workshop, "length.tail", "210", null, null);
        assertEquals(210, read(workshop).value("length.tail"));
        assertEquals("mm", read(workshop).limit("length.tail").unit());
        assertEquals("practice workshop: no source stated", read(workshop).limit("length.tail").source());
    }

    @Test
    void practicesBasedOnEachOtherAreTold() {
        base.setBasedOn(workshop);
        read(workshop);
        assertTrue(problems.all().get(0).message().contains("based on itself"), problems.all()::toString);
    }

    @Test
    void rulesAreSetByTheNearestPractice() {
        rule(base, "drop-class", null, RuleSeverity.NOTE);
        rule(workshop, "drop-class", false, null);
        org.loomwright.engine.assembly.Practice read = read(workshop);
        assertFalse(read.enabled("drop-class"));
        assertEquals(Severity.NOTE, read(base).rules().get("drop-class").severity());
        assertTrue(read(base).enabled("drop-class"));
    }

    private static void rule(Practice practice, String rule, Boolean enabled, RuleSeverity severity) {
        RuleSetting setting = PracticeFactory.eINSTANCE.createRuleSetting();
        setting.setRule(rule);
        setting.setEnabled(enabled);
        if (severity != null) {
            setting.setSeverity(severity);
        }
        practice.getRuleSettings().add(setting);
    }

    @Test
    void theVehiclesReturnPolicyGoesBeforeThePractices() {
        Choice choice = PracticeFactory.eINSTANCE.createChoice();
        choice.setName("return-policy");
        choice.setValue("allowed");
        base.getChoices().add(choice);
        assertEquals("allowed", read(null).choices().get("return-policy").value());
        vehicle.setReturnPolicy(ReturnPolicy.LISTED_LOADS);
        assertEquals("listedLoads", read(null).choices().get("return-policy").value());
        assertEquals("set on vehicle van", read(null).choices().get("return-policy").source());
    }

    @Test
    void whatHasNoNameOrNoValueIsPassedOver() {
        limit(workshop, null, "1", "mm", "own");
        limit(workshop, "length.tail", null, "mm", "own");
        rule(workshop, null, false, null);
        workshop.getChoices().add(PracticeFactory.eINSTANCE.createChoice());
        assertEquals(150, read(workshop).value("length.tail"));
        assertEquals(2, read(workshop).limits().size());
    }

    @Test
    void whatNoPracticeGivesIsAnError() {
        assertThrows(org.loomwright.engine.assembly.Practice.MissingLimitException.class, () -> read(workshop).value("no.such"));
    }
}
