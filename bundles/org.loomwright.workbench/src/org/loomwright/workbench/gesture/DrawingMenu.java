// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.workbench.diagram.SceneCanvas;

/**
 * The menu of a drawing: the same commands as in the menu bar. Opened by the keyboard it is beside what is selected.
 */
public final class DrawingMenu {
    private DrawingMenu() {
    }

    /** Gives a canvas its menu. */
    public static void on(SceneCanvas canvas, IEditorSite site) {
        MenuManager menu = new MenuManager("", DrawingSite.CONTEXT);
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(shown -> shown.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS)));
        canvas.setMenu(menu.createContextMenu(canvas));
        canvas.addListener(SWT.Dispose, event -> menu.dispose());
        canvas.addListener(SWT.MenuDetect, event -> beside(canvas, event));
        site.registerContextMenu(DrawingSite.CONTEXT, menu, site.getSelectionProvider(), false);
    }

    private static void beside(SceneCanvas canvas, Event event) {
        Bounds room = event.detail == SWT.MENU_KEYBOARD ? canvas.hits().bounds(canvas.selection()) : null;
        if (room != null) {
            Bounds seen = canvas.viewport().toScreen(room);
            Point at = canvas.toDisplay((int) seen.right(), (int) seen.bottom());
            event.x = at.x;
            event.y = at.y;
        }
    }
}
