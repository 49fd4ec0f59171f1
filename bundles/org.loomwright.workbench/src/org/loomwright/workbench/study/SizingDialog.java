// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Shell;
import org.loomwright.engine.sizing.SizingObjective;

/** Asks what sizing is to make least; for a comparison also whether arrangements are sized at all. */
public final class SizingDialog extends TitleAreaDialog {
    private final boolean comparison;
    private SizingObjective objective = SizingObjective.COPPER;
    private boolean openPersonChoices;

    private SizingDialog(Shell parent, boolean comparison) {
        super(parent);
        this.comparison = comparison;
        if (comparison) {
            objective = null;
        }
    }

    /** Before a sizing. */
    static SizingDialog sizing(Shell parent) {
        return new SizingDialog(parent, false);
    }

    /** Before a comparison. */
    static SizingDialog comparison(Shell parent) {
        return new SizingDialog(parent, true);
    }

    /** What is to be least; null to take arrangements as they stand. */
    SizingObjective objective() {
        return objective;
    }

    /** Whether what a person chose may be chosen anew. */
    boolean openPersonChoices() {
        return openPersonChoices;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(comparison ? Messages.Comparison_title : Messages.Sizing_title);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(comparison ? Messages.Comparison_title : Messages.Sizing_title);
        setMessage(comparison ? Messages.Comparison_message : Messages.Sizing_message);
        Composite body = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        GridLayoutFactory.swtDefaults().margins(12, 12).spacing(8, 8).applyTo(body);
        Group choice = new Group(body, SWT.NONE);
        choice.setText(comparison ? Messages.Comparison_how : Messages.Sizing_least);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(choice);
        GridLayoutFactory.swtDefaults().applyTo(choice);
        if (comparison) {
            radio(choice, Messages.Comparison_asTheyStand, null);
        }
        for (SizingObjective each : SizingObjective.values()) {
            String words = SizingProposal.words(each);
            radio(choice, comparison ? org.eclipse.osgi.util.NLS.bind(Messages.Comparison_sized, words) : words, each);
        }
        if (!comparison) {
            Button all = new Button(body, SWT.CHECK);
            all.setText(Messages.Sizing_all);
            all.addListener(SWT.Selection, event -> openPersonChoices = all.getSelection());
        }
        return area;
    }

    private void radio(Composite parent, String words, SizingObjective which) {
        Button button = new Button(parent, SWT.RADIO);
        button.setText(words);
        button.setSelection(which == objective);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection()) {
                objective = which;
            }
        });
    }
}
