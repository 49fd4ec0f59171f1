// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.List;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.loomwright.diagram.edit.View;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneSearch;
import org.loomwright.diagram.services.DrawingPreferences;
import org.loomwright.diagram.tool.EditRequest;
import org.loomwright.diagram.tool.Tool;
import org.loomwright.diagram.tool.Verdict;
import org.loomwright.workbench.diagram.SceneCanvas;
import org.loomwright.workbench.diagram.Typeface;
import org.loomwright.workbench.gesture.DrawingCommand;
import org.loomwright.workbench.gesture.Gestures;
import org.loomwright.workbench.palette.PartPalette;

/** One vehicle as drawings, with the strips above and below: what is chosen there rules what is drawn. */
public final class DrawingPane extends Composite implements SceneCanvas.Host, FootBar.Target {
    private final VehicleDocument document;
    private final CaseStrip strip;
    private final SceneCanvas canvas;
    private final FootBar foot;
    private final HoverCard card;
    private final ElementCard cards;
    private final ToolColumn tools;
    private final PartPalette palette;
    private final Gestures gestures;
    private DrawingKind kind = DrawingKind.PLAN;
    private OverlayKind overlay;
    private DrawingPreferences preferences = DrawingPreferences.metric();
    private Theme theme = Theme.light();
    private List<String> found = List.of();
    private String sought = "";
    private boolean due;
    private DrawingKind shown;
    private final DrawingJobs drawings;

    /** The drawings of a document that was read whole. */
    public DrawingPane(Composite parent, VehicleDocument document) {
        super(parent, SWT.NONE);
        this.document = document;
        cards = new ElementCard(document);
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 0;
        layout.verticalSpacing = 0;
        setLayout(layout);
        strip = new CaseStrip(this, document);
        strip.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 3, 1));
        tools = new ToolColumn(this);
        tools.setLayoutData(new GridData(SWT.LEFT, SWT.FILL, false, true));
        canvas = new SceneCanvas(this, this);
        canvas.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        palette = new PartPalette(this, canvas);
        palette.moveAbove(canvas);
        palette.setLayoutData(new GridData(SWT.LEFT, SWT.FILL, false, true));
        palette.offer(document.vehicle());
        tools.on(this);
        foot = new FootBar(this, this);
        foot.setLayoutData(new GridData(SWT.FILL, SWT.BOTTOM, true, false, 3, 1));
        card = new HoverCard(canvas);
        card.onLink(cards::follow);
        ValuePointer.on(canvas);
        gestures = new Gestures(document, canvas);
        drawings = new DrawingJobs(document, new DisplayThread(getDisplay()), Typeface.of(getDisplay()).type(), this::drawn);
        addListener(SWT.Dispose, event -> drawings.stop());
        foot.shown(kind);
        tools.shown(kind);
        document.listen(this::changed);
        document.selection().listen(this::selected);
        redrawn();
    }

    /** What is painted on. */
    public SceneCanvas canvas() {
        return canvas;
    }

    /** What gestures on the drawing do. */
    public Gestures gestures() {
        return gestures;
    }

    /** Parts that can be placed. */
    public PartPalette palette() {
        return palette;
    }

    /** Shows the parts that can be placed, or hides them. */
    public void togglePalette() {
        palette(!palette.getVisible());
    }

    /** Goes to the field in which parts are sought. */
    public void seekPart() {
        palette(true);
        palette.seek();
    }

    private void palette(boolean wanted) {
        palette.setVisible(wanted);
        ((GridData) palette.getLayoutData()).exclude = !wanted;
        tools.palette(wanted);
        layout(true);
    }

    /** A command was chosen that may take up a tool. */
    public void chosen(DrawingCommand command) {
        tools.chosen(command);
    }

    /** The drawing shown. */
    public DrawingKind kind() {
        return kind;
    }

    /** Takes other colours. */
    public void theme(Theme colours) {
        theme = colours;
        canvas.theme(colours);
        palette.theme(colours);
        tools.theme(colours);
        strip.update(colours);
    }

    /** Shows figures otherwise. */
    public void preferences(DrawingPreferences wanted) {
        if (!wanted.equals(preferences)) {
            preferences = wanted;
            redrawn();
        }
    }

    @Override
    public void drawing(DrawingKind wanted) {
        foot.shown(wanted);
        tools.shown(wanted);
        if (wanted != kind) {
            kind = wanted;
            gestures.stale();
            redrawn();
        }
    }

    @Override
    public void overlay(OverlayKind wanted) {
        foot.overlay(wanted);
        if (wanted != overlay) {
            overlay = wanted;
            redrawn();
        }
    }

    @Override
    public void find(String text) {
        boolean next = text.equals(sought) && found.size() > 1;
        if (next) {
            List<String> turned = new java.util.ArrayList<>(found.subList(1, found.size()));
            turned.add(found.get(0));
            found = List.copyOf(turned);
        } else {
            found = text.isBlank() ? List.of() : SceneSearch.find(canvas.scene(), text);
        }
        sought = text;
        canvas.found(found);
        if (!found.isEmpty()) {
            document.selection().set(List.of(found.get(0)));
        }
    }

    @Override
    public void fit() {
        canvas.fit();
    }

    @Override
    public void fitSelection() {
        canvas.fitSelection();
    }

    @Override
    public void select(Set<String> ids) {
        document.selection().set(ids);
    }

    @Override
    public void edit(EditRequest request) {
        gestures.edit(request);
    }

    @Override
    public void verdict(Verdict verdict) {
        gestures.verdict(verdict);
    }

    @Override
    public void tool(Tool tool) {
        tools.shown(tool);
    }

    @Override
    public void hover(String id, Point at) {
        if (id == null || at == null) {
            card.hide();
            return;
        }
        Scene shown = cards.of(id, Typeface.of(getDisplay()).type());
        if (shown != null) {
            card.show(shown, theme, (int) at.x(), (int) at.y());
        }
    }

    /** Shows the card of an element as if the pointer rested on it. */
    public void showCard(String id) {
        String drawn = canvas.drawn(id);
        var room = drawn == null ? null : canvas.hits().bounds(drawn);
        if (room != null) {
            Point at = canvas.viewport().toScreen(room.centre());
            hover(id, at);
        }
    }

    private void changed(VehicleDocument.Change change) {
        if (change == VehicleDocument.Change.DIRTY || isDisposed()) {
            return;
        }
        if (change != VehicleDocument.Change.ANALYSIS) {
            gestures.stale();
        }
        if (!due) {
            // several changes at once are drawn once
            due = true;
            getDisplay().asyncExec(() -> {
                due = false;
                if (!isDisposed()) {
                    redrawn();
                }
            });
        }
    }

    private void selected(Set<String> ids) {
        if (!isDisposed()) {
            canvas.selection(ids);
            canvas.bringIntoSight(canvas.selection());
            gestures.selected();
        }
    }

    /** True when what is shown is what was asked for last. */
    public boolean idle() {
        return !due && shown == kind && drawings.idle();
    }

    private void redrawn() {
        strip.update(theme);
        foot.state(state());
        drawings.draw(kind, overlay, preferences);
    }

    private void drawn(DrawingKind made, Scene scene) {
        if (isDisposed() || made != kind) {
            return;
        }
        boolean other = shown != made;
        shown = made;
        canvas.show(scene);
        canvas.selection(document.selection().ids());
        if (other) {
            canvas.fit();
        }
        palette.offer(document.vehicle());
        gestures.shown(View.valueOf(made.name()), idle());
    }

    private String state() {
        if (!document.fresh()) {
            return Words.of("strip.busy");
        }
        return document.analysis().worked() ? Words.of("strip.fresh", document.analysis().millis()) : Words.of("strip.failed");
    }
}
