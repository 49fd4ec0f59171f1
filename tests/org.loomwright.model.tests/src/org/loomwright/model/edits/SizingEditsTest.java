// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.edits.SizingEdits.Fitted;
import org.loomwright.model.edits.SizingEdits.Section;

/** What sizing chose is written, and nothing else; what a person chose and the base vehicle stay. */
class SizingEditsTest {
    @TempDir
    Path folder;
    private OpenFleet fleet;

    @BeforeEach
    void open() {
        fleet = new OpenFleet(folder);
    }

    private int apply(boolean all, SizingEdits.Choice... choices) {
        return SizingEdits.apply(fleet.vehicle(), List.of(choices), all);
    }

    /** Lines that two texts do not share, those of the first with a minus. */
    private static List<String> difference(String before, String after) {
        List<String> old = before.lines().toList();
        List<String> now = after.lines().toList();
        assertEquals(old.size(), now.size());
        return IntStream.range(0, old.size()).filter(i -> !old.get(i).equals(now.get(i)))
                .mapToObj(i -> now.get(i).strip()).toList();
    }

    @Test
    void aSectionChangesItsOwnLineOnly() {
        String before = fleet.saved();
        fleet.edit(() -> assertEquals(1, apply(false, new Section("central/W2", 4.0))));
        assertEquals(List.of("<cables name=\"W2\" part=\"single\" sectionMm2=\"4\" sectionBy=\"sizing\">"),
                difference(before, fleet.saved()));
    }

    @Test
    void appliedTwiceNothingChanges() {
        apply(true, new Section("central/W2", 4.0), new Section("spread/W1", 2.5), new Fitted("central/F1/3", "blade-10"));
        String once = fleet.saved();
        assertEquals(0, apply(false, new Section("central/W2", 4.0), new Section("spread/W1", 2.5),
                new Fitted("central/F1/3", "base/blade-10")));
        assertEquals(once, fleet.saved());
    }

    @Test
    void anUnsetSectionMayBeChosenAndKeepsTheDigitsOfThePart() {
        assertEquals(1, apply(false, new Section("spread/W1", 2.5)));
        assertTrue(fleet.saved().contains("<cables name=\"W1\" part=\"single\" sectionMm2=\"2.5\" sectionBy=\"sizing\">"));
    }

    @Test
    void whatAPersonChoseIsWrittenOverOnlyWhenOpened() {
        fleet.refuses("central/F1/3 has a rating that a person chose", () -> apply(false, new Fitted("central/F1/3", "blade-10")));
        fleet.edit(() -> assertEquals(1, apply(true, new Fitted("central/F1/3", "blade-10"))));
        assertTrue(fleet.saved().contains("<ways name=\"3\" protector=\"blade-10\" ratingBy=\"sizing\"/>"), fleet.saved());
    }

    @Test
    void allOrNothingIsWritten() {
        fleet.refuses("W0 belongs to the base vehicle",
                () -> apply(true, new Section("central/W2", 4.0), new Section("W0", 2.5)));
        fleet.refuses("has no cable central/W99", () -> apply(true, new Section("central/W2", 4.0),
                new Section("central/W99", 2.5)));
        fleet.refuses("have no fuse or breaker blade-11", () -> apply(true, new Section("central/W2", 4.0),
                new Fitted("central/F1/3", "blade-11")));
        fleet.refuses("has no arrangement", () -> apply(true, new Section("nowhere/W2", 4.0)));
    }

    @Test
    void proposalsOfFindingsCountAsAPersonsChoice() {
        fleet.edit(() -> MendEdits.useSection(fleet.vehicle(), "central/W2", 4.0));
        assertTrue(fleet.saved().contains("sectionMm2=\"4\" sectionBy=\"person\""), fleet.saved());
        fleet.edit(() -> MendEdits.fitProtector(fleet.vehicle(), "central/F1/2", "blade-10"));
        assertTrue(fleet.saved().contains("<ways name=\"2\" protector=\"blade-10\" ratingBy=\"person\"/>"), fleet.saved());
        fleet.refuses("does not fit", () -> MendEdits.fitProtector(fleet.vehicle(), "central/F1/2", "strip-60"));
        fleet.edit(() -> MendEdits.addBond(fleet.vehicle(), "engine", "chassis", 16, 400));
        assertTrue(fleet.saved().contains("<bonds name=\"WE2\" a=\"XE2\" b=\"XE1\" part=\"braid\" lengthMm=\"400\"/>"),
                fleet.saved());
        fleet.refuses("no strap of 70 mm2", () -> MendEdits.addBond(fleet.vehicle(), "engine", "chassis", 70, 400));
        fleet.refuses("has no earth point", () -> MendEdits.addBond(fleet.vehicle(), "cab", "chassis", 16, 400));
    }

    @Test
    void aValueIsSetBesideThePartAndOnlyOnce() {
        fleet.edit(() -> MendEdits.setValue(fleet.vehicle(), "E1", "D", "watts", 21));
        fleet.edit(() -> MendEdits.setValue(fleet.vehicle(), "E1", "D", "watts", 22.5));
        assertEquals(1, fleet.device("E1").getSettings().stream().filter(each -> "watts".equals(each.getQuantity())).count());
        assertTrue(fleet.saved().contains("quantity=\"watts\" value=\"22.5\""), fleet.saved());
        fleet.refuses("has no device E77", () -> MendEdits.setValue(fleet.vehicle(), "E77", "D", "watts", 1));
    }
}
