// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.symbol.Badge;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.LoadVerdict;
import org.loomwright.engine.result.Severity;

class StudyViewTest {
    private static final Plan HERON = Studied.fleet("heron").get(0).study().plan();

    private static Finding finding(Severity severity, String element) {
        return Finding.of("some-rule", severity, element, "title of " + element).build();
    }

    private static StudyView with(Finding... findings) {
        return StudyView.of(HERON, List.of(), List.of(findings));
    }

    @Test
    void theWorstFindingMarksAnElementAndThoseOfItsPartsCountWithin() {
        StudyView view = with(finding(Severity.WARNING, "X1"), finding(Severity.ERROR, "X1/3"), finding(Severity.ERROR, "X1.30"),
                finding(Severity.NOTE, "X1"), finding(Severity.ERROR, "X10"));
        assertEquals(Badge.WARNING, view.mark("X1").badge());
        assertEquals(Badge.ERROR, view.markWithin("X1").badge());
        assertEquals(2, view.markWithin("X1").count());
        assertEquals(4, view.markWithin("X1").findings().size());
        assertNull(view.mark("X2"));
    }

    @Test
    void anAcceptedFindingIsMarkedAsSuchAndCausesNothing() {
        Finding cause = Finding.of("some-rule", Severity.ERROR, "E1", "t").causedBy("W1", "its drop", null).build();
        assertEquals(Badge.CAUSE_ERROR, with(cause).causeMark("W1").badge());
        assertEquals(Badge.ACCEPTED, with(cause.acceptedWith("measured")).mark("E1").badge());
        assertNull(with(cause.acceptedWith("measured")).causeMark("W1"));
    }

    @Test
    void figuresOfLoadsAreThoseOfTheCheck() {
        CheckContext context = new CheckContext(HERON, CaseSolver.solveAll(HERON, new BasicMonitor()), NetFinder.find(HERON));
        StudyView view = StudyView.of(context, List.of());
        int compared = 0;
        for (LoadVerdict verdict : Check.over(context, CheckOptions.all(), new BasicMonitor()).verdicts()) {
            CaseView.Load load = view.caseView(verdict.caseName()).loads().get(verdict.load());
            assertNotNull(load, verdict.load());
            assertEquals(verdict.dropV(), load.dropV());
            assertEquals(verdict.dropShare(), load.dropShare());
            assertEquals(verdict.limit(), load.limit());
            assertEquals(verdict.currentA(), load.amps());
            assertEquals(verdict.voltageV(), load.volts());
            compared++;
        }
        assertTrue(compared > 30, "compared: " + compared);
    }

    @Test
    void potentialsAreAgainstTheBatterysMinusAndStrapsFollowOhm() {
        StudyView view = Studied.fleet("heron").get(0).study();
        CaseView figures = view.caseView("road");
        assertEquals("-G1:31", view.reference());
        assertEquals(0, figures.terminals().get("G1.31"));
        for (Plan.Bond bond : HERON.bonds()) {
            CaseView.Strap strap = figures.bonds().get(bond.id());
            assertEquals(StrictMath.abs(strap.amps()) * bond.ohm(), strap.dropV(), 1e-12);
        }
        assertSame(figures, view.caseView("road"));
        assertNull(view.caseView("no such case"));
    }

    @Test
    void loadsThatAreNotOnWaitWithTheirStandbyCurrent() {
        CaseView survey = Studied.fleet("heron").get(0).study().caseView("survey");
        int waiting = 0;
        for (Plan.Element element : HERON.elements()) {
            if (element instanceof Plan.Demand demand && demand.standbyA() > 0) {
                String device = HERON.devices().get(demand.device()).id();
                Double amps = survey.waiting().get(device);
                assertEquals(amps == null, survey.loads().containsKey(device), device);
                if (amps != null && amps > 1e-9) {
                    assertEquals(demand.standbyA(), amps, 1e-9, device);
                    waiting++;
                }
            }
        }
        assertTrue(waiting > 0);
    }

    @Test
    void theStarterRelayIsClosedWhileCranking() {
        StudyView view = Studied.fleet("heron").get(0).study();
        assertTrue(view.caseView("start").closed().stream().anyMatch(id -> id.startsWith("M1#")));
        assertTrue(view.caseView("night").closed().stream().noneMatch(id -> id.startsWith("M1#")));
    }
}
