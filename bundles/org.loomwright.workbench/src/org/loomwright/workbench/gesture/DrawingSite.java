// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.contexts.IContextActivation;
import org.eclipse.ui.contexts.IContextService;
import org.loomwright.diagram.tool.KeyEvent;
import org.loomwright.workbench.diagram.SceneCanvas;

/**
 * Ties a drawing to its editor: while the drawing has the keyboard, the keys of its commands hold and the Edit menu acts on
 * what is selected there; a field with the keyboard keeps them. What gestures have to tell goes to the status line.
 */
public final class DrawingSite implements Gestures.Surroundings {
    /** The context in which the keys of drawings hold. */
    public static final String CONTEXT = "org.loomwright.workbench.drawing";
    private final IEditorSite site;
    private final IAction undo;
    private final IAction redo;
    private final Map<String, IAction> edits = new LinkedHashMap<>();
    private IContextActivation keys;

    /**
     * Ties a canvas to its editor.
     *
     * @param undo undo of the editor
     * @param redo redo of the editor
     */
    public DrawingSite(IEditorSite site, SceneCanvas canvas, IAction undo, IAction redo) {
        this.site = site;
        this.undo = undo;
        this.redo = redo;
        edits.put(ActionFactory.CUT.getId(), key(canvas, KeyEvent.Key.CUT));
        edits.put(ActionFactory.COPY.getId(), key(canvas, KeyEvent.Key.COPY));
        edits.put(ActionFactory.PASTE.getId(), key(canvas, KeyEvent.Key.PASTE));
        edits.put(ActionFactory.DELETE.getId(), key(canvas, KeyEvent.Key.DELETE));
        edits.put(ActionFactory.SELECT_ALL.getId(), key(canvas, KeyEvent.Key.SELECT_ALL));
        edits.put(ActionFactory.RENAME.getId(), key(canvas, KeyEvent.Key.RENAME));
        canvas.addListener(SWT.FocusIn, event -> entered());
        canvas.addListener(SWT.FocusOut, event -> left());
        canvas.addListener(SWT.Dispose, event -> left());
    }

    private static IAction key(SceneCanvas canvas, KeyEvent.Key key) {
        return new Action() {
            @Override
            public void run() {
                canvas.key(KeyEvent.of(key));
            }
        };
    }

    private void entered() {
        if (keys == null) {
            keys = site.getService(IContextService.class).activateContext(CONTEXT);
            edits.forEach(site.getActionBars()::setGlobalActionHandler);
            site.getActionBars().updateActionBars();
        }
    }

    private void left() {
        if (keys != null) {
            site.getService(IContextService.class).deactivateContext(keys);
            keys = null;
            edits.keySet().forEach(id -> site.getActionBars().setGlobalActionHandler(id, null));
            site.getActionBars().updateActionBars();
        }
    }

    @Override
    public void inField(InPlaceField field) {
        history(field.undo(), field.redo());
    }

    @Override
    public void outOfField() {
        history(undo, redo);
    }

    private void history(IAction back, IAction again) {
        IActionBars bars = site.getActionBars();
        bars.setGlobalActionHandler(ActionFactory.UNDO.getId(), back);
        bars.setGlobalActionHandler(ActionFactory.REDO.getId(), again);
        bars.updateActionBars();
    }

    @Override
    public void tell(String text) {
        IStatusLineManager line = site.getActionBars().getStatusLineManager();
        line.setErrorMessage(null);
        line.setMessage(text);
    }

    @Override
    public void refuse(String text) {
        site.getActionBars().getStatusLineManager().setErrorMessage(text);
    }
}
