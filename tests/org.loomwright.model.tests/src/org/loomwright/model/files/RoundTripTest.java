// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/** What is loaded and saved again is the same, byte for byte. */
class RoundTripTest {
    @TempDir
    Path folder;
    private Fleet fleet;

    @BeforeEach
    void writeFleet() {
        fleet = new Fleet(folder.resolve("fleet"));
    }

    private void assertSame(String text) throws IOException {
        assertSame(text.getBytes(StandardCharsets.UTF_8));
    }

    private void assertSame(byte[] bytes) throws IOException {
        fleet.write("heron.vehicle", bytes);
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.vehicle());
        assertEquals(List.of(), opened.faults());
        assertEquals(new String(bytes, StandardCharsets.UTF_8), new String(opened.resource().toBytes(), StandardCharsets.UTF_8));
        assertArrayEquals(bytes, opened.resource().toBytes());
        opened.root().setKind("touched");
        assertTrue(VehicleFiles.save(opened.resource()));
        ReadFile<Vehicle> again = new VehicleFiles().openVehicle(fleet.vehicle());
        assertEquals(List.of(), again.faults());
        again.root().setKind(null);
        assertArrayEquals(bytes, again.resource().toBytes());
    }

    @Test
    void allKindsOfFiles() throws IOException {
        assertSame(Fleet.VEHICLE);
        for (String name : List.of("parts/base.parts", "team.practice")) {
            Path file = fleet.folder().resolve(name);
            assertArrayEquals(Files.readAllBytes(file), new VehicleFiles().open(file).resource().toBytes());
        }
        VehicleResource common = (VehicleResource) new VehicleFiles().commonPractice().eResource();
        try (var in = VehicleFiles.class.getResourceAsStream("common.practice")) {
            assertArrayEquals(in.readAllBytes(), common.toBytes());
        }
    }

    @Test
    void lineEndsOfTheFileAreKept() throws IOException {
        assertSame(Fleet.VEHICLE.replace("\n", "\r\n"));
        assertSame(Fleet.VEHICLE.replace("\n", "\r"));
    }

    @Test
    void byteOrderMarkAndMissingEndOfLineAreKept() throws IOException {
        assertSame("\uFEFF" + Fleet.VEHICLE);
        assertSame(Fleet.VEHICLE.stripTrailing());
        assertSame(Fleet.VEHICLE + "\n\n<!-- end -->\n");
    }

    @Test
    void whatSurroundsTheRootIsKept() throws IOException {
        assertSame(Fleet.with("?>\n<vehicle:V", "?>\n<!-- Survey fleet > heron -->\n<?checked yes?>\n\n<vehicle:V"));
        assertSame(Fleet.with("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n", ""));
        assertSame(Fleet.with("<?xml version=\"1.0\" encoding=\"UTF-8\"?>", "<?xml version='1.0' encoding='utf-8' ?>"));
    }

    @Test
    void namespacesOfTheRootAreKept() throws IOException {
        assertSame(Fleet.with("<vehicle:Vehicle xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:vehicle=",
                "<Vehicle xmlns=").replace("</vehicle:Vehicle>", "</Vehicle>"));
        assertSame(Fleet.with("vehicle:Vehicle", "v:Vehicle").replace("xmlns:vehicle", "xmlns:v"));
        assertSame(Fleet.with(" name=\"heron\"", " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" "
                + "xsi:schemaLocation=\"a b\" name=\"heron\""));
    }

    @Test
    void namesWrittenInALongerWayAreKept() throws IOException {
        assertSame(Fleet.with("a=\"F1.2\"", "a=\"spread/F1.2\"").replace("part=\"lamp\" run", "part=\"base/lamp\" run")
                .replace("run=\"R1\" atMm", "run=\"/R1\" atMm").replace("path=\"R1 R2\"", "path=\"R1 /R2\"")
                .replace("libraries=\"parts/base.parts#/\"", "libraries=\"./parts/../parts/base.parts#/\"")
                .replace("part=\"braid\"", "part=\"parts/base.parts#braid\""));
    }

    @Test
    void namesWrittenInALongerWayFollowTheirTarget() throws IOException {
        fleet.write("heron.vehicle", Fleet.with("a=\"F1.2\"", "a=\"spread/F1.2\""));
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.vehicle());
        opened.root().getArrangements().get(1).setName("outer");
        String text = new String(opened.resource().toBytes(), StandardCharsets.UTF_8);
        assertTrue(text.contains("<cores name=\"1\" a=\"F1.2\" b=\"E2.L+\"/>"), text);
    }

    @Test
    void numbersAndFlagsKeepTheirDigits() throws IOException {
        assertSame(Fleet.with("xMm=\"200\"", "xMm=\"200.000\"").replace("yMm=\"-20.50\"", "yMm=\"-0.000000000000001\"")
                .replace("value=\"12.63\"", "value=\"999999999999999.9\""));
    }

    @Test
    void commentsBetweenElementsAreReported() throws IOException {
        fleet.write("heron.vehicle", Fleet.with("?>\n<vehicle:V", "?>\n<!-- fine -->\n<vehicle:V"));
        assertFalse(new VehicleFiles().openVehicle(fleet.vehicle()).hasComments());
        fleet.write("heron.vehicle", Fleet.with("  <zones ", "  <!-- a remark <zones> -->\n  <zones "));
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.vehicle());
        assertTrue(opened.hasComments());
        assertTrue(opened.isSound());
        assertEquals(new Location(5, 3), Locations.of(opened.root().getZones().get(0)));
        fleet.write("heron.vehicle", Fleet.with("</vehicle:Vehicle>", "<?keep me?></vehicle:Vehicle>"));
        assertTrue(new VehicleFiles().openVehicle(fleet.vehicle()).hasComments());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void randomVehicles(long seed) throws IOException {
        VehicleFiles files = new VehicleFiles();
        PartsLibrary library = files.openParts(fleet.folder().resolve("parts/base.parts")).root();
        Vehicle vehicle = VehicleFactory.eINSTANCE.createVehicle();
        Path file = fleet.folder().resolve("random.vehicle");
        VehicleResource resource = files.create(file, vehicle);
        vehicle.getLibraries().add(library);
        new RandomVehicles(seed, library).fill(vehicle);
        assertTrue(VehicleFiles.save(resource));

        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(file);
        assertEquals(List.of(), opened.faults());
        assertArrayEquals(Files.readAllBytes(file), opened.resource().toBytes());
        assertEquals(describe(vehicle), describe(opened.root()));
    }

    /** The whole model as text, references by fragment: told apart from how files write them. */
    private static String describe(Vehicle vehicle) {
        StringBuilder text = new StringBuilder();
        vehicle.eAllContents().forEachRemaining(object -> {
            if (object instanceof org.loomwright.model.vehicle.Terminal) {
                return;
            }
            text.append(Fragments.of(object)).append('\n');
            object.eClass().getEAllStructuralFeatures().forEach(feature -> {
                if (!object.eIsSet(feature)) {
                    return;
                }
                if (feature instanceof org.eclipse.emf.ecore.EReference reference) {
                    if (!reference.isContainment()) {
                        NameResolver.targets(object, reference).forEach(target -> text.append("  ").append(feature.getName())
                                .append(" -> ").append(target.eResource().getURI().lastSegment()).append('#')
                                .append(Fragments.of(target)).append('\n'));
                    }
                } else {
                    text.append("  ").append(feature.getName()).append(" = ").append(EcoreUtil.convertToString(
                            ((org.eclipse.emf.ecore.EAttribute) feature).getEAttributeType(), object.eGet(feature))).append('\n');
                }
            });
        });
        return text.toString();
    }
}
