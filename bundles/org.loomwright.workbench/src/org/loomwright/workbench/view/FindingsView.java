// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.List;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Quantity;
import org.loomwright.workbench.editor.BadgeImages;
import org.loomwright.workbench.editor.FindingCount;
import org.loomwright.workbench.editor.MendFixes;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;

/** Findings of the vehicle in the active editor, in the case looked at; leads to elements and causes, mends and accepts. */
public final class FindingsView extends DocumentView {
    private TableViewer table;
    private BadgeImages badges;
    private Designations names = new Designations("");
    private boolean own;

    @Override
    protected void create(Composite parent) {
        badges = new BadgeImages(parent.getDisplay());
        table = new TableViewer(parent, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.getTable().setHeaderVisible(true);
        badge();
        column("findings.element", 90, SWT.LEFT, finding -> names.shown(finding.element()));
        column("findings.what", 430, SWT.LEFT, Finding::title);
        column("findings.is", 80, SWT.RIGHT, finding -> figure(finding.is()));
        column("findings.limit", 80, SWT.RIGHT, finding -> figure(finding.wanted()));
        column("findings.case", 110, SWT.LEFT,
                finding -> finding.caseName() == null ? Words.of("findings.every") : finding.caseName());
        column("findings.rule", 120, SWT.LEFT, Finding::rule);
        column("findings.mend", 260, SWT.LEFT, FindingsView::mend);
        table.addPostSelectionChangedListener(event -> {
            Finding chosen = chosen();
            if (!own && chosen != null && document() != null) {
                document().reveal(chosen.element());
            }
        });
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(manager -> {
            if (chosen() != null && document() != null) {
                FindingActions.fill(manager, document(), chosen(), names, getSite().getShell());
            }
        });
        table.getTable().setMenu(menu.createContextMenu(table.getTable()));
        getSite().registerContextMenu(menu, table);
    }

    /** The finding chosen in the table; null for none. */
    private Finding chosen() {
        return table.getStructuredSelection().getFirstElement() instanceof Finding finding ? finding : null;
    }

    @Override
    protected void update(VehicleDocument shown) {
        if (shown == null) {
            setContentDescription(Words.of("findings.none"));
            table.setInput(List.of());
            return;
        }
        names = new Designations(shown.arrangement() == null ? "" : shown.arrangement().getName());
        List<Finding> findings = shown.findings().stream()
                .filter(finding -> FindingCount.inCase(finding, shown.caseName())).toList();
        FindingCount count = FindingCount.of(shown.findings(), shown.caseName());
        setContentDescription(Words.of("findings.summary", count.errors(), count.warnings(), count.notes(), count.accepted()));
        own = true;
        if (!findings.equals(table.getInput())) {
            table.setInput(findings);
        }
        String selected = shown.selection().single();
        Finding chosen = chosen();
        if (selected != null && (chosen == null || !chosen.element().equals(selected))) {
            findings.stream().filter(finding -> finding.element().equals(selected)).findFirst()
                    .ifPresent(finding -> table.setSelection(new StructuredSelection(finding), true));
        }
        own = false;
    }

    private void badge() {
        TableViewerColumn column = new TableViewerColumn(table, SWT.LEFT);
        column.getColumn().setWidth(30);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return "";
            }

            @Override
            public Image getImage(Object element) {
                return badges.of(BadgeImages.badge((Finding) element));
            }

            @Override
            public String getToolTipText(Object element) {
                return ((Finding) element).severity().slug();
            }
        });
    }

    private interface Column {
        String of(Finding finding);
    }

    private void column(String key, int wide, int align, Column words) {
        TableViewerColumn column = new TableViewerColumn(table, align);
        column.getColumn().setText(Words.of(key));
        column.getColumn().setWidth(wide);
        column.getColumn().setMoveable(true);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return words.of((Finding) element);
            }
        });
    }

    private static String figure(Quantity quantity) {
        return quantity == null ? "" : quantity.toString().replace("mm2", "mm\u00B2").replace("degC", "\u00B0C");
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

    @Override
    public void setFocus() {
        table.getTable().setFocus();
    }

    @Override
    public void dispose() {
        badges.dispose();
        super.dispose();
    }
}
