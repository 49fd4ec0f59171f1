// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DisjointSetsTest {
    private final DisjointSets sets = new DisjointSets(5);

    @Test
    void joinsAreCarriedOn() {
        assertTrue(sets.join(0, 1));
        assertTrue(sets.join(2, 3));
        assertFalse(sets.joined(1, 2));
        assertTrue(sets.join(3, 1));
        assertFalse(sets.join(0, 2));
        assertTrue(sets.joined(0, 3));
        assertFalse(sets.joined(0, 4));
        assertEquals(sets.find(0), sets.find(3));
    }

    @Test
    void noneJoinsNothing() {
        assertFalse(sets.join(-1, 2));
        assertFalse(sets.join(2, -1));
    }

    @Test
    void aCopyGoesItsOwnWay() {
        sets.join(0, 1);
        DisjointSets copy = new DisjointSets(sets);
        copy.join(1, 2);
        assertTrue(copy.joined(0, 2));
        assertFalse(sets.joined(0, 2));
    }
}
