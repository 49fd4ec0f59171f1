// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;
import org.loomwright.engine.result.StudyResult;

class CheckTest {

    private static StudyResult run(Plan plan) {
        return Check.run(plan, List.of(), CheckOptions.all(), new BasicMonitor());
    }

    private static Plan with(Plan plan, Practice.RuleSetting setting) {
        Practice practice = plan.practice();
        Practice set = new Practice(practice.name(), practice.limits(), practice.choices(), Map.of(setting.rule(), setting));
        return new Plan(plan.vehicle(), plan.arrangement(), set, plan.domains(), plan.zones(), plan.places(), plan.runs(),
                plan.bodies(), plan.bodyLinks(), plan.bonds(), plan.devices(), plan.terminals(), plan.elements(), plan.cables(),
                plan.conductors(), plan.cases(), plan.waivers());
    }

    private static PlanFixture lossy() {
        return DropBreakdownTest.structureReturn().limit("drop-class.other", 0.03);
    }

    private static Finding drop(StudyResult result) {
        return result.findings().stream().filter(finding -> finding.rule().equals("drop-class")).findFirst().orElse(null);
    }

    @Test
    void findsWhatTheRulesFind() {
        Finding finding = drop(run(lossy().build()));
        assertEquals("E1", finding.element());
        assertEquals(Severity.WARNING, finding.severity());
        assertNull(finding.accepted());
    }

    @Test
    void aPracticeSwitchesARuleOffOrGivesItAnotherSeverity() {
        Plan plan = lossy().build();
        assertNull(drop(run(with(plan, new Practice.RuleSetting("drop-class", false, null, "not here")))));
        assertEquals(Severity.NOTE,
                drop(run(with(plan, new Practice.RuleSetting("drop-class", true, Severity.NOTE, "known")))).severity());
    }

    @Test
    void aWaiverAcceptsWithItsReason() {
        Finding finding = drop(run(lossy().waiver("drop-class", "E1").build()));
        assertEquals("accepted in a test (tester, 2024-01-01)", finding.accepted());
        assertNull(drop(run(lossy().waiver("drop-class", "E2").build())).accepted());
        assertNull(drop(run(lossy().waiver("conductor-hot", "E1").build())).accepted());
    }

    @Test
    void theSameInSeveralCasesIsOneFindingThatNamesTheOthers() {
        PlanFixture fixture = lossy().state("cool", c -> c.on("E1").ambient(0)).state("hot", c -> c.on("E1").ambient(60))
                .state("mild", c -> c.on("E1").ambient(20));
        List<Finding> findings = run(fixture.build()).findings().stream().filter(f -> f.rule().equals("drop-class")).toList();
        assertEquals(1, findings.size());
        assertEquals("hot", findings.get(0).caseName());
        assertTrue(findings.get(0).why().contains("Also in 2 other cases: cool, mild."), findings.get(0).why().toString());
    }

    @Test
    void onlyTheCasesWantedAreLookedAt() {
        PlanFixture fixture = lossy().state("cool", c -> c.on("E1").ambient(0)).state("hot", c -> c.on("E1").ambient(60));
        StudyResult result = Check.run(fixture.build(), List.of(), new CheckOptions(Set.of("cool")), new BasicMonitor());
        assertEquals("cool", drop(result).caseName());
        assertEquals("cool", result.verdicts().get(0).caseName());
    }

    @Test
    void findingsAreSortedBySeverityRuleElementAndCase() {
        List<Finding> findings = run(lossy().set("E1#load", "minV", 12.7).set("W1", "lengthMm", 5000.0).build()).findings();
        List<Finding> sorted = new ArrayList<>(findings);
        sorted.sort((a, b) -> a.severity() != b.severity() ? a.severity().compareTo(b.severity())
                : !a.rule().equals(b.rule()) ? a.rule().compareTo(b.rule()) : a.element().compareTo(b.element()));
        assertEquals(sorted, findings);
        assertTrue(findings.size() >= 3);
    }

    @Test
    void theSameInputGivesTheSameResult() {
        Plan plan = lossy().build();
        assertEquals(run(plan).findings(), run(plan).findings());
        assertEquals(run(plan).verdicts(), run(plan).verdicts());
    }

    @Test
    void cancellingEndsIt() {
        BasicMonitor monitor = new BasicMonitor();
        monitor.setCanceled(true);
        assertThrows(CancellationException.class, () -> Check.run(lossy().build(), List.of(), CheckOptions.all(), monitor));
    }

    @Test
    void aFaultOfARuleNamesTheRule() {
        Rule broken = new Rule() {
            @Override
            public String slug() {
                return "drop-class";
            }

            @Override
            public String says() {
                return "never";
            }

            @Override
            public List<String> limits() {
                return List.of();
            }

            @Override
            public List<Finding> check(CheckContext context) {
                throw new ArithmeticException("lost");
            }
        };
        RuleRun run = new RuleRun(RuleCatalogue.of(List.of(broken)));
        CheckContext context = CheckFixture.context(lossy());
        IllegalStateException fault = assertThrows(IllegalStateException.class, () -> run.findings(context, new BasicMonitor()));
        assertTrue(fault.getMessage().contains("drop-class"), fault.getMessage());
    }

    @Test
    void everyRuleReadsLimitsThatTheCommonPracticeGives() {
        Practice practice = lossy().build().practice();
        Set<String> slugs = new HashSet<>();
        for (Rule rule : RuleCatalogue.standard().rules()) {
            assertTrue(slugs.add(rule.slug()));
            assertFalse(rule.says().isEmpty());
            for (String limit : rule.limits()) {
                assertTrue(practice.limits().containsKey(limit) || practice.choices().containsKey(limit), limit);
            }
            assertTrue(RuleCatalogue.standard().find(rule.slug()).isPresent());
        }
    }

    @Test
    void figuresOfEveryElementAreExplained() {
        StudyResult result = run(lossy().build());
        for (String element : List.of("W2", "W2@1", "E1", "E1#load", "F1.1", "G1", "WE1")) {
            List<StudyResult.ElementFigures> figures = result.explainer().explain(element);
            assertFalse(figures.isEmpty(), element);
            for (StudyResult.ElementFigures each : figures) {
                for (Derivation derivation : each.derivations()) {
                    assertFalse(derivation.source().isEmpty(), element);
                    derivation.inputs().forEach(input -> assertFalse(input.origin().isEmpty(), element));
                }
            }
        }
        assertEquals(List.of(), result.explainer().explain("nothing"));
    }

    @Test
    void derivedVoltagesFollowFromTheirInputs() {
        StudyResult result = run(lossy().build());
        Derivation voltage = result.explainer().explain("E1").get(0).derivations().stream()
                .filter(derivation -> derivation.figure().equals("voltage at the load")).findFirst().orElseThrow();
        double sum = voltage.inputs().get(0).value().value();
        for (Derivation.Input input : voltage.inputs().subList(1, voltage.inputs().size())) {
            sum -= input.value().value();
        }
        assertEquals(voltage.value().value(), sum, 1e-9);
        Derivation lost = result.explainer().explain("W2").get(1).derivations().stream()
                .filter(derivation -> derivation.figure().equals("voltage lost")).findFirst().orElseThrow();
        List<Quantity> inputs = lost.inputs().stream().map(Derivation.Input::value).toList();
        assertEquals(lost.value().value(), inputs.get(0).value() * inputs.get(1).value() / 1000, 1e-9);
    }
}
