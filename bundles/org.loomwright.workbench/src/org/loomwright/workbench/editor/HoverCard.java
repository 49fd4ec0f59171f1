// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.Viewport;
import org.loomwright.workbench.diagram.SwtPainter;
import org.loomwright.workbench.diagram.Typeface;

/** Shows a card in a small window that takes no focus. */
final class HoverCard {
    private static final int APART_PX = 18;
    private final Control owner;
    private Shell shell;

    HoverCard(Control owner) {
        this.owner = owner;
        owner.addListener(SWT.Dispose, event -> hide());
        owner.addListener(SWT.MouseDown, event -> hide());
        owner.addListener(SWT.MouseVerticalWheel, event -> hide());
        owner.addListener(SWT.KeyDown, event -> hide());
    }

    /** Shows a card beside a spot of the owner, wholly on the screen and not over the spot. */
    void show(Scene card, Theme theme, int x, int y) {
        hide();
        shell = new Shell(owner.getShell(), SWT.TOOL | SWT.NO_TRIM | SWT.NO_FOCUS | SWT.ON_TOP);
        int wide = (int) card.widthPx();
        int high = (int) card.heightPx();
        shell.setSize(wide, high);
        shell.addListener(SWT.Paint, event -> {
            try (SwtPainter painter = new SwtPainter(event.gc, theme, Typeface.of(owner.getDisplay()), Viewport.of(wide, high))) {
                painter.paint(card);
            }
        });
        Point spot = owner.toDisplay(x, y);
        Rectangle screen = owner.getMonitor().getClientArea();
        int left = spot.x + APART_PX + wide <= screen.x + screen.width ? spot.x + APART_PX : spot.x - APART_PX - wide;
        int top = Math.max(screen.y, Math.min(spot.y + APART_PX, screen.y + screen.height - high));
        shell.setLocation(Math.max(screen.x, left), top);
        shell.setVisible(true);
    }

    /** Takes it away. */
    void hide() {
        if (shell != null) {
            shell.dispose();
            shell = null;
        }
    }

    /** True while it is seen. */
    boolean visible() {
        return shell != null;
    }
}
