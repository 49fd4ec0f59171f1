// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.symbol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.CableTone;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.model.parts.DeviceKind;

class SymbolsTest {

    @ParameterizedTest
    @EnumSource(SymbolKind.class)
    void everySymbolHasMarksAndPortsWithinItsRoom(SymbolKind kind) {
        Symbol symbol = Symbols.of(kind, Role.INK);
        assertFalse(symbol.marks().isEmpty());
        assertFalse(symbol.ports().isEmpty());
        Bounds room = symbol.bounds();
        assertTrue(room.width() <= 40 && room.height() <= 50, room.toString());
        symbol.ports().forEach(port -> assertTrue(room.grown(1).holds(port.at()), port + " of " + room));
    }

    @ParameterizedTest
    @EnumSource(DeviceKind.class)
    void everyKindOfDeviceHasASymbol(DeviceKind kind) {
        assertFalse(Symbols.of(DeviceSymbols.of(kind), Role.INK3).marks().isEmpty());
    }

    @Test
    void openAndClosedContactsDiffer() {
        assertFalse(Symbols.of(SymbolKind.CONTACT_OPEN, Role.INK).marks()
                .equals(Symbols.of(SymbolKind.CONTACT_CLOSED, Role.INK).marks()));
    }

    @Test
    void scalesAroundItsCentreAndKeepsTextLegible() {
        Symbol motor = Symbols.of(SymbolKind.MOTOR, Role.INK);
        List<Mark> half = motor.at(100, 50, 0.5);
        Mark.Disc disc = (Mark.Disc) half.get(0);
        assertEquals(7, disc.radiusPx(), 1e-9);
        assertEquals(100, disc.centre().x(), 1e-9);
        half.stream().filter(Mark.Text.class::isInstance).map(Mark.Text.class::cast)
                .forEach(text -> assertTrue(text.sizePx() >= 12));
    }

    @ParameterizedTest
    @EnumSource(Badge.class)
    void everyBadgeHasAShapeOfItsOwn(Badge badge) {
        for (Badge other : Badge.values()) {
            assertEquals(badge == other, badge.marks(0, 0, 16).equals(other.marks(0, 0, 16)));
        }
    }

    @Test
    void swatchShowsEachColourInABand() {
        List<Mark> marks = Swatch.marks(List.of("RD", "BK"), 10, 20);
        assertEquals(new CableTone("RD"), ((Mark.Area) marks.get(0)).fill().tone());
        assertEquals(new CableTone("BK"), ((Mark.Area) marks.get(1)).fill().tone());
        assertEquals(List.of(), Swatch.marks(List.of(), 0, 0));
    }

    @Test
    void weightFollowsTheSection() {
        assertEquals(LineWeight.FINE, LineWeight.of((BigDecimal) null));
        assertEquals(LineWeight.FINE, LineWeight.of(new BigDecimal("1")));
        assertEquals(LineWeight.LIGHT, LineWeight.of(new BigDecimal("1.5")));
        assertEquals(LineWeight.LIGHT, LineWeight.of(new BigDecimal("2.5")));
        assertEquals(LineWeight.MEDIUM, LineWeight.of(new BigDecimal("6")));
        assertEquals(LineWeight.HEAVY, LineWeight.of(new BigDecimal("10")));
        assertEquals(LineWeight.HEAVY, LineWeight.of(new BigDecimal("16")));
        assertEquals(LineWeight.THICK, LineWeight.of(new BigDecimal("25")));
    }
}
