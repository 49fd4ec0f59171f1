// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.workbench.live.FleetCopy;
import org.loomwright.workbench.live.QueueThread;
import org.loomwright.workbench.markers.FindingKey;

class VehicleDocumentTest {
    @TempDir
    private Path folder;
    private final QueueThread owner = new QueueThread();
    private VehicleDocument document;

    private VehicleDocument open(String name) throws IOException {
        document = VehicleDocument.open(FleetCopy.vehicle(folder, name), owner);
        return document;
    }

    @AfterEach
    void close() {
        document.dispose();
    }

    private void analysed() throws InterruptedException {
        owner.elapse();
        assertTrue(owner.until(() -> document.fresh()));
        assertTrue(document.analysis().worked());
    }

    @Test
    void anEditIsUndoneAndRedoneAndLeavesTheFilesBytes() throws Exception {
        open("otter");
        byte[] before = document.file().resource().toBytes();
        Cable cable = document.arrangement().getCables().get(0);
        document.run("thicker", () -> cable.setSectionMm2(new BigDecimal("95")));
        assertTrue(document.dirty());
        assertFalse(java.util.Arrays.equals(before, document.file().resource().toBytes()));
        document.domain().getCommandStack().undo();
        assertFalse(document.dirty());
        assertArrayEquals(before, document.file().resource().toBytes());
        document.domain().getCommandStack().redo();
        assertEquals(new BigDecimal("95"), cable.getSectionMm2());
    }

    @Test
    void anEditThatFailsHalfwayLeavesTheModelAsItWas() throws Exception {
        open("otter");
        byte[] before = document.file().resource().toBytes();
        Cable cable = document.arrangement().getCables().get(0);
        assertThrows(IllegalStateException.class, () -> document.run("fails", () -> {
            cable.setSectionMm2(new BigDecimal("95"));
            throw new IllegalStateException("halfway");
        }));
        assertFalse(document.dirty());
        assertFalse(document.domain().getCommandStack().canUndo());
        assertArrayEquals(before, document.file().resource().toBytes());
    }

    @Test
    void aFindingAppearsWithAnEditAndVanishesWithItsMend() throws Exception {
        open("heron");
        analysed();
        long errors = FindingCount.of(document.findings(), null).errors();
        Cable cable = document.arrangement().getCables().stream()
                .filter(each -> each.getSectionMm2() != null && each.getSectionMm2().doubleValue() >= 10).findFirst()
                .orElseThrow();
        document.run("thinner", () -> cable.setSectionMm2(new BigDecimal("0.75")));
        analysed();
        assertTrue(FindingCount.of(document.findings(), null).errors() > errors);
        String arrangement = document.arrangement().getName();
        Finding told = document.findings().stream().filter(each -> each.accepted() == null
                && MendFixes.applicable(each).stream().anyMatch(mend -> mend.changes().get(0) instanceof Mend.UseSection use
                        && use.cable().endsWith("/" + cable.getName()))).findFirst().orElseThrow();
        String mend = MendFixes.applicable(told).stream().filter(each -> each.changes().get(0) instanceof Mend.UseSection)
                .findFirst().orElseThrow().text();
        assertTrue(MendFixes.of(document).mend(FindingKey.of(arrangement, told), mend));
        assertTrue(cable.getSectionMm2().doubleValue() > 0.75);
        analysed();
        assertTrue(document.findings().stream().noneMatch(each -> FindingKey.of(arrangement, each)
                .equals(FindingKey.of(arrangement, told)) && each.accepted() == null));
        document.domain().getCommandStack().undo();
        assertEquals(new BigDecimal("0.75"), cable.getSectionMm2());
    }

    @Test
    void anAcceptedFindingKeepsItsReasonAndCanBeTakenBack() throws Exception {
        open("heron");
        document.run("thinner", () -> document.arrangement().getCables().stream()
                .filter(each -> each.getSectionMm2() != null && each.getSectionMm2().doubleValue() >= 10).findFirst()
                .orElseThrow().setSectionMm2(new BigDecimal("0.75")));
        analysed();
        Finding standing = document.analysis().result().findings().stream()
                .filter(each -> each.accepted() == null).findFirst().orElseThrow();
        int waivers = document.vehicle().getWaivers().size();
        MendFixes.of(document).accept(standing, "seen on the vehicle");
        analysed();
        Finding accepted = document.findings().stream().filter(each -> each.rule().equals(standing.rule())
                && each.element().equals(standing.element())).findFirst().orElseThrow();
        assertNotNull(accepted.accepted());
        assertTrue(accepted.accepted().contains("seen on the vehicle"));
        document.domain().getCommandStack().undo();
        assertEquals(waivers, document.vehicle().getWaivers().size());
    }

    @Test
    void savingWritesTheChangeOnly() throws Exception {
        open("otter");
        Path file = folder.resolve("otter.vehicle");
        String before = Files.readString(file);
        Cable cable = document.arrangement().getCables().get(0);
        document.run("other", () -> cable.setSectionMm2(new BigDecimal("95")));
        document.save();
        assertFalse(document.dirty());
        String after = Files.readString(file);
        long different = after.lines().filter(line -> !before.contains(line)).count();
        assertEquals(1, different);
        document.domain().getCommandStack().undo();
        assertTrue(document.dirty());
        document.save();
        assertEquals(before, Files.readString(file));
    }

    @Test
    void aFileWithFaultsIsNotShownAndNotSaved() throws Exception {
        Path file = FleetCopy.vehicle(folder, "otter");
        String broken = Files.readString(file).replaceFirst("sectionMm2=\"[0-9.]+\"", "sectionMm2=\"thick\"");
        Files.writeString(file, broken);
        document = VehicleDocument.open(file, owner);
        assertFalse(document.sound());
        assertFalse(document.file().faults().isEmpty());
        assertThrows(IOException.class, () -> document.save());
        assertEquals(broken, Files.readString(file));
    }
}
