// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;
import org.junit.jupiter.api.function.Executable;
import org.loomwright.model.files.Fleet;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.files.VehicleResource;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Vehicle;

/** The fleet's vehicle, opened, with its elements at hand by fragment. */
final class OpenFleet {
    private final Path file;
    private final VehicleResource resource;
    private final Vehicle vehicle;

    OpenFleet(Path folder) {
        file = new Fleet(folder).vehicle();
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(file);
        assertTrue(opened.isSound(), () -> opened.faults().toString());
        resource = opened.resource();
        vehicle = opened.root();
    }

    Vehicle vehicle() {
        return vehicle;
    }

    PartsLibrary library() {
        return vehicle.getLibraries().get(0);
    }

    VehicleResource resource() {
        return resource;
    }

    Path file() {
        return file;
    }

    <T extends EObject> T get(Class<T> type, String fragment) {
        EObject found = resource.getEObject(fragment);
        assertTrue(type.isInstance(found), () -> fragment + " is " + found);
        return type.cast(found);
    }

    Device device(String fragment) {
        return get(Device.class, fragment);
    }

    Cable cable(String fragment) {
        return get(Cable.class, fragment);
    }

    Arrangement arrangement(String name) {
        return get(Arrangement.class, name);
    }

    boolean has(String fragment) {
        return resource.getEObject(fragment) != null;
    }

    /** The file as it would be saved. */
    String saved() {
        try {
            return new String(resource.toBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Applies an edit; checks that the result can be saved and read, undoes it, checks that nothing is left of it, redoes it. */
    void edit(Runnable edit) {
        String before = saved();
        ChangeRecorder recorder = new ChangeRecorder(vehicle);
        edit.run();
        var change = recorder.endRecording();
        recorder.dispose();
        String after = saved();
        assertReads(after);
        change.applyAndReverse();
        assertEquals(before, saved());
        change.applyAndReverse();
        assertEquals(after, saved());
    }

    /** Checks that an edit is refused in words and changes nothing. */
    void refuses(String words, Executable edit) {
        String before = saved();
        String message = assertThrows(IllegalArgumentException.class, edit).getMessage();
        assertTrue(message.contains(words), message);
        assertEquals(before, saved());
    }

    private void assertReads(String text) {
        try {
            java.nio.file.Files.writeString(file, text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        ReadFile<Vehicle> read = new VehicleFiles().openVehicle(file);
        assertTrue(read.isSound(), () -> read.faults().toString());
    }
}
