// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.Viewport;
import org.loomwright.workbench.diagram.SwtPainter;
import org.loomwright.workbench.diagram.Typeface;

/** Shows a card in a small window that takes no focus. It stays while the pointer is on it; its lines can be clicked. */
final class HoverCard {
    private static final int APART_PX = 18;
    /** Time to go from the element to its card, ms. */
    private static final int GRACE_MS = 400;
    private final Control owner;
    private Consumer<String> links = link -> { };
    private Shell shell;

    HoverCard(Control owner) {
        this.owner = owner;
        owner.addListener(SWT.Dispose, event -> close());
        owner.addListener(SWT.MouseDown, event -> close());
        owner.addListener(SWT.MouseVerticalWheel, event -> close());
        owner.addListener(SWT.KeyDown, event -> close());
    }

    /** Takes the link of a line that was clicked: what the scene names as its element. */
    void onLink(Consumer<String> follow) {
        links = follow;
    }

    /** Shows a card beside a spot of the owner, wholly on the screen and not over the spot. */
    void show(Scene card, Theme theme, int x, int y) {
        close();
        shell = new Shell(owner.getShell(), SWT.TOOL | SWT.NO_TRIM | SWT.NO_FOCUS | SWT.ON_TOP);
        int wide = (int) card.widthPx();
        int high = (int) card.heightPx();
        shell.setSize(wide, high);
        Viewport whole = Viewport.of(wide, high);
        shell.addListener(SWT.Paint, event -> {
            try (SwtPainter painter = new SwtPainter(event.gc, theme, Typeface.of(owner.getDisplay()), whole)) {
                painter.paint(card);
            }
        });
        HitIndex hits = HitIndex.of(card, Typeface.of(owner.getDisplay()).type());
        Shell shown = shell;
        shown.addListener(SWT.MouseMove, event -> shown.setCursor(link(hits, whole, event.x, event.y) == null ? null
                : owner.getDisplay().getSystemCursor(SWT.CURSOR_HAND)));
        shown.addListener(SWT.MouseDown, event -> click(link(hits, whole, event.x, event.y)));
        shown.addListener(SWT.MouseExit, event -> hide());
        Point spot = owner.toDisplay(x, y);
        Rectangle screen = owner.getMonitor().getClientArea();
        int left = spot.x + APART_PX + wide <= screen.x + screen.width ? spot.x + APART_PX : spot.x - APART_PX - wide;
        int top = Math.max(screen.y, Math.min(spot.y + APART_PX, screen.y + screen.height - high));
        shell.setLocation(Math.max(screen.x, left), top);
        shell.setVisible(true);
    }

    private static String link(HitIndex hits, Viewport whole, int x, int y) {
        HitIndex.Hit hit = hits.at(new org.loomwright.diagram.scene.Point(x, y), 0, whole);
        return hit == null ? null : hit.element();
    }

    private void click(String link) {
        if (link != null) {
            close();
            links.accept(link);
        }
    }

    /** Takes it away soon, unless the pointer goes to it. */
    void hide() {
        Shell leaving = shell;
        if (leaving != null) {
            owner.getDisplay().timerExec(GRACE_MS, () -> {
                if (leaving == shell && !leaving.isDisposed()
                        && !leaving.getBounds().contains(leaving.getDisplay().getCursorLocation())) {
                    close();
                }
            });
        }
    }

    /** Takes it away. */
    void close() {
        if (shell != null) {
            shell.dispose();
            shell = null;
        }
    }

    /** The window of the card; null for none. */
    Shell window() {
        return shell;
    }
}
