// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.engine.sizing.SizingObjective;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.workbench.app.Ids;
import org.loomwright.workbench.app.OpenVehicle;
import org.loomwright.workbench.app.Ui;
import org.loomwright.workbench.editor.FindingCount;
import org.loomwright.workbench.view.StudyResultView;

/** Each study from the menu: its figures in the view, cancel, and what is applied. */
class StudiesTest {
    private OpenVehicle heron;
    private StudyResultView view;

    @BeforeEach
    void open() throws Exception {
        heron = OpenVehicle.copy("heron", "studied");
        view = OpenVehicle.view(Ids.STUDY);
    }

    @AfterEach
    void close() throws Exception {
        Job.getJobManager().cancel(StudyJob.FAMILY);
        Ui.await("the end of all studies", () -> Job.getJobManager().find(StudyJob.FAMILY).length == 0);
        heron.close();
    }

    private StudyOutcome size(String objective) {
        Studies.answer(Messages.Sizing_title, shell -> {
            Studies.press(shell, objective);
            Studies.press(shell, "OK");
        });
        return Studies.run("sizing");
    }

    /** Leaves few cables to sizing, so that it takes a moment only. */
    private void openSome() {
        heron.document().run("open", () -> heron.document().arrangement().getCables().stream()
                .filter(cable -> cable.getSectionMm2() != null && !Boolean.TRUE.equals(cable.getExisting())).limit(8)
                .forEach(cable -> cable.setSectionBy(ChosenBy.SIZING)));
    }

    private void shown(StudyOutcome outcome) {
        Ui.await("the outcome in the view", () -> view.shown() == outcome);
    }

    @Test
    void protectionGivesTablesWhoseRowsLeadToElements() {
        StudyOutcome outcome = Studies.run("protection");
        shown(outcome);
        assertEquals(List.of(Messages.Table_conductors, Messages.Table_faultReturns, Messages.Table_devices),
                outcome.tables().stream().map(StudyTable::name).toList());
        for (StudyTable table : outcome.tables()) {
            assertEquals(List.of(), table.elements().stream()
                    .filter(id -> heron.document().element(id.replaceFirst("#.*", "")) == null).toList(),
                    table.name());
        }
        assertFalse(outcome.tables().get(0).origin().of(0).isEmpty(), "a conductor's figures are derived");
        Ui.screenshot("study-protection");
    }

    @Test
    void earthGivesStrapsBodiesAndReturns() {
        StudyOutcome outcome = Studies.run("earth");
        shown(outcome);
        StudyTable straps = outcome.tables().get(0);
        assertEquals(Messages.Table_straps, straps.name());
        assertEquals(heron.document().vehicle().getBonds().size(), straps.table().rows().size());
        assertTrue(straps.elements().stream().allMatch(id -> heron.document().element(id) != null));
        Ui.screenshot("study-earth");
    }

    @Test
    void sizingIsSeenFirstThenAppliedAsOneStepThatIsUndone() throws Exception {
        openSome();
        byte[] before = heron.document().file().resource().toBytes();
        StudyOutcome outcome = size(Messages.Objective_copper);
        shown(outcome);
        assertArrayEquals(before, heron.document().file().resource().toBytes(), "nothing is changed by looking at it");
        SizingProposal proposal = (SizingProposal) outcome.detail();
        assertEquals(SizingObjective.COPPER, proposal.result().objective());
        assertTrue(proposal.changed() > 0);
        Ui.screenshot("study-sizing");
        assertTrue(view.applyButton().isVisible());
        view.applyButton().notifyListeners(SWT.Selection, null);
        Cable cable = (Cable) heron.document().element(proposal.result().cables().get(0).id());
        assertEquals(proposal.result().cables().get(0).afterMm2(), cable.getSectionMm2().doubleValue());
        heron.analysed();
        assertEquals(0, FindingCount.of(heron.document().findings(), null).errors(), "what sizing chose passes the check");
        assertFalse(view.applyButton().isEnabled());
        heron.document().domain().getCommandStack().undo();
        assertArrayEquals(before, heron.document().file().resource().toBytes());
        assertTrue(SizingApply.apply(outcome, Ui.page()).applied(), "after undo it is the vehicle that was sized");
    }

    @Test
    void sizingOfAVehicleChangedMeanwhileIsNotApplied() {
        openSome();
        StudyOutcome outcome = size(Messages.Objective_price);
        shown(outcome);
        Cable cable = heron.document().arrangement().getCables().get(0);
        heron.document().run("other", () -> cable.setSectionMm2(new BigDecimal("95")));
        Object undo = heron.document().domain().getCommandStack().getUndoCommand();
        SizingApply.Answer answer = SizingApply.apply(outcome, Ui.page());
        assertFalse(answer.applied());
        assertEquals(Messages.Sizing_changed, answer.words());
        assertSame(undo, heron.document().domain().getCommandStack().getUndoCommand());
    }

    @Test
    void sizingWithoutAnythingOpenSaysSo() {
        StudyOutcome outcome = size(Messages.Objective_price);
        shown(outcome);
        boolean nothing = ((SizingProposal) outcome.detail()).choices().isEmpty();
        assertEquals(nothing, outcome.summary().contains(Messages.Summary_nothingOpen));
        assertEquals(!nothing, view.applyButton().isVisible());
    }

    @Test
    void arrangementsAreComparedAsTheyStand() {
        Studies.answer(Messages.Comparison_title, shell -> Studies.press(shell, "OK"));
        StudyOutcome outcome = Studies.run("comparison");
        shown(outcome);
        assertEquals(List.of(Messages.Comparison_asTheyStand), outcome.summary());
        ComparedArrangements compared = (ComparedArrangements) outcome.detail();
        assertEquals(heron.document().vehicle().getArrangements().size(), compared.comparison().arrangements().size());
        assertFalse(outcome.tables().get(0).origin().of(0).isEmpty(), "figures of a comparison are derived");
        Ui.screenshot("study-comparison");
    }

    @Test
    void aDialogGivenUpStartsNothing() {
        StudyOutcome before = StudyResults.current().latest();
        Studies.answer(Messages.Sizing_title, shell -> Studies.press(shell, "Cancel"));
        Studies.start("sizing");
        assertEquals(0, Job.getJobManager().find(StudyJob.FAMILY).length);
        assertSame(before, StudyResults.current().latest());
    }

    @ParameterizedTest
    @ValueSource(strings = {"protection", "earth", "sizing", "comparison"})
    void aStudyIsCancelled(String study) {
        StudyOutcome before = StudyResults.current().latest();
        if (study.equals("sizing")) {
            Studies.answer(Messages.Sizing_title, shell -> Studies.press(shell, "OK"));
        } else if (study.equals("comparison")) {
            Studies.answer(Messages.Comparison_title, shell -> Studies.press(shell, "OK"));
        }
        Studies.start(study);
        Job[] jobs = Job.getJobManager().find(StudyJob.FAMILY);
        assertEquals(1, jobs.length);
        assertNotNull(jobs[0].getName());
        jobs[0].cancel();
        Ui.await("the end of its job", () -> Job.getJobManager().find(StudyJob.FAMILY).length == 0);
        assertSame(before, StudyResults.current().latest(), "a study that was cancelled tells nothing");
    }
}
