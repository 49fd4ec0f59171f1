// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.app;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.ide.IDE;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.VehicleEditor;

/**
 * A copy of a vehicle of the demo fleet, open in the editor and analysed; gone when closed.
 *
 * @param file   the copy
 * @param editor its editor
 */
public record OpenVehicle(IFile file, VehicleEditor editor) implements AutoCloseable {
    /** Opens a copy of a vehicle under a name of its own. */
    public static OpenVehicle copy(String vehicle, String name) throws CoreException, IOException {
        // the check of the copy by the builder is not waited for: the editor makes its own
        IProject fleet = Ui.project();
        IFile copy = fleet.getFile(name + ".vehicle");
        try (InputStream content = fleet.getFile(vehicle + ".vehicle").getContents(true)) {
            if (copy.exists()) {
                copy.delete(true, null);
            }
            copy.create(new ByteArrayInputStream(content.readAllBytes()), true, null);
        }
        OpenVehicle open = new OpenVehicle(copy, (VehicleEditor) IDE.openEditor(Ui.page(), copy));
        open.analysed();
        return open;
    }

    /** What is open. */
    public VehicleDocument document() {
        return editor.document();
    }

    /** Waits for the analysis of the model as it is now. */
    public void analysed() {
        Ui.await("an analysis", document()::fresh);
    }

    /** Waits until the drawing shows it. */
    public void drawn() {
        Ui.await("the drawing", () -> document().fresh() && editor.pane().idle());
    }

    /** Text of the file. */
    public String text() throws CoreException, IOException {
        try (InputStream content = file.getContents(true)) {
            return new String(content.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Shows a view. */
    @SuppressWarnings("unchecked")
    public static <T extends IViewPart> T view(String id) throws CoreException {
        return (T) Ui.page().showView(id, null, IWorkbenchPage.VIEW_VISIBLE);
    }

    @Override
    public void close() throws CoreException {
        Ui.page().closeEditor(editor, false);
        file.delete(true, null);
    }
}
