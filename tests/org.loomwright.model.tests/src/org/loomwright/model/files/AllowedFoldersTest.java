// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.URI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.vehicle.Vehicle;

/** Files refer to other files inside the allowed folders only. */
class AllowedFoldersTest {
    @TempDir
    Path folder;

    @Test
    void folderAboveTheOpenedFileIsAllowed() throws IOException {
        Path fleet = Files.createDirectories(folder.resolve("a/fleet"));
        AllowedFolders allowed = AllowedFolders.aroundOpenedFiles();
        assertFalse(allowed.allows(folder.resolve("a/shared/x.parts")));
        allowed.opened(fleet.resolve("heron.vehicle"));
        assertTrue(allowed.allows(fleet.resolve("heron.vehicle")));
        assertTrue(allowed.allows(folder.resolve("a/shared/x.parts")));
        assertFalse(allowed.allows(folder.resolve("x.parts")));
        assertFalse(allowed.allows(folder.resolve("a/../x.parts")));
        assertFalse(allowed.allows(folder.resolve("ab/x.parts")), "a folder is not a prefix of a name");
        assertFalse(allowed.allows(Path.of("/etc/passwd")));
    }

    @Test
    void namedFoldersAreAllThereIs() throws IOException {
        Path fleet = Files.createDirectories(folder.resolve("fleet"));
        AllowedFolders allowed = AllowedFolders.of(List.of(fleet));
        Path elsewhere = folder.resolve("elsewhere.vehicle");
        allowed.opened(elsewhere);
        assertTrue(allowed.allows(elsewhere), "a file a person asked for");
        assertFalse(allowed.allows(folder.resolve("beside.parts")));
        assertTrue(allowed.allows(fleet.resolve("deep/down.parts")));
    }

    @Test
    void symbolicLinkOutOfTheFoldersIsNotFollowed() throws IOException {
        Fleet fleet = new Fleet(folder.resolve("a/b/fleet"));
        Path secret = folder.resolve("secret.parts");
        Files.writeString(secret, Fleet.PARTS);
        Files.createSymbolicLink(fleet.folder().resolve("inside.parts"), secret);
        Files.createSymbolicLink(fleet.folder().resolve("dir"), folder);
        for (String link : List.of("inside.parts", "dir/secret.parts")) {
            fleet.write("heron.vehicle", Fleet.with("parts/base.parts#/", link + "#/"));
            ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.vehicle());
            assertEquals(1, opened.faults().size(), opened.faults()::toString);
            assertEquals("libraries: " + link + " is outside the folders this file may refer to",
                    opened.faults().get(0).message());
        }
    }

    @Test
    void symbolicLinkWithinTheFoldersIsFollowed() throws IOException {
        Fleet fleet = new Fleet(folder.resolve("a/fleet"));
        Files.createSymbolicLink(fleet.folder().resolve("link.parts"), Path.of("parts/base.parts"));
        fleet.write("heron.vehicle", Fleet.with("parts/base.parts#/", "link.parts#/"));
        assertTrue(new VehicleFiles().openVehicle(fleet.vehicle()).isSound());
    }

    @Test
    void whatIsOutsideIsNotEvenProbed() {
        FilesOnlyConverter converter = new FilesOnlyConverter(AllowedFolders.of(List.of(folder)));
        for (String path : List.of("/etc/passwd", "/etc/no-such-file", "/etc", "/dev/zero")) {
            IOException refused = assertThrows(RefusedFileException.class,
                    () -> converter.createInputStream(URI.createFileURI(path), Map.of()));
            assertEquals("is outside the folders this file may refer to", refused.getMessage());
            assertFalse(converter.exists(URI.createFileURI(path), Map.of()));
            assertThrows(RefusedFileException.class, () -> converter.createOutputStream(URI.createFileURI(path), Map.of()));
        }
    }

    @Test
    void devicesAreNoFiles() {
        FilesOnlyConverter converter = new FilesOnlyConverter(AllowedFolders.of(List.of(Path.of("/dev"))));
        assertEquals("is no plain file", assertThrows(RefusedFileException.class,
                () -> converter.createInputStream(URI.createFileURI("/dev/zero"), Map.of())).getMessage());
    }

    @Test
    void encodedDotsDoNotLeadOut() {
        Fleet fleet = new Fleet(folder.resolve("a/b/fleet"));
        fleet.write("heron.vehicle", Fleet.with("parts/base.parts#/", "%2e%2e/%2e%2e/%2e%2e/secret.parts#/"));
        List<ReadFault> faults = new VehicleFiles().openVehicle(fleet.vehicle()).faults();
        assertEquals(1, faults.size(), faults::toString);
        assertTrue(faults.get(0).message().contains("outside the folders"), faults::toString);
    }
}
