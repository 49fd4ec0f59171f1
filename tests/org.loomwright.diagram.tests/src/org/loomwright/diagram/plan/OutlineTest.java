// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class OutlineTest {
    private static final Outline CORNER = Outline.read("0,0 0,100 100,100 100,50 50,50 50,0");

    @Test
    void readsCornersAndTheirArea() {
        assertEquals(6, CORNER.spots().size());
        assertEquals(7500, CORNER.area(), 1e-9);
        assertEquals(100, CORNER.front());
        assertEquals(100, CORNER.high());
    }

    @Test
    void knowsWhatLiesInsideAConcaveOutline() {
        assertTrue(CORNER.holds(new Spot(25, 25)));
        assertTrue(CORNER.holds(new Spot(75, 75)));
        assertFalse(CORNER.holds(new Spot(75, 25)));
    }

    @Test
    void tellsTheShareThatAnotherCovers() {
        Outline left = Outline.rectangle(0, 0, 50, 100);
        assertEquals(1, left.coveredBy(CORNER), 1e-9);
        assertEquals(2.0 / 3, CORNER.coveredBy(left), 0.03);
        assertEquals(0, left.coveredBy(Outline.rectangle(60, 0, 90, 100)), 1e-9);
    }

    @Test
    void takesWhatIsNoOutlineForNone() {
        assertNull(Outline.read(null));
        assertNull(Outline.read("  "));
        assertNull(Outline.read("0,0 1,1"));
        assertNull(Outline.read("0,0 1,x 2,2"));
        assertNull(Outline.read("0,0,0 1,1 2,2"));
    }
}
