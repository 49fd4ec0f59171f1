// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Role;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Case;

/** The strip above a drawing: which arrangement and which operating state is looked at, with what was found in each. */
final class CaseStrip extends Composite {
    /** Before the names of cases that the analysis adds. */
    private static final String OWN = "engine:";
    private static final int ARRANGEMENT_PX = 130;
    private final VehicleDocument document;
    private final Combo arrangements;
    private final CaseRow row;
    private final List<CasePill> pills = new ArrayList<>();
    private List<String> shownCases = List.of();
    private Theme theme = Theme.light();

    CaseStrip(Composite parent, VehicleDocument document) {
        super(parent, SWT.NONE);
        this.document = document;
        GridLayout layout = new GridLayout(4, false);
        layout.marginHeight = 4;
        layout.verticalSpacing = 0;
        setLayout(layout);
        Label which = new Label(this, SWT.NONE);
        which.setText(Words.of("strip.arrangement"));
        arrangements = new Combo(this, SWT.READ_ONLY | SWT.DROP_DOWN);
        named(arrangements, which);
        GridData narrow = new GridData(SWT.LEFT, SWT.CENTER, false, false);
        narrow.widthHint = ARRANGEMENT_PX;
        arrangements.setLayoutData(narrow);
        arrangements.addListener(SWT.Selection, event -> document.showArrangement(
                document.vehicle().getArrangements().get(arrangements.getSelectionIndex()).getName()));
        Label state = new Label(this, SWT.NONE);
        state.setText(Words.of("strip.case"));
        row = new CaseRow(this);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = 100;
        row.setLayoutData(wide);
        update(Theme.light());
    }

    /** Screen readers take the label beside it. */
    private static void named(Combo combo, Label label) {
        combo.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(event -> event.result = label.getText()));
    }

    /** Shows what is so now. */
    void update(Theme colours) {
        theme = colours;
        int rgb = colours.colour(Role.PANEL);
        int ink = colours.colour(Role.INK);
        Color ground = new Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
        setBackground(ground);
        row.setBackground(ground);
        for (var child : getChildren()) {
            if (child instanceof Label) {
                child.setBackground(ground);
                child.setForeground(new Color(ink >> 16 & 0xFF, ink >> 8 & 0xFF, ink & 0xFF));
            }
        }
        arrangements();
        List<String> cases = cases();
        if (!cases.equals(shownCases) || pills.isEmpty()) {
            pills.forEach(CasePill::dispose);
            pills.clear();
            pills.add(new CasePill(row, null, Words.of("strip.all"), () -> document.showCase(null)));
            cases.forEach(name -> pills.add(new CasePill(row, name, words(name), () -> document.showCase(name))));
            shownCases = cases;
            row.pills(pills);
            if (document.caseName() != null && !cases.contains(document.caseName())) {
                document.showCase(null);
            }
        }
        boolean wider = false;
        for (CasePill pill : pills) {
            wider |= pill.show(FindingCount.of(document.findings(), pill.caseName()),
                    Objects.equals(pill.caseName(), document.caseName()), theme);
        }
        if (wider) {
            row.layout(true);
        }
        row.theme(theme);
    }

    /** The pills, for tests. */
    CaseRow row() {
        return row;
    }

    private void arrangements() {
        List<String> names = new ArrayList<>();
        for (Arrangement each : document.vehicle().getArrangements()) {
            names.add(each.getName());
        }
        if (!names.equals(List.of(arrangements.getItems()))) {
            arrangements.setItems(names.toArray(String[]::new));
        }
        arrangements.setToolTipText(document.arrangement() == null ? null : document.arrangement().getLabel());
        int at = document.vehicle().getArrangements().indexOf(document.arrangement());
        if (arrangements.getSelectionIndex() != at) {
            arrangements.select(at);
        }
        arrangements.setEnabled(names.size() > 1);
    }

    /** Those of the analysis, which adds some of its own; those of the model before the first. */
    private List<String> cases() {
        if (document.analysis() != null && document.analysis().worked()) {
            return document.analysis().context().plan().cases().stream().map(Plan.Case::name).toList();
        }
        return shownCases.isEmpty() ? document.vehicle().getCases().stream().map(Case::getName).toList() : shownCases;
    }

    private String words(String name) {
        return document.vehicle().getCases().stream().filter(each -> name.equals(each.getName())).map(Case::getLabel)
                .filter(label -> label != null && !label.isBlank()).map(String::strip).findFirst()
                .orElse(name.startsWith(OWN) ? name.substring(OWN.length()).replace('-', ' ') : name);
    }
}
