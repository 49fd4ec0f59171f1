// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.diagram.tool.EditRequest;
import org.loomwright.model.edits.WiringFragment;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Device;

/** Copies of wiring of the demo fleet, within an arrangement, between arrangements and between vehicles. */
class CopyingTest {
    @TempDir
    Path folder;

    private Board otter(String arrangement) {
        return new Board(folder, "otter", arrangement, View.PLAN);
    }

    @Test
    void aDuplicateLiesBesideItsOriginalWithANameOfItsOwn() {
        Board board = otter("mended");
        Device lamp = board.get(Device.class, "E24");
        Outcome outcome = board.run(new EditRequest.Duplicate(Set.of("E24")));
        Device copy = board.get(Device.class, outcome.selection().iterator().next());
        assertNotSame(lamp, copy);
        assertSame(lamp.getPart(), copy.getPart());
        assertSame(lamp.getPlace(), copy.getPlace());
        assertTrue(copy.getName().startsWith("E"), copy.getName());
        assertTrue(outcome.told().toString().contains("-E24 to -" + copy.getName()), outcome.told().toString());
    }

    @Test
    void cablesBetweenTheCopiedDevicesComeAlongAndOthersDoNot() {
        Board board = otter("mended");
        Set<String> chosen = Set.of("mended/X22", "M20", "E22");
        Outcome outcome = board.run(board.drawn().paste(board.drawn().clip(chosen), null));
        List<Cable> cables = outcome.selection().stream().filter(id -> board.get(org.eclipse.emf.ecore.EObject.class, id)
                instanceof Cable).map(id -> board.get(Cable.class, id)).toList();
        assertFalse(cables.isEmpty());
        Set<Device> copies = new java.util.LinkedHashSet<>();
        outcome.selection().forEach(id -> {
            if (board.get(org.eclipse.emf.ecore.EObject.class, id) instanceof Device device) {
                copies.add(device);
            }
        });
        assertEquals(3, copies.size());
        for (Cable cable : cables) {
            cable.getCores().forEach(core -> {
                assertTrue(copies.contains(core.getA().eContainer()), cable.getName());
                assertTrue(copies.contains(core.getB().eContainer()), cable.getName());
            });
        }
        Device box = copies.stream().filter(each -> each.getName().startsWith("X")).findFirst().orElseThrow();
        assertSame(board.arrangement(), box.eContainer());
        assertEquals(board.get(Device.class, "mended/X22").getWays().size(), box.getWays().size());
    }

    @Test
    void aPlaceThatIsSelectedTakesTheCopies() {
        Board board = otter("mended");
        WiringFragment clip = board.drawn().clip(Set.of("E24", "E23"));
        Outcome outcome = board.run(board.drawn().paste(clip, "cooker"));
        outcome.selection().forEach(id -> assertEquals("cooker", board.get(Device.class, id).getPlace().getName()));
        Outcome again = board.run(board.drawn().paste(clip, "pack"));
        assertEquals(2, again.selection().size());
        assertTrue(java.util.Collections.disjoint(outcome.selection(), again.selection()));
    }

    @Test
    void equipmentOfTheBaseVehicleIsNewWhereItIsCopied() {
        Board board = otter("mended");
        assertEquals(Boolean.TRUE, board.get(Device.class, "E1").getExisting());
        Outcome outcome = board.run(new EditRequest.Duplicate(Set.of("E1")));
        assertNull(board.get(Device.class, outcome.selection().iterator().next()).getExisting());
    }

    @Test
    void wiringGoesIntoAnotherArrangement() {
        WiringFragment clip = otter("mended").drawn().clip(Set.of("mended/X24"));
        Board found = otter("as-found");
        Outcome outcome = found.run(found.drawn().paste(clip, null));
        Device box = found.get(Device.class, outcome.selection().iterator().next());
        assertSame(found.arrangement(), box.eContainer());
        assertEquals("dash", box.getPlace().getName());
        assertSame(found.vehicle().eResource(), box.getPlace().eResource());
    }

    @Test
    void wiringGoesIntoAnotherVehicleAndWhatIsMissingThereIsTold() {
        Board otter = otter("mended");
        WiringFragment clip = otter.drawn().clip(Set.of("mended/X22", "M20", "E22"));
        Board heron = new Board(folder, "heron", "spread", View.PLAN);
        Outcome outcome = heron.run(heron.drawn().paste(clip, null));
        assertTrue(outcome.told().stream().anyMatch(line -> line.contains("sits at")), outcome.told().toString());
        for (String id : outcome.selection()) {
            if (heron.get(org.eclipse.emf.ecore.EObject.class, id) instanceof Device device) {
                assertNotNull(device.getPart());
                assertNotSame(otter.vehicle().getLibraries().get(0), device.getPart().eContainer(),
                        "the part of this vehicle's own libraries");
            }
        }
    }

    @Test
    void aCableGoesAlongWithItsEndsWhereTheyAreSeenOnly() {
        Board otter = otter("mended");
        String id = "mended/" + otter.arrangement().getCables().get(0).getName();
        WiringFragment clip = otter.drawn().clip(Set.of(id));
        otter.run(otter.drawn().paste(clip, null));
        Board heron = new Board(folder, "heron", "spread", View.PLAN);
        String message = assertThrows(IllegalArgumentException.class, () -> heron.drawn().paste(clip, null).run()).getMessage();
        assertTrue(message.contains("left out"), message);
    }

    @Test
    void laterChangesDoNotShowInTheClipboard() {
        Board board = otter("mended");
        WiringFragment clip = board.drawn().clip(Set.of("E24"));
        String before = clip.text();
        board.run(new EditRequest.Named("E24", "E99"));
        assertEquals(before, clip.text());
        board.run(new EditRequest.Cut(Set.of("E99")));
        Outcome outcome = board.run(board.drawn().paste(clip, null));
        assertEquals(Set.of("E24"), outcome.selection(), "its name is free again");
    }

    @Test
    void whatIsNoWiringCannotBeCopied() {
        Board board = otter("mended");
        String message = assertThrows(IllegalArgumentException.class, () -> board.drawn().clip(Set.of("dash"))).getMessage();
        assertTrue(message.contains("devices and cables"), message);
    }
}
