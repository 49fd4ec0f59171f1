// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

/**
 * The part of a sheet that a window shows. Immutable.
 *
 * @param scale    screen px for each px of the sheet, {@link #LEAST} to {@link #MOST}
 * @param x        where the sheet's left side lies in the window, screen px
 * @param y        where its upper side lies
 * @param widthPx  width of the window, screen px
 * @param heightPx height of the window, screen px
 */
public record Viewport(double scale, double x, double y, double widthPx, double heightPx) {
    /** Smallest scale. */
    public static final double LEAST = 0.05;
    /** Largest scale. */
    public static final double MOST = 16;
    private static final double MARGIN_PX = 16;

    public Viewport {
        scale = StrictMath.min(MOST, StrictMath.max(LEAST, scale));
    }

    /** A window at 100 % with the sheet in its corner. */
    public static Viewport of(double widthPx, double heightPx) {
        return new Viewport(1, 0, 0, widthPx, heightPx);
    }

    /** From the sheet to the window. */
    public Point toScreen(Point sheet) {
        return new Point(sheet.x() * scale + x, sheet.y() * scale + y);
    }

    /** From the window to the sheet. */
    public Point toSheet(Point screen) {
        return new Point((screen.x() - x) / scale, (screen.y() - y) / scale);
    }

    /** From the sheet to the window. */
    public Bounds toScreen(Bounds sheet) {
        return Bounds.between(toScreen(new Point(sheet.left(), sheet.top())), toScreen(new Point(sheet.right(), sheet.bottom())));
    }

    /** The part of the sheet's plane that is seen. */
    public Bounds seen() {
        return Bounds.between(toSheet(new Point(0, 0)), toSheet(new Point(widthPx, heightPx)));
    }

    /** Larger by a factor, with the point of the sheet under the pointer staying there. */
    public Viewport zoomed(double factor, Point pointer) {
        double to = StrictMath.min(MOST, StrictMath.max(LEAST, scale * factor));
        Point fixed = toSheet(pointer);
        return new Viewport(to, pointer.x() - fixed.x() * to, pointer.y() - fixed.y() * to, widthPx, heightPx);
    }

    /** At a scale, with the middle of the window staying there. */
    public Viewport at(double newScale) {
        return zoomed(newScale / scale, new Point(widthPx / 2, heightPx / 2));
    }

    /** Moved by screen px. */
    public Viewport panned(double dx, double dy) {
        return new Viewport(scale, x + dx, y + dy, widthPx, heightPx);
    }

    /** In a window of another size; what lay in its middle stays there. */
    public Viewport resized(double newWidthPx, double newHeightPx) {
        return new Viewport(scale, x + (newWidthPx - widthPx) / 2, y + (newHeightPx - heightPx) / 2, newWidthPx, newHeightPx);
    }

    /** So that a part of the sheet fills the window, in the middle, with a margin; not beyond the largest scale given. */
    public Viewport fitting(Bounds part, double largest) {
        double room = StrictMath.min((widthPx - 2 * MARGIN_PX) / StrictMath.max(1, part.width()),
                (heightPx - 2 * MARGIN_PX) / StrictMath.max(1, part.height()));
        double to = StrictMath.min(MOST, StrictMath.max(LEAST, StrictMath.min(largest, room)));
        Point centre = part.centre();
        return new Viewport(to, widthPx / 2 - centre.x() * to, heightPx / 2 - centre.y() * to, widthPx, heightPx);
    }

    /** So that the whole sheet is seen. */
    public Viewport fitting(Scene scene) {
        return fitting(new Bounds(0, 0, scene.widthPx(), scene.heightPx()), MOST);
    }

    /** Panned no more than needed for a part of the sheet to be seen. */
    public Viewport showing(Bounds part) {
        Bounds there = toScreen(part);
        return panned(shift(there.left(), there.right(), widthPx), shift(there.top(), there.bottom(), heightPx));
    }

    private static double shift(double from, double to, double room) {
        if (to - from > room - 2 * MARGIN_PX || from < MARGIN_PX) {
            return MARGIN_PX - from;
        }
        return to > room - MARGIN_PX ? room - MARGIN_PX - to : 0;
    }
}
