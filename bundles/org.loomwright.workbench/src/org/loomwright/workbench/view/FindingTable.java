// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.jface.preference.JFacePreferences;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.StudyResult.ElementFigures;
import org.loomwright.workbench.editor.BadgeImages;
import org.loomwright.workbench.editor.MendFixes;
import org.loomwright.workbench.editor.Words;
import org.loomwright.workbench.preference.ShownFigures;

/** Findings as a table: badge, element, what, figure and limit, case, rule, mend. Accepted ones are muted and give their reason. */
final class FindingTable {
    private final TableViewer table;
    private final BadgeImages badges;
    private Designations names = new Designations("");
    private boolean own;

    /**
     * A table in a parent.
     *
     * @param chosen told of the finding that a person chose
     */
    FindingTable(Composite parent, Consumer<Finding> chosen) {
        badges = new BadgeImages(parent.getDisplay());
        table = new TableViewer(parent, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.getTable().setHeaderVisible(true);
        badge();
        column("findings.element", 90, SWT.LEFT, finding -> names.shown(finding.element()));
        column("findings.what", 430, SWT.LEFT, Finding::title);
        int figure = column("findings.is", 90, SWT.RIGHT, finding -> ShownFigures.current().of(finding.is()));
        int limit = column("findings.limit", 90, SWT.RIGHT, finding -> ShownFigures.current().of(finding.wanted()));
        column("findings.case", 110, SWT.LEFT,
                finding -> finding.caseName() == null ? Words.of("findings.every") : finding.caseName());
        column("findings.rule", 120, SWT.LEFT, Finding::rule);
        column("findings.mend", 300, SWT.LEFT, FindingTable::mend);
        table.addPostSelectionChangedListener(event -> {
            if (!own && chosen() != null) {
                chosen.accept(chosen());
            }
        });
        CellClick.on(table.getTable(), (item, column) -> {
            if (item.getData() instanceof Finding finding) {
                ask(finding, column == figure ? finding.is() : column == limit ? finding.wanted() : null);
            }
        });
        table.getTable().addListener(SWT.Dispose, event -> badges.dispose());
    }

    /** Asks how the figures of a finding came about. */
    private void ask(Finding finding, Quantity wanted) {
        if (!finding.derivations().isEmpty()) {
            FigureFocus.current().ask(new FigureQuestion(names.shown(finding.element()) + "  " + finding.rule(),
                    finding.element(), List.of(new ElementFigures(finding.element(), finding.caseName(), finding.derivations())),
                    wanted));
        } else if (wanted != null) {
            FigureFocus.current().ask(FigureQuestion.live(finding.element(), wanted));
        }
    }

    /** The viewer. */
    TableViewer viewer() {
        return table;
    }

    /** The finding chosen; null for none. */
    Finding chosen() {
        return table.getStructuredSelection().getFirstElement() instanceof Finding finding ? finding : null;
    }

    /** Shows findings; what was chosen stays chosen where it is still there. */
    void show(List<Finding> findings, Designations designations) {
        names = designations;
        own = true;
        if (!findings.equals(table.getInput())) {
            table.setInput(findings);
        }
        own = false;
    }

    /** Chooses a finding of an element unless one is chosen already; nobody is told. */
    void choose(String element) {
        Finding chosen = chosen();
        if (chosen == null || !chosen.element().equals(element)) {
            own = true;
            ((List<?>) table.getInput()).stream().map(Finding.class::cast)
                    .filter(finding -> finding.element().equals(element)).findFirst()
                    .ifPresentOrElse(finding -> table.setSelection(new StructuredSelection(finding), true),
                            () -> table.setSelection(StructuredSelection.EMPTY));
            own = false;
        }
    }

    private void badge() {
        TableViewerColumn column = new TableViewerColumn(table, SWT.LEFT);
        column.getColumn().setWidth(30);
        column.getColumn().setToolTipText(Words.of("findings.severity"));
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return "";
            }

            @Override
            public Image getImage(Object element) {
                return badges.of(BadgeImages.badge((Finding) element));
            }
        });
    }

    private int column(String key, int wide, int align, Function<Finding, String> words) {
        TableViewerColumn column = new TableViewerColumn(table, align);
        column.getColumn().setText(Words.of(key));
        column.getColumn().setWidth(wide);
        column.getColumn().setMoveable(true);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return words.apply((Finding) element);
            }

            @Override
            public Color getForeground(Object element) {
                return ((Finding) element).accepted() == null ? null
                        : JFaceResources.getColorRegistry().get(JFacePreferences.QUALIFIER_COLOR);
            }
        });
        return table.getTable().getColumnCount() - 1;
    }

    private static String mend(Finding finding) {
        if (finding.accepted() != null) {
            return Words.of("card.accepted", finding.accepted());
        }
        if (finding.mends().isEmpty()) {
            return "";
        }
        String text = finding.mends().get(0).text();
        return MendFixes.applicable(finding).isEmpty() ? Words.of("findings.hand", text) : text;
    }
}
