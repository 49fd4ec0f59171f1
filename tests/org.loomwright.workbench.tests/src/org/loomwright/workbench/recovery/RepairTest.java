// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.workbench.app.Ids;
import org.loomwright.workbench.app.Ui;
import org.loomwright.workbench.editor.VehicleEditor;
import org.loomwright.workbench.live.FleetCopy;

/** A file with faults opens for repair, in the running workbench. */
class RepairTest {
    @TempDir
    private Path folder;
    private Path file;
    private String sound;
    private String broken;

    @BeforeEach
    void breakFile() throws IOException {
        file = FleetCopy.vehicle(folder, "otter");
        sound = Files.readString(file);
        broken = sound.replaceFirst("sectionMm2=\"[0-9.]+\"", "sectionMm2=\"thick\"");
        Files.writeString(file, broken);
    }

    @AfterEach
    void close() {
        Ui.page().closeAllEditors(false);
    }

    private VehicleEditor opened() throws CoreException {
        return (VehicleEditor) IDE.openEditor(Ui.page(), file.toUri(), Ids.EDITOR, true);
    }

    private static VehicleEditor active() {
        IEditorPart editor = Ui.page().getActiveEditor();
        return editor instanceof VehicleEditor vehicle ? vehicle : null;
    }

    private static void whole() {
        Ui.await("the vehicle to open", () -> active() != null && active().pane() != null);
    }

    @Test
    void theFaultIsShownAtItsPlaceAndOnceMendedTheVehicleOpens() throws CoreException, IOException {
        VehicleEditor editor = opened();
        assertNull(editor.pane());
        RepairPane repair = editor.repair();
        assertNotNull(repair);
        assertEquals(broken, repair.text().getText());
        String line = repair.text().getLine(repair.text().getLineAtOffset(repair.text().getCaretOffset()));
        assertTrue(line.contains("\"thick\""), line);
        assertFalse(editor.isDirty());
        Ui.screenshot("file-for-repair");
        repair.text().setText(sound);
        assertTrue(editor.isDirty());
        assertEquals(broken, Files.readString(file), "typing writes nothing");
        editor.doSave(new NullProgressMonitor());
        whole();
        assertEquals(sound, Files.readString(file));
        assertFalse(active().isDirty());
    }

    @Test
    void aFileThatIsMendedByAnotherProgramOpensByItself() throws CoreException, IOException {
        opened();
        Files.writeString(file, sound);
        Ui.page().getWorkbenchWindow().getShell().notifyListeners(org.eclipse.swt.SWT.Activate, new org.eclipse.swt.widgets.Event());
        whole();
    }

    @Test
    void whatIsStillBrokenStaysOpenForRepair() throws CoreException, IOException {
        VehicleEditor editor = opened();
        String half = broken.replaceFirst("sectionMm2=\"thick\"", "sectionMm2=\"thicker\"");
        editor.repair().text().setText(half);
        editor.doSave(new NullProgressMonitor());
        Ui.await("the file to be read again", () -> active() != null && active() != editor && active().repair() != null);
        assertEquals(half, Files.readString(file));
        assertFalse(active().document().sound());
    }
}
