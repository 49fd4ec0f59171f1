// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.workbench.app.Ui;
import org.loomwright.workbench.editor.DisplayThread;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.live.FleetCopy;

/** What happens to work that is not saved, and to files that others change, without a workbench being killed for it. */
class VehicleGuardTest {
    @TempDir
    private Path folder;
    private Display display;
    private Shell shell;
    private Path file;
    private RecoveryFolder kept;
    private VehicleDocument document;
    private VehicleGuard guard;

    @BeforeEach
    void open() throws IOException {
        display = Display.getDefault();
        file = FleetCopy.vehicle(folder, "otter");
        kept = new RecoveryFolder(folder.resolve("recovery"));
        reopen();
    }

    private void reopen() {
        shell = new Shell(display);
        shell.setLayout(new FillLayout());
        shell.setSize(1100, 300);
        document = VehicleDocument.open(file, new DisplayThread(display));
        guard = new VehicleGuard(shell, document, file, null, kept);
        shell.open();
    }

    /** Ends as when the process is killed: nobody is asked, nothing is put away. */
    private void killed() {
        guard.watch().close();
        document.dispose();
        shell.dispose();
    }

    @AfterEach
    void close() {
        guard.close();
        document.dispose();
        shell.dispose();
    }

    private Cable cable() {
        return document.arrangement().getCables().get(0);
    }

    private void thicker(String sectionMm2) {
        document.run("Thicker", () -> cable().setSectionMm2(new BigDecimal(sectionMm2)));
    }

    private void copied() {
        Ui.await("a recovery copy", () -> !kept.of(file).isEmpty());
    }

    /** A copy of the work is there a few seconds after the change; it is asked for at once to save the time. */
    private void copyNow() {
        guard.keeper().supersede(folder.resolve("none"));
        copied();
    }

    private void changeOnDisk(String from, String to) throws IOException {
        String text = Files.readString(file);
        String changed = text.replaceFirst(from, to);
        assertNotEquals(text, changed);
        Files.writeString(file, changed);
        guard.watch().look();
    }

    @Test
    void aCopyComesByItselfAfterAChangeAndGoesWithUndo() throws IOException {
        assertEquals(List.of(), kept.all());
        thicker("95");
        copied();
        RecoveryCopy copy = kept.of(file).get(0).copy();
        assertArrayEquals(document.content(), copy.content());
        assertEquals(1, copy.changes());
        assertEquals("Thicker", copy.label());
        document.domain().getCommandStack().undo();
        Ui.await("the copy to go", () -> kept.all().isEmpty());
    }

    @Test
    void theCopyGoesWhenTheFileIsSavedOrClosed() throws IOException {
        thicker("95");
        copyNow();
        document.save();
        guard.saved();
        Ui.await("the copy to go", () -> kept.all().isEmpty());
        thicker("120");
        copyNow();
        guard.close();
        assertEquals(List.of(), kept.all());
    }

    @Test
    void workThatWasKeptIsOfferedInWordsAndRestoredAsOneStepThatCanBeUndone() throws IOException {
        byte[] saved = Files.readAllBytes(file);
        thicker("95");
        document.run("Longer", () -> cable().setLengthMm(new BigDecimal("4321")));
        byte[] work = document.content();
        copyNow();
        String name = cable().getName();
        killed();
        reopen();
        assertTrue(guard.bar().text().contains("2 changes, the last at " + VehicleGuard.time(Instant.now())), guard.bar().text());
        assertTrue(guard.bar().text().contains("Longer"), guard.bar().text());
        assertTrue(guard.bar().text().contains("changed " + name), guard.bar().text());
        assertFalse(document.dirty());
        guard.bar().answer(Messages.Recovery_restore);
        assertTrue(document.dirty());
        assertArrayEquals(work, document.content());
        assertArrayEquals(saved, Files.readAllBytes(file), "nothing is written before it is saved");
        assertEquals("", guard.bar().text());
        Ui.await("a copy of its own in place of the old one", () -> kept.of(file).size() == 1
                && kept.of(file).get(0).where().equals(guard.keeper().place()));
        document.domain().getCommandStack().undo();
        assertArrayEquals(saved, document.content());
        assertFalse(document.dirty());
        document.domain().getCommandStack().redo();
        assertArrayEquals(work, document.content());
        Ui.await("an analysis of it", () -> document.fresh() && document.analysis().worked());
    }

    @Test
    void workThatIsDiscardedIsGoneAndTheFileStays() throws IOException {
        byte[] saved = Files.readAllBytes(file);
        thicker("95");
        copyNow();
        killed();
        reopen();
        guard.bar().answer(Messages.Recovery_discard);
        assertEquals(List.of(), kept.all());
        assertArrayEquals(saved, document.content());
        killed();
        reopen();
        assertEquals("", guard.bar().text());
    }

    @Test
    void workThatNobodyDecidedOnIsStillThereAfterNewWork() throws IOException {
        thicker("95");
        byte[] first = document.content();
        copyNow();
        killed();
        reopen();
        thicker("120");
        guard.keeper().supersede(folder.resolve("none"));
        Ui.await("both copies", () -> kept.of(file).size() == 2);
        guard.close();
        assertArrayEquals(first, kept.of(file).get(0).copy().content());
    }

    @Test
    void itIsToldThatTheFileChangedAfterTheWorkWasBegun() throws IOException {
        thicker("95");
        copyNow();
        killed();
        Files.writeString(file, Files.readString(file) + "\n");
        reopen();
        assertTrue(guard.bar().text().contains("The file itself was changed after that work was begun"), guard.bar().text());
    }

    @Test
    void aChangeOnTheDiskIsToldAndReloaded() throws IOException {
        changeOnDisk("sectionMm2=\"[0-9.]+\"", "sectionMm2=\"63\"");
        assertTrue(guard.bar().text().contains("was changed on the disk by another program: changed "), guard.bar().text());
        byte[] before = document.content();
        guard.bar().answer(Messages.Disk_reload);
        assertArrayEquals(Files.readAllBytes(file), document.content());
        assertFalse(document.dirty());
        document.domain().getCommandStack().undo();
        assertArrayEquals(before, document.content());
        assertTrue(document.dirty(), "what was here before is not on the disk any more");
    }

    @Test
    void bothSidesAreToldWhenThereIsUnsavedWorkToo() throws IOException {
        thicker("95");
        byte[] mine = document.content();
        changeOnDisk("label=\"[^\"]+\"", "label=\"Otter renamed\"");
        String told = guard.bar().text();
        assertTrue(told.contains("by another program: changed "), told);
        assertTrue(told.contains("Not saved here: one change, the last at "), told);
        guard.bar().answer(Messages.Disk_reloadLosing);
        assertArrayEquals(Files.readAllBytes(file), document.content());
        document.domain().getCommandStack().undo();
        assertArrayEquals(mine, document.content());
    }

    @Test
    void myOwnCanBeKeptAndSavedOverTheOther() throws IOException {
        byte[] mine = document.content();
        changeOnDisk("sectionMm2=\"[0-9.]+\"", "sectionMm2=\"63\"");
        guard.bar().answer(Messages.Disk_keep);
        assertTrue(document.dirty());
        guard.watch().look();
        assertEquals("", guard.bar().text(), "it is asked once");
        document.save();
        guard.saved();
        assertArrayEquals(mine, Files.readAllBytes(file));
        assertFalse(document.dirty());
    }

    @Test
    void aFileThatIsBrokenOrDeletedOutsideLeavesWhatIsOpenWhole() throws IOException {
        byte[] mine = document.content();
        changeOnDisk("sectionMm2=\"[0-9.]+\"", "sectionMm2=\"thick\"");
        assertTrue(guard.bar().text().contains("cannot be read any more: line "), guard.bar().text());
        guard.bar().answer(Messages.Disk_keep);
        Files.delete(file);
        guard.watch().look();
        assertTrue(guard.bar().text().contains("is no longer on the disk"), guard.bar().text());
        guard.bar().answer(Messages.Disk_keep);
        document.save();
        assertArrayEquals(mine, Files.readAllBytes(file));
    }

    @Test
    void savingHereIsNotTakenForAChangeByAnother() throws IOException {
        thicker("95");
        document.save();
        guard.saved();
        guard.watch().look();
        assertEquals("", guard.bar().text());
    }
}
