// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.builder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.loomwright.workbench.app.Ui;
import org.loomwright.workbench.markers.FindingKey;
import org.loomwright.workbench.markers.FindingMarkers;

class CheckBuilderTest {
    private IProject fleet;

    @BeforeEach
    void fleet() throws CoreException {
        fleet = Ui.fleet();
    }

    private IFile file(String name) {
        return fleet.getFile(name);
    }

    private static List<IMarker> findings(IFile file) throws CoreException {
        return Arrays.asList(file.findMarkers(FindingMarkers.TYPE, false, IResource.DEPTH_ZERO));
    }

    private static List<IMarker> faults(IFile file) throws CoreException {
        return Arrays.asList(file.findMarkers(FindingMarkers.FAULT_TYPE, false, IResource.DEPTH_ZERO));
    }

    private static String text(IFile file) throws CoreException, IOException {
        try (InputStream content = file.getContents(true)) {
            return new String(content.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static void write(IFile file, String text) throws CoreException {
        file.setContents(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), true, false, null);
        Ui.built();
    }

    /** Lines of the list of deliberate mistakes that concern a vehicle. */
    private List<String[]> mistakes(String vehicle) throws CoreException, IOException {
        List<String[]> lines = new ArrayList<>();
        for (String line : text(file("expected.csv")).split("\n")) {
            String[] cells = line.split(",");
            if (cells.length > 3 && cells[0].equals(vehicle)) {
                lines.add(cells);
            }
        }
        return lines;
    }

    @Test
    void marksTheVehicleWiredCarelesslyAndNamesElementAndRule() throws CoreException, IOException {
        List<IMarker> markers = findings(file("otter.vehicle"));
        assertTrue(markers.stream().anyMatch(each -> each.getAttribute(IMarker.SEVERITY, -1) == IMarker.SEVERITY_ERROR));
        assertTrue(markers.stream().anyMatch(each -> each.getAttribute(IMarker.SEVERITY, -1) == IMarker.SEVERITY_WARNING));
        List<String> found = markers.stream().map(FindingKey::of).map(key -> key.rule() + " " + key.element()).toList();
        List<String[]> mistakes = mistakes("otter");
        assertFalse(mistakes.isEmpty(), "the list of mistakes has lines of otter");
        for (String[] mistake : mistakes) {
            assertTrue(found.stream().anyMatch(each -> Arrays.stream(mistake).anyMatch(cell -> each.startsWith(cell + " "))),
                    () -> "a marker for " + String.join(",", mistake));
        }
    }

    @Test
    void leavesAcceptedFindingsOut() throws CoreException {
        assertEquals(List.of(), findings(file("heron.vehicle")).stream()
                .filter(each -> each.getAttribute(IMarker.SEVERITY, -1) >= IMarker.SEVERITY_WARNING)
                .map(each -> each.getAttribute(IMarker.MESSAGE, "")).toList());
        assertEquals(List.of(), faults(file("heron.vehicle")));
    }

    @Test
    void marksAppearWithAMistakeAndVanishWithItsMend() throws CoreException, IOException {
        IFile heron = file("heron.vehicle");
        String sound = text(heron);
        int before = findings(heron).size();
        try {
            write(heron, sound.replace("sectionMm2=\"2.5\"", "sectionMm2=\"0.5\""));
            assertTrue(findings(heron).size() > before, "thin cables are marked");
            assertTrue(findings(heron).stream().anyMatch(each -> !each.getAttribute(FindingMarkers.MENDS, "").isEmpty()
                    && IDE.getMarkerHelpRegistry().hasResolutions(each)), "and mends are offered");
        } finally {
            write(heron, sound);
        }
        assertEquals(before, findings(heron).size());
    }

    @Test
    void aChangeOfALibraryChecksEveryVehicleAnew() throws CoreException, IOException {
        IFile otter = file("otter.vehicle");
        int before = findings(otter).size();
        otter.deleteMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_ZERO);
        IFile practice = file("team.practice");
        String text = text(practice);
        write(practice, text + "\n");
        assertEquals(before, findings(otter).size());
        write(practice, text);
    }

    @Test
    void aFileWithFaultsIsMarkedWhereTheFaultIsAndOpenedWithoutBeingChanged() throws CoreException, IOException {
        IFile copy = file("torn.vehicle");
        String torn = text(file("heron.vehicle"));
        torn = torn.substring(0, torn.length() / 2);
        copy.create(new ByteArrayInputStream(torn.getBytes(StandardCharsets.UTF_8)), true, null);
        try {
            Ui.built();
            List<IMarker> faults = faults(copy);
            assertFalse(faults.isEmpty());
            assertTrue(faults.get(0).getAttribute(IMarker.LINE_NUMBER, 0) > 1, "at its line");
            var editor = IDE.openEditor(Ui.page(), copy);
            Ui.screenshot("file-with-faults");
            assertFalse(editor.isDirty());
            editor.doSave(new org.eclipse.core.runtime.NullProgressMonitor());
            assertEquals(torn, text(copy));
            Ui.page().closeEditor(editor, false);
        } finally {
            copy.delete(true, null);
        }
    }
}
