// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.parts.PartsFactory;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** Files are written as a whole, only when something changed, and never when that would lose something. */
class SavingTest {
    private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

    @TempDir
    Path folder;
    private Fleet fleet;
    private ReadFile<Vehicle> opened;

    @BeforeEach
    void open() throws IOException {
        fleet = new Fleet(folder.resolve("fleet"));
        Files.setLastModifiedTime(fleet.vehicle(), LONG_AGO);
        opened = new VehicleFiles().openVehicle(fleet.vehicle());
    }

    private List<String> names(Path in) throws IOException {
        try (Stream<Path> files = Files.list(in)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void unchangedFileIsNotWritten() throws IOException {
        assertFalse(VehicleFiles.save(opened.resource()));
        opened.root().setLabel("x");
        opened.root().setLabel("Heron & crew");
        assertFalse(VehicleFiles.save(opened.resource()));
        opened.resource().save(null);
        assertEquals(LONG_AGO, Files.getLastModifiedTime(fleet.vehicle()));
    }

    @Test
    void changedFileIsReplacedAndNothingIsLeftBeside() throws IOException {
        opened.root().setLabel("Grey heron");
        assertTrue(VehicleFiles.save(opened.resource()));
        assertEquals(Fleet.with("Heron &amp; crew", "Grey heron"), Files.readString(fleet.vehicle()));
        assertEquals(List.of("heron.vehicle", "parts", "team.practice"), names(fleet.folder()));
        assertFalse(opened.resource().isModified());
    }

    @Test
    void leftoverOfAnInterruptedSaveIsNotTouched() throws IOException {
        Path leftover = fleet.write(".heron.vehicle.0.tmp", "half");
        opened.root().setLabel("x");
        assertTrue(VehicleFiles.save(opened.resource()));
        assertEquals("half", Files.readString(leftover));
    }

    @Test
    void failedSaveLeavesTheOldFileWhole() throws IOException {
        opened.root().setLabel("bell \u0007");
        RefusedFileException refused = assertThrows(RefusedFileException.class, () -> VehicleFiles.save(opened.resource()));
        assertEquals("is not saved: vehicle heron: label has a control character that a file cannot hold", refused.getMessage());
        opened.root().setLabel("half \uD83D pair");
        assertThrows(RefusedFileException.class, () -> opened.resource().save(null));
        assertEquals(Fleet.VEHICLE, Files.readString(fleet.vehicle()));
        assertEquals(List.of("heron.vehicle", "parts", "team.practice"), names(fleet.folder()));
    }

    @Test
    void permissionsAreKept() throws IOException {
        Files.setPosixFilePermissions(fleet.vehicle(), PosixFilePermissions.fromString("rw-rw----"));
        opened.root().setLabel("x");
        VehicleFiles.save(opened.resource());
        assertEquals("rw-rw----", PosixFilePermissions.toString(Files.getPosixFilePermissions(fleet.vehicle())));
    }

    @Test
    void symbolicLinkStaysOne() throws IOException {
        Path link = Files.createSymbolicLink(fleet.folder().resolve("link.vehicle"), Path.of("heron.vehicle"));
        ReadFile<Vehicle> linked = new VehicleFiles().openVehicle(link);
        linked.root().setLabel("by link");
        VehicleFiles.save(linked.resource());
        assertTrue(Files.isSymbolicLink(link));
        assertTrue(Files.readString(fleet.vehicle()).contains("by link"));
    }

    @Test
    void savingUnderAnotherNameRewritesRelativeReferences() throws IOException {
        Path other = fleet.folder().resolve("new/place/heron.vehicle");
        Files.createDirectories(other.getParent());
        VehicleFiles files = new VehicleFiles();
        ReadFile<Vehicle> read = files.openVehicle(fleet.vehicle());
        files.saveAs(read.resource(), other);
        assertEquals(Fleet.with("\"parts/base.parts#/\"", "\"../../parts/base.parts#/\"")
                .replace("\"team.practice#/\"", "\"../../team.practice#/\""), Files.readString(other));
        assertEquals(Fleet.VEHICLE, Files.readString(fleet.vehicle()));
        assertTrue(new VehicleFiles(AllowedFolders.of(List.of(fleet.folder()))).openVehicle(other).isSound());
    }

    @Test
    void newFilesAreCanonical() throws IOException {
        VehicleFiles files = new VehicleFiles();
        PartsLibrary library = PartsFactory.eINSTANCE.createPartsLibrary();
        library.setName("own");
        library.setFormat("1.0");
        Path libraryFile = fleet.folder().resolve("my parts/own.parts");
        Files.createDirectories(libraryFile.getParent());
        VehicleFiles.save(files.create(libraryFile, library));
        Vehicle vehicle = VehicleFactory.eINSTANCE.createVehicle();
        vehicle.setName("otter");
        vehicle.setFormat("1.0");
        vehicle.getLibraries().add(library);
        Path file = fleet.folder().resolve("otter.vehicle");
        VehicleFiles.save(files.create(file, vehicle));
        assertEquals("""
                <?xml version="1.0" encoding="UTF-8"?>
                <vehicle:Vehicle xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
                xmlns:vehicle="http://loomwright.org/vehicle/1" name="otter" format="1.0" libraries="my%20parts/own.parts#/"/>
                """, Files.readString(file));
        assertTrue(new VehicleFiles().openVehicle(file).isSound());
    }

    @Test
    void streamsAndWritersGetTheSameText() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        opened.resource().save(bytes, null);
        assertArrayEquals(Fleet.VEHICLE.getBytes(StandardCharsets.UTF_8), bytes.toByteArray());
        StringWriter text = new StringWriter();
        opened.resource().save(text, null);
        assertEquals(Fleet.VEHICLE, text.toString());
    }

    @Test
    void anotherResourceSetReadsTheSameFiles() {
        ResourceSet set = new ResourceSetImpl();
        VehicleFiles.prepare(set);
        Resource resource = set.getResource(URI.createFileURI(fleet.vehicle().toString()), true);
        assertEquals(List.of(), resource.getErrors());
        Vehicle vehicle = (Vehicle) resource.getContents().get(0);
        assertEquals("battery", vehicle.getDevices().get(0).getPart().getName());
    }

    @Test
    void unloadedAndLoadedAgain() throws IOException {
        opened.resource().unload();
        opened.resource().load(null);
        assertEquals(List.of(), opened.resource().faults());
        assertEquals(Fleet.VEHICLE, new String(opened.resource().toBytes(), StandardCharsets.UTF_8));
    }

    @Test
    void vehiclesAreFoundBelowAFolderInOrder() throws IOException {
        fleet.write("b/otter.vehicle", Fleet.VEHICLE);
        fleet.write("a/deep/down/beaver.vehicle", Fleet.VEHICLE);
        fleet.write("a/notes.txt", "");
        Files.createDirectories(fleet.folder().resolve("folder.vehicle"));
        assertEquals(List.of("a/deep/down/beaver.vehicle", "b/otter.vehicle", "heron.vehicle"),
                VehicleFiles.find(fleet.folder()).stream().map(file -> fleet.folder().relativize(file).toString()).toList());
        assertEquals(List.of(), VehicleFiles.find(fleet.folder().resolve("parts")));
        assertThrows(IOException.class, () -> VehicleFiles.find(fleet.folder().resolve("nowhere")));
    }
}
