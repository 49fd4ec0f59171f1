// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.ide.IDE;
import org.loomwright.workbench.app.Ui;
import org.loomwright.workbench.editor.DrawingKind;
import org.loomwright.workbench.editor.VehicleEditor;

/**
 * A copy of the fixture vehicle, open in the running workbench with a robot at it. A gesture is proved by {@link #proves}: what
 * it leaves in the file is what a person looked at once and kept, undo gives the file as it was, redo the same again.
 */
final class Drawn implements AutoCloseable {
    private static final Path FLEET = Path.of("../../bundles/org.loomwright.samples/fleet");
    private static final Path FIXTURE = Path.of("fixture");
    private static final Path EXPECTED = Path.of("expected");
    /** Where files that differ from the expected ones are put, so that a person can look at the difference. */
    private static final Path DIFFERENT = Path.of(System.getProperty("loomwright.different", "target/different"));
    private static final String PROJECT = "gestures";

    private final IFile file;
    private final VehicleEditor editor;
    private final Robot robot;

    private Drawn(IFile file, VehicleEditor editor) throws IOException {
        this.file = file;
        this.editor = editor;
        robot = new Robot(editor.document(), editor.pane());
    }

    /** Opens a fresh copy of a fixture with a drawing. */
    static Drawn open(String fixture, DrawingKind kind) throws IOException, CoreException {
        IFile file = project().getFile(fixture + ".vehicle");
        write(file, Files.readAllBytes(FIXTURE.resolve(fixture + ".vehicle")));
        VehicleEditor editor = (VehicleEditor) IDE.openEditor(Ui.page(), file);
        Drawn drawn = new Drawn(file, editor);
        editor.pane().drawing(kind);
        drawn.robot.settled();
        Ui.page().getWorkbenchWindow().getShell().forceActive();
        editor.setFocus();
        drawn.robot.await("the focus", () -> editor.pane().canvas().isFocusControl());
        return drawn;
    }

    private static IProject project() throws IOException, CoreException {
        IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(PROJECT);
        if (!project.exists()) {
            project.create(null);
            project.open(null);
            IFolder parts = project.getFolder("parts");
            parts.create(false, true, null);
            try (Stream<Path> libraries = Files.list(FLEET.resolve("parts"))) {
                for (Path library : libraries.filter(each -> each.toString().endsWith(".parts")).sorted().toList()) {
                    write(parts.getFile(library.getFileName().toString()), Files.readAllBytes(library));
                }
            }
            write(project.getFile("team.practice"), Files.readAllBytes(FLEET.resolve("team.practice")));
        }
        return project;
    }

    private static void write(IFile file, byte[] bytes) throws CoreException {
        if (file.exists()) {
            file.setContents(new ByteArrayInputStream(bytes), true, false, null);
        } else {
            file.create(new ByteArrayInputStream(bytes), true, null);
        }
    }

    Robot robot() {
        return robot;
    }

    VehicleEditor editor() {
        return editor;
    }

    Set<String> selection() {
        return editor.document().selection().ids();
    }

    /** Does a gesture, saves, compares; undoes, redoes, and compares again. Gives what was selected after the gesture. */
    Set<String> proves(String expected, Runnable gesture) throws IOException {
        byte[] before = editor.document().file().resource().toBytes();
        gesture.run();
        robot.settled();
        Set<String> selected = selection();
        assertTrue(editor.document().dirty(), () -> "nothing came of " + expected + "; told was " + editor.pane().gestures().told());
        robot.save();
        compare(expected, Files.readAllBytes(Path.of(file.getLocationURI())));
        byte[] after = editor.document().file().resource().toBytes();
        robot.undo();
        assertArrayEquals(before, editor.document().file().resource().toBytes(), "undo of " + expected);
        robot.redo();
        assertArrayEquals(after, editor.document().file().resource().toBytes(), "redo of " + expected);
        assertFalse(editor.document().dirty(), "what was saved and redone is what is on the disk");
        robot.settled();
        return selected;
    }

    private static void compare(String expected, byte[] is) throws IOException {
        Path wanted = EXPECTED.resolve(expected + ".vehicle");
        String text = new String(is, StandardCharsets.UTF_8);
        String was = Files.exists(wanted) ? Files.readString(wanted) : "";
        if (!was.equals(text)) {
            Files.createDirectories(DIFFERENT);
            Files.write(DIFFERENT.resolve(expected + ".vehicle"), is);
        }
        assertEquals(was, text, "the file after " + expected + "; it was kept in " + DIFFERENT.toAbsolutePath());
    }

    @Override
    public void close() throws IOException, CoreException {
        robot.close();
        Ui.page().closeEditor(editor, false);
        file.delete(true, null);
    }
}
