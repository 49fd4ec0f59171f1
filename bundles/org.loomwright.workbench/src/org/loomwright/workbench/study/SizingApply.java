// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.ide.ResourceUtil;

/** Applies what sizing proposed, in the open editor of the vehicle and nowhere else, as long as the vehicle is what was sized. */
public final class SizingApply {
    private SizingApply() {
    }

    /**
     * What came of it.
     *
     * @param applied the vehicle was changed
     * @param words   what to tell the person
     */
    public record Answer(boolean applied, String words) {
    }

    /** Whether an outcome can be applied at all. */
    public static boolean offers(StudyOutcome outcome) {
        return outcome != null && outcome.detail() instanceof SizingProposal proposal && !proposal.choices().isEmpty();
    }

    /** Applies an outcome of sizing as one step that can be undone. */
    public static Answer apply(StudyOutcome outcome, IWorkbenchPage page) {
        SizingProposal proposal = (SizingProposal) outcome.detail();
        String name = outcome.file().getName();
        IEditorPart editor = ResourceUtil.findEditor(page, outcome.file());
        StudySource source = editor == null ? null : Adapters.adapt(editor, StudySource.class);
        if (source == null) {
            return new Answer(false, NLS.bind(Messages.Sizing_closed, name));
        }
        if (!proposal.state().equals(source.state())) {
            return new Answer(false, Messages.Sizing_changed);
        }
        try {
            int changed = source.apply(NLS.bind(Messages.Sizing_apply, outcome.arrangement()), proposal.choices(),
                    proposal.openPersonChoices());
            return changed == 0 ? new Answer(false, Messages.Sizing_same)
                    : new Answer(true, NLS.bind(Messages.Sizing_applied, changed, name));
        } catch (IllegalArgumentException refused) {
            return new Answer(false, NLS.bind(Messages.Sizing_refused, refused.getMessage()));
        }
    }
}
