// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.diagram;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageGcDrawer;
import org.eclipse.swt.widgets.Display;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Viewport;

/**
 * Marks as an image on nothing, sharp at every scale of the display.
 *
 * @param typeface typeface of the display
 * @param theme    colours
 * @param marks    marks, within the image's size
 */
public record MarkImage(Typeface typeface, Theme theme, List<Mark> marks) implements ImageGcDrawer {
    public MarkImage {
        marks = List.copyOf(marks);
    }

    /** The image; whoever asks for it disposes of it. */
    public static Image of(Display display, List<Mark> marks, int sizePx) {
        return of(display, Theme.light(), marks, sizePx);
    }

    /** The image in the colours of a theme; whoever asks for it disposes of it. */
    public static Image of(Display display, Theme theme, List<Mark> marks, int sizePx) {
        return new Image(display, new MarkImage(Typeface.of(display), theme, marks), sizePx, sizePx);
    }

    @Override
    public void drawOn(GC gc, int width, int height) {
        try (SwtPainter painter = new SwtPainter(gc, theme, typeface, Viewport.of(width, height))) {
            painter.paint(List.of(new Group(null, null, Group.Kind.NODE, marks)), 0, 0);
        }
    }

    @Override
    public int getGcStyle() {
        return SWT.TRANSPARENT;
    }
}
