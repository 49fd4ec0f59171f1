// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.loomwright.diagram.overlay.OverlayKind;

/** The strip below a drawing: which drawing, which overlay, search, zoom. */
final class FootBar extends Composite {
    /** What the strip acts on. */
    interface Target {
        void drawing(DrawingKind kind);

        void overlay(OverlayKind kind);

        void find(String text);

        void fit();

        void fitSelection();
    }

    private final Label state;
    private final Text search;
    private final Combo overlay;
    private final Button[] kinds;

    FootBar(Composite parent, Target target) {
        super(parent, SWT.NONE);
        List<DrawingKind> drawings = List.of(DrawingKind.values());
        GridLayout layout = new GridLayout(drawings.size() + 6, false);
        layout.marginHeight = 3;
        setLayout(layout);
        kinds = drawings.stream().map(kind -> kind(kind, target)).toArray(Button[]::new);
        Label words = new Label(this, SWT.NONE);
        words.setText(Words.of("foot.overlay"));
        GridData apart = new GridData();
        apart.horizontalIndent = 12;
        words.setLayoutData(apart);
        overlay = new Combo(this, SWT.READ_ONLY);
        OverlayKind[] overlays = OverlayKind.values();
        overlay.setItems(Stream.concat(Stream.of(Words.of("foot.overlay.none")),
                Arrays.stream(overlays).map(kind -> Words.of("foot.overlay." + kind.name()))).toArray(String[]::new));
        overlay.select(0);
        overlay.addListener(SWT.Selection, event -> target.overlay(
                overlay.getSelectionIndex() <= 0 ? null : overlays[overlay.getSelectionIndex() - 1]));
        search = new Text(this, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        overlay.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(event -> event.result = words.getText()));
        search.getAccessible().addAccessibleListener(
                AccessibleListener.getNameAdapter(event -> event.result = search.getMessage()));
        search.setMessage(Words.of("foot.find"));
        search.setToolTipText(Words.of("foot.find.tip"));
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, false, false);
        wide.widthHint = 150;
        search.setLayoutData(wide);
        search.addListener(SWT.Modify, event -> target.find(search.getText()));
        search.addListener(SWT.DefaultSelection, event -> target.find(search.getText()));
        state = new Label(this, SWT.RIGHT);
        state.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        button("foot.fit", target::fit);
        button("foot.fitselection", target::fitSelection);
    }

    private Button kind(DrawingKind kind, Target target) {
        Button button = new Button(this, SWT.TOGGLE);
        button.setText(Words.of("drawing." + kind.name()));
        button.addListener(SWT.Selection, event -> target.drawing(kind));
        return button;
    }

    private void button(String key, Runnable action) {
        Button button = new Button(this, SWT.PUSH);
        button.setText(Words.of(key));
        button.setToolTipText(Words.of(key + ".tip"));
        button.addListener(SWT.Selection, event -> action.run());
    }

    /** Shows which drawing it is. */
    void shown(DrawingKind kind) {
        for (int i = 0; i < kinds.length; i++) {
            kinds[i].setSelection(i == kind.ordinal());
        }
    }

    /** Shows which overlay lies over it. */
    void overlay(OverlayKind kind) {
        overlay.select(kind == null ? 0 : kind.ordinal() + 1);
    }

    /** Tells how the figures stand. */
    void state(String words) {
        if (!words.equals(state.getText())) {
            state.setText(words);
        }
    }
}
