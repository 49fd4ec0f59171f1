// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.wizard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.Test;
import org.loomwright.model.files.FileKind;
import org.loomwright.workbench.app.Ids;
import org.loomwright.workbench.app.ThemeWatch;
import org.loomwright.workbench.app.Ui;
import org.loomwright.workbench.builder.FleetFiles;
import org.loomwright.workbench.builder.FleetNature;
import org.loomwright.workbench.editor.VehicleEditor;
import org.loomwright.workbench.navigator.ArrangementNode;
import org.loomwright.workbench.navigator.FleetTree;
import org.loomwright.workbench.welcome.FirstScreen;

class DemoFleetTest {
    @Test
    void bringsVehiclesLibrariesPracticeAndStockIntoAProjectThatIsChecked() throws CoreException {
        IProject fleet = Ui.fleet();
        assertTrue(fleet.hasNature(FleetNature.ID));
        assertEquals(List.of("beaver.vehicle", "heron.vehicle", "otter.vehicle"),
                FleetFiles.of(fleet, EnumSet.of(FileKind.VEHICLE)).stream().map(IFile::getName).toList());
        for (FileKind kind : FileKind.values()) {
            assertFalse(FleetFiles.of(fleet, EnumSet.of(kind)).isEmpty(), kind::word);
        }
    }

    @Test
    void theTreeShowsVehiclesFirstWithTheirArrangements() throws CoreException {
        IProject fleet = Ui.fleet();
        FleetTree tree = new FleetTree();
        Object[] files = tree.getChildren(fleet);
        assertEquals("vehicle", ((IFile) files[0]).getFileExtension());
        Object[] arrangements = tree.getChildren(fleet.getFile("heron.vehicle"));
        assertTrue(arrangements.length >= 2);
        assertEquals("spread", List.of(arrangements).stream().map(ArrangementNode.class::cast)
                .filter(ArrangementNode::adopted).map(ArrangementNode::name).findFirst().orElseThrow());
    }

    @Test
    void everyVehicleOpensInItsEditorInLightAndDark() throws CoreException {
        IProject fleet = Ui.fleet();
        for (IFile vehicle : FleetFiles.of(fleet, EnumSet.of(FileKind.VEHICLE))) {
            IEditorPart editor = IDE.openEditor(Ui.page(), vehicle);
            assertInstanceOf(VehicleEditor.class, editor);
            Ui.linger(1500);
            Ui.screenshot("workbench-" + vehicle.getName().replace(".vehicle", ""));
        }
        ThemeWatch.setDark(true);
        try {
            Ui.linger(500);
            Ui.screenshot("workbench-dark");
        } finally {
            ThemeWatch.setDark(false);
        }
        assertTrue(Ui.page().closeAllEditors(false));
    }

    @Test
    void librariesOpenToRead() throws CoreException {
        IFile library = FleetFiles.of(Ui.fleet(), EnumSet.of(FileKind.PARTS)).get(0);
        IEditorPart editor = IDE.openEditor(Ui.page(), library);
        assertEquals(Ids.FILE_EDITOR, editor.getSite().getId());
        Ui.screenshot("library");
        Ui.page().closeEditor(editor, false);
    }

    @Test
    void theFirstScreenShowsTheCautions() {
        FirstScreen.open(Ui.page());
        Ui.screenshot("first-screen");
        assertEquals(Ids.WELCOME, Ui.page().getActiveEditor().getSite().getId());
        Ui.page().closeAllEditors(false);
    }
}
