// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.model.edits.MendEdits;
import org.loomwright.model.edits.VehicleEdits;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.workbench.markers.FindingKey;

/** What can be done about the findings of a document: apply a proposal, or accept with a reason; each one step to undo. */
public final class MendFixes {
    private final VehicleDocument document;

    private MendFixes(VehicleDocument document) {
        this.document = document;
    }

    /** Of a document. */
    public static MendFixes of(VehicleDocument document) {
        return new MendFixes(document);
    }

    /** Proposals that can be applied; the others are for a person to carry out. */
    public static List<Mend> applicable(Finding finding) {
        return finding.mends().stream().filter(mend -> !mend.changes().isEmpty()).toList();
    }

    /**
     * Applies a proposal.
     *
     * @throws IllegalArgumentException when it cannot be applied any more; the model is as it was then
     */
    public void apply(Mend mend) {
        document.run(Words.of("edit.mend", mend.text()), () -> mend.changes().forEach(this::change));
    }

    /**
     * Applies the proposal of a finding.
     *
     * @param text the proposal's text
     * @return false when the latest analysis has no such finding or proposal
     */
    public boolean mend(FindingKey key, String text) {
        String arrangement = document.arrangement() == null ? "" : document.arrangement().getName();
        for (Finding finding : document.findings()) {
            if (Objects.equals(FindingKey.of(arrangement, finding), key)) {
                for (Mend mend : applicable(finding)) {
                    if (mend.text().equals(text)) {
                        apply(mend);
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /**
     * Accepts a finding.
     *
     * @param reason why; must say something
     */
    public void accept(Finding finding, String reason) {
        document.run(Words.of("edit.accept"), () -> VehicleEdits.waive(document.vehicle(), finding.rule(), finding.element(),
                reason, System.getProperty("user.name"), LocalDate.now().toString()));
    }

    /** Takes back that a finding was accepted: it stands again. */
    public void takeBack(Finding finding) {
        document.run(Words.of("edit.takeback"), () -> document.vehicle().getWaivers()
                .removeIf(each -> finding.rule().equals(each.getRule()) && finding.element().equals(each.getElement())));
    }

    private void change(Mend.Change change) {
        Vehicle vehicle = document.vehicle();
        if (change instanceof Mend.UseSection use) {
            MendEdits.useSection(vehicle, use.cable(), use.sectionMm2());
        } else if (change instanceof Mend.AddParallel add) {
            MendEdits.addParallel(vehicle, add.cable());
        } else if (change instanceof Mend.FitProtector fit) {
            MendEdits.fitProtector(vehicle, fit.way(), fit.protectorPart());
        } else if (change instanceof Mend.AddBond bond) {
            MendEdits.addBond(vehicle, bond.bodyA(), bond.bodyB(), bond.sectionMm2(), bond.lengthMm());
        } else if (change instanceof Mend.SetValue set) {
            MendEdits.setValue(vehicle, set.device(), set.element(), set.quantity(), set.value());
        }
    }
}
