// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ViewportTest {
    private static void near(Point a, Point b) {
        assertTrue(a.distance(b) < 1e-9, a + " " + b);
    }

    @Test
    void whatLiesUnderThePointerStaysThereWhileZooming() {
        Viewport viewport = new Viewport(0.7, 30, -20, 800, 600);
        Point pointer = new Point(311, 177);
        Point under = viewport.toSheet(pointer);
        near(under, viewport.zoomed(1.25, pointer).toSheet(pointer));
        near(under, viewport.zoomed(1e9, pointer).toSheet(pointer));
    }

    @Test
    void theScaleKeepsItsLimits() {
        Viewport viewport = Viewport.of(800, 600);
        assertEquals(Viewport.MOST, viewport.zoomed(1e9, new Point(0, 0)).scale());
        assertEquals(Viewport.LEAST, viewport.zoomed(1e-9, new Point(0, 0)).scale());
    }

    @Test
    void screenAndSheetAreEachOthersInverse() {
        Viewport viewport = new Viewport(1.7, 30, -20, 800, 600);
        near(new Point(12, 34), viewport.toSheet(viewport.toScreen(new Point(12, 34))));
    }

    @Test
    void fittingShowsAllInTheMiddle() {
        Viewport viewport = Viewport.of(800, 600).fitting(new Scene("t", 1123, 794, java.util.List.of()));
        Bounds there = viewport.toScreen(new Bounds(0, 0, 1123, 794));
        assertTrue(new Bounds(0, 0, 800, 600).holds(there));
        near(new Point(400, 300), there.centre());
        assertEquals(1, Viewport.of(800, 600).fitting(new Bounds(10, 10, 20, 20), 1).scale());
    }

    @Test
    void showingPansNoMoreThanNeeded() {
        Viewport viewport = Viewport.of(800, 600);
        assertEquals(viewport, viewport.showing(new Bounds(100, 100, 200, 200)));
        assertTrue(viewport.showing(new Bounds(1000, 100, 1100, 200)).seen().holds(new Bounds(1000, 100, 1100, 200)));
        assertEquals(0, viewport.showing(new Bounds(1000, 100, 1100, 200)).y());
    }

    @Test
    void theMiddleStaysWhenTheWindowGrows() {
        Viewport viewport = new Viewport(2, 5, 6, 800, 600);
        near(viewport.toSheet(new Point(400, 300)), viewport.resized(1000, 500).toSheet(new Point(500, 250)));
    }
}
