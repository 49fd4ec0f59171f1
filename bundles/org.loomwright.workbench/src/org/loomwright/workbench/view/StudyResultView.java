// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ide.ResourceUtil;
import org.eclipse.ui.part.ViewPart;
import org.loomwright.engine.result.Designations;
import org.loomwright.workbench.editor.VehicleEditor;
import org.loomwright.workbench.editor.Words;
import org.loomwright.workbench.preference.Units;
import org.loomwright.workbench.study.SizingApply;
import org.loomwright.workbench.study.StudyOutcome;
import org.loomwright.workbench.study.StudyResults;
import org.loomwright.workbench.study.StudyTable;

/** What the study that ended last found: a summary, findings, tables of figures; a sizing can be applied from here. */
public final class StudyResultView extends ViewPart {
    private final Consumer<StudyOutcome> listener = this::show;
    private final IPropertyChangeListener units = event -> shownAnew();
    private final List<StudyFigures> figures = new ArrayList<>();
    private Composite head;
    private Label summary;
    private Button apply;
    private CTabFolder tabs;
    private StudyOutcome shown;

    @Override
    public void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        head = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(6, 3).applyTo(head);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        summary = new Label(head, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(summary);
        apply = new Button(head, SWT.PUSH);
        apply.setText(Words.of("study.apply"));
        apply.setToolTipText(Words.of("study.apply.tip"));
        apply.addListener(SWT.Selection, event -> applied(SizingApply.apply(shown, getSite().getPage())));
        GridDataFactory.swtDefaults().align(SWT.RIGHT, SWT.CENTER).applyTo(apply);
        tabs = new CTabFolder(parent, SWT.TOP | SWT.FLAT);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tabs);
        StudyResults.current().listen(listener);
        Units.store().addPropertyChangeListener(units);
        show(StudyResults.current().latest());
    }

    private void shownAnew() {
        show(shown);
    }

    private void applied(SizingApply.Answer answer) {
        apply.setEnabled(!answer.applied());
        say(List.of(answer.words()));
    }

    /** What the study that is shown came to; null for none. */
    public StudyOutcome shown() {
        return shown;
    }

    /** What stands above the tables. */
    public String words() {
        return summary.getText();
    }

    /** The button that applies a sizing. */
    public Button applyButton() {
        return apply;
    }

    /** The tables, for tests. */
    CTabFolder tabs() {
        return tabs;
    }

    private void show(StudyOutcome outcome) {
        if (tabs.isDisposed()) {
            return;
        }
        int front = shown != null && outcome != null && shown.kind() == outcome.kind() ? tabs.getSelectionIndex() : -1;
        shown = outcome;
        figures.clear();
        for (CTabItem item : tabs.getItems()) {
            item.getControl().dispose();
            item.dispose();
        }
        boolean offered = SizingApply.offers(outcome);
        ((org.eclipse.swt.layout.GridData) apply.getLayoutData()).exclude = !offered;
        apply.setVisible(offered);
        apply.setEnabled(offered);
        if (outcome == null) {
            setContentDescription(Words.of("study.none"));
            say(List.of());
            return;
        }
        setContentDescription(Words.of("study.of", outcome.kind().shown(), outcome.file().getName(), outcome.arrangement())
                .replaceAll(", $", ""));
        say(outcome.summary());
        findings(outcome);
        outcome.tables().forEach(this::table);
        // a study that found nothing to complain of shows its figures first
        int first = outcome.result().findings().isEmpty() && !outcome.tables().isEmpty() ? 1 : 0;
        tabs.setSelection(front >= 0 && front < tabs.getItemCount() ? front : first);
    }

    private void say(List<String> lines) {
        summary.setText(String.join("  ", lines).replace("&", "&&"));
        ((org.eclipse.swt.layout.GridData) head.getLayoutData()).exclude = lines.isEmpty() && !apply.getVisible();
        head.setVisible(!lines.isEmpty() || apply.getVisible());
        head.getParent().layout(true, true);
    }

    private void findings(StudyOutcome outcome) {
        FindingTable table = new FindingTable(tabs, finding -> reveal(finding.element()));
        table.show(outcome.result().findings(), new Designations(outcome.arrangement()));
        tab(Words.of("study.findings", outcome.result().findings().size()), table.viewer().getTable());
    }

    private void table(StudyTable study) {
        StudyFigures made = new StudyFigures(tabs, study, this::reveal);
        figures.add(made);
        tab(study.name(), made.table()).setToolTipText(study.legend());
    }

    private CTabItem tab(String words, org.eclipse.swt.widgets.Control control) {
        CTabItem item = new CTabItem(tabs, SWT.NONE);
        item.setText(words);
        item.setControl(control);
        return item;
    }

    /** Leads to an element in the editor of the vehicle studied, where that is open. */
    private void reveal(String element) {
        IEditorPart editor = ResourceUtil.findEditor(getSite().getPage(), shown.file());
        if (editor instanceof VehicleEditor vehicle && vehicle.document().sound()) {
            if (getSite().getPage().getActiveEditor() != editor) {
                getSite().getPage().bringToTop(editor);
            }
            // a core has no element of its own in the drawings
            vehicle.document().reveal(element.replaceFirst("#.*", ""));
        }
    }

    @Override
    public void setFocus() {
        tabs.setFocus();
    }

    @Override
    public void dispose() {
        StudyResults.current().forget(listener);
        Units.store().removePropertyChangeListener(units);
        super.dispose();
    }
}
