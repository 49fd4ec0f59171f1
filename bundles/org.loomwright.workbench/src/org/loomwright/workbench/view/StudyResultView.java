// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.workbench.editor.BadgeImages;
import org.loomwright.workbench.editor.VehicleEditor;
import org.loomwright.workbench.editor.Words;
import org.loomwright.workbench.study.StudyOutcome;
import org.loomwright.workbench.study.StudyResults;

/** What the study that ended last found. */
public final class StudyResultView extends ViewPart {
    private final Consumer<StudyOutcome> listener = this::show;
    private TableViewer table;
    private BadgeImages badges;
    private Designations names = new Designations("");

    @Override
    public void createPartControl(Composite parent) {
        badges = new BadgeImages(parent.getDisplay());
        table = new TableViewer(parent, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.getTable().setHeaderVisible(true);
        column("", 30, finding -> "", true);
        column(Words.of("findings.element"), 100, finding -> names.shown(finding.element()), false);
        column(Words.of("findings.what"), 460, Finding::title, false);
        column(Words.of("findings.is"), 90, finding -> finding.is() == null ? "" : finding.is().toString(), false);
        column(Words.of("findings.limit"), 90, finding -> finding.wanted() == null ? "" : finding.wanted().toString(), false);
        column(Words.of("findings.rule"), 130, Finding::rule, false);
        table.addPostSelectionChangedListener(event -> {
            if (table.getStructuredSelection().getFirstElement() instanceof Finding finding
                    && getSite().getPage().getActiveEditor() instanceof VehicleEditor editor && editor.document().sound()) {
                editor.document().reveal(finding.element());
            }
        });
        StudyResults.current().listen(listener);
        if (StudyResults.current().latest() == null) {
            setContentDescription(Words.of("study.none"));
        } else {
            show(StudyResults.current().latest());
        }
    }

    private void show(StudyOutcome outcome) {
        if (table.getControl().isDisposed()) {
            return;
        }
        names = new Designations(outcome.arrangement());
        List<Finding> findings = outcome.result().findings();
        setContentDescription(Words.of("study.of", outcome.kind().shown(), outcome.file().getName(), outcome.arrangement(),
                findings.size()));
        table.setInput(findings);
    }

    private interface Cell {
        String of(Finding finding);
    }

    private void column(String head, int wide, Cell cell, boolean badge) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.LEFT);
        column.getColumn().setText(head);
        column.getColumn().setWidth(wide);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return cell.of((Finding) element);
            }

            @Override
            public Image getImage(Object element) {
                return badge ? badges.of(BadgeImages.badge((Finding) element)) : null;
            }
        });
    }

    @Override
    public void setFocus() {
        table.getTable().setFocus();
    }

    @Override
    public void dispose() {
        StudyResults.current().forget(listener);
        badges.dispose();
        super.dispose();
    }
}
