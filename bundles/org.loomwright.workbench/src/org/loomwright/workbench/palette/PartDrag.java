// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.palette;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.loomwright.diagram.tool.PlaceTool;
import org.loomwright.diagram.tool.PointerEvent;
import org.loomwright.diagram.tool.SelectTool;
import org.loomwright.workbench.diagram.SceneCanvas;

/**
 * Takes hold of a part with the pointer. Drawn onto the drawing it is put where the button is let go; let go where it was it is
 * taken up, to be put where the drawing is clicked. The drawing's own tool judges all the way, so a drag from the palette shows
 * the same as any other gesture.
 */
final class PartDrag {
    private static final int STILL_PX = 5;
    private final Tree tree;
    private final SceneCanvas canvas;
    private PartOffer held;
    private Point from = new Point(0, 0);
    private boolean drawn;

    PartDrag(Tree tree, SceneCanvas canvas) {
        this.tree = tree;
        this.canvas = canvas;
        tree.addListener(SWT.MouseDown, this::pressed);
        tree.addListener(SWT.MouseMove, this::moved);
        tree.addListener(SWT.MouseUp, this::released);
    }

    private void pressed(Event event) {
        from = new Point(event.x, event.y);
        TreeItem item = event.button == 1 ? tree.getItem(from) : null;
        held = item != null && item.getData() instanceof PartOffer offer ? offer : null;
        drawn = false;
    }

    private void moved(Event event) {
        if (held == null) {
            return;
        }
        if (!drawn && Math.max(Math.abs(event.x - from.x), Math.abs(event.y - from.y)) > STILL_PX) {
            drawn = true;
            canvas.tool(PlaceTool.of(held.part()));
        }
        if (drawn) {
            pointer(over(event) ? PointerEvent.What.MOVE : PointerEvent.What.LEAVE, event);
        }
    }

    private void released(Event event) {
        if (held == null) {
            return;
        }
        if (!drawn) {
            canvas.tool(PlaceTool.of(held.part()));
            canvas.setFocus();
        } else if (over(event)) {
            canvas.setFocus();
            pointer(PointerEvent.What.PRESS, event);
            pointer(PointerEvent.What.RELEASE, event);
        } else {
            canvas.tool(new SelectTool());
        }
        held = null;
    }

    private Point there(Event event) {
        return canvas.toControl(tree.toDisplay(event.x, event.y));
    }

    private boolean over(Event event) {
        return canvas.getClientArea().contains(there(event));
    }

    private void pointer(PointerEvent.What what, Event event) {
        Point at = there(event);
        canvas.pointer(new PointerEvent(what, new org.loomwright.diagram.scene.Point(at.x, at.y),
                what == PointerEvent.What.MOVE ? 0 : 1, false, (event.stateMask & SWT.MOD1) != 0));
    }
}
