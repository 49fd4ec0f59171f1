// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.List;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.workbench.editor.FindingCount;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;
import org.loomwright.workbench.preference.Units;

/** Findings of the vehicle in the active editor, in the case looked at; leads to elements and causes, mends and accepts. */
public final class FindingsView extends DocumentView {
    private final IPropertyChangeListener units = event -> viewer().refresh();
    private FindingTable table;
    private Designations names = new Designations("");

    @Override
    protected void create(Composite parent) {
        table = new FindingTable(parent, finding -> {
            if (document() != null) {
                document().reveal(finding.element());
            }
        });
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(manager -> {
            if (table.chosen() != null && document() != null) {
                FindingActions.fill(manager, document(), table.chosen(), names, getSite().getShell());
            }
        });
        table.viewer().getTable().setMenu(menu.createContextMenu(table.viewer().getTable()));
        getSite().registerContextMenu(menu, table.viewer());
        Units.store().addPropertyChangeListener(units);
    }

    /** The table, for tests. */
    TableViewer viewer() {
        return table.viewer();
    }

    @Override
    protected void update(VehicleDocument shown) {
        if (shown == null) {
            setContentDescription(Words.of("findings.none"));
            table.show(List.of(), names);
            return;
        }
        names = new Designations(shown.arrangement() == null ? "" : shown.arrangement().getName());
        List<Finding> findings = shown.findings().stream()
                .filter(finding -> FindingCount.inCase(finding, shown.caseName())).toList();
        FindingCount count = FindingCount.of(shown.findings(), shown.caseName());
        setContentDescription(Words.of("findings.summary", count.errors(), count.warnings(), count.notes(), count.accepted()));
        table.show(findings, names);
        String selected = shown.selection().single();
        if (selected != null) {
            table.choose(selected);
        }
    }

    @Override
    public void setFocus() {
        table.viewer().getTable().setFocus();
    }

    @Override
    public void dispose() {
        Units.store().removePropertyChangeListener(units);
        super.dispose();
    }
}
