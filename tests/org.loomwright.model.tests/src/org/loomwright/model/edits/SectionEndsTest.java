// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.parts.EndKind;
import org.loomwright.model.parts.EndPart;
import org.loomwright.model.parts.PartsFactory;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;

/** Lugs and other ends follow the section; a second cable is laid beside the first with everything that belongs to it. */
class SectionEndsTest {
    @TempDir
    Path folder;
    private OpenFleet fleet;
    private Core core;

    @BeforeEach
    void open() {
        fleet = new OpenFleet(folder);
        end("lug-8-2.5", EndKind.LUG, "1.5", "2.5", "8");
        end("lug-8-10", EndKind.LUG, "4", "10", "8");
        end("lug-8-6", EndKind.LUG, "2.5", "6", "8");
        end("lug-6-6", EndKind.LUG, "2.5", "6", "6");
        end("tab-6", EndKind.TAB, "2.5", "6", null);
        core = fleet.cable("central/W2").getCores().get(0);
        core.setAEnd(named("lug-8-2.5"));
    }

    private void end(String name, EndKind kind, String from, String to, String stud) {
        EndPart end = PartsFactory.eINSTANCE.createEndPart();
        end.setName(name);
        end.setKind(kind);
        end.setSectionMinMm2(new BigDecimal(from));
        end.setSectionMaxMm2(new BigDecimal(to));
        end.setStudMm(stud == null ? null : new BigDecimal(stud));
        fleet.library().getEnds().add(end);
    }

    private EndPart named(String name) {
        return fleet.library().getEnds().stream().filter(end -> name.equals(end.getName())).findFirst().orElseThrow();
    }

    @Test
    void sizingGivesTheSmallestLugOfTheSameStudThatTakesTheSection() {
        assertEquals(1, SizingEdits.apply(fleet.vehicle(), List.of(new SizingEdits.Section("central/W2", 4)), true));
        assertSame(named("lug-8-6"), core.getAEnd());
        assertEquals(0, SizingEdits.apply(fleet.vehicle(), List.of(new SizingEdits.Section("central/W2", 4)), true));
    }

    @Test
    void aSizedCableWhoseLugNeverFittedGetsOneThatDoes() {
        SizingEdits.apply(fleet.vehicle(), List.of(new SizingEdits.Section("central/W2", 4)), true);
        core.setAEnd(named("lug-8-2.5"));
        assertEquals(1, SizingEdits.apply(fleet.vehicle(), List.of(new SizingEdits.Section("central/W2", 4)), true));
        assertSame(named("lug-8-6"), core.getAEnd());
    }

    @Test
    void aSectionProposedByAFindingTakesItsLugsAlong() {
        MendEdits.useSection(fleet.vehicle(), "central/W2", 4);
        assertSame(named("lug-8-6"), core.getAEnd());
        MendEdits.useSection(fleet.vehicle(), "central/W2", 2.5);
        // 2.5 mm2 still suits a lug made for 2.5 to 6 mm2
        assertSame(named("lug-8-6"), core.getAEnd());
    }

    @Test
    void whatTheLibraryDoesNotHaveStays() {
        SectionEnds ends = new SectionEnds(fleet.vehicle());
        assertSame(named("lug-6-6"), ends.of(named("lug-6-6"), new BigDecimal("16")));
        assertSame(named("tab-6"), ends.of(named("tab-6"), new BigDecimal("1.5")));
        assertSame(named("lug-8-10"), ends.of(named("lug-8-2.5"), new BigDecimal("10")));
    }

    @Test
    void aSecondCableLiesBesideTheFirstAndSharesItsCurrent() {
        core.setAEnd(null);
        fleet.edit(() -> MendEdits.addParallel(fleet.vehicle(), "central/W2"));
        List<Cable> cables = fleet.arrangement("central").getCables();
        Cable first = fleet.cable("central/W2");
        Cable second = cables.get(cables.indexOf(first) + 1);
        assertFalse(fleet.vehicle().getCables().stream().anyMatch(each -> each.getName().equals(second.getName())));
        assertSame(first.getPart(), second.getPart());
        assertEquals(first.getPath(), second.getPath());
        for (int c = 0; c < first.getCores().size(); c++) {
            assertSame(first.getCores().get(c).getA(), second.getCores().get(c).getA());
            assertSame(first.getCores().get(c).getB(), second.getCores().get(c).getB());
            assertEquals("W2", second.getCores().get(c).getParallelGroup());
            assertEquals("W2", first.getCores().get(c).getParallelGroup());
        }
        fleet.edit(() -> MendEdits.addParallel(fleet.vehicle(), "central/W2"));
        assertTrue(cables.stream().filter(each -> each.getCores().stream()
                .anyMatch(one -> "W2".equals(one.getParallelGroup()))).count() == 3);
    }

    @Test
    void wiringOfTheBaseVehicleIsNotDoubled() {
        fleet.refuses("belongs to the base vehicle", () -> MendEdits.addParallel(fleet.vehicle(), "W0"));
        fleet.refuses("has no cable central/W99", () -> MendEdits.addParallel(fleet.vehicle(), "central/W99"));
    }
}
