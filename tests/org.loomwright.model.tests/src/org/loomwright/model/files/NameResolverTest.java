// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.VehiclePackage;

/** Names mean the nearest element of the wanted kind, and every element has one fragment. */
class NameResolverTest {
    @TempDir
    Path folder;
    private Vehicle vehicle;
    private VehicleResource resource;
    private Arrangement central;
    private Arrangement spread;

    @BeforeEach
    void open() {
        open(Fleet.VEHICLE);
    }

    private void open(String text) {
        Fleet fleet = new Fleet(folder);
        fleet.write("heron.vehicle", text);
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.vehicle());
        assertTrue(opened.isSound(), () -> opened.faults().toString());
        vehicle = opened.root();
        resource = opened.resource();
        central = vehicle.getArrangements().get(0);
        spread = vehicle.getArrangements().get(1);
    }

    private String saved() {
        try {
            return new String(resource.toBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void sameNameInTwoArrangementsMeansTheOwn() {
        Terminal first = (Terminal) central.getCables().get(0).getCores().get(0).getA();
        Terminal second = (Terminal) spread.getCables().get(0).getCores().get(0).getA();
        assertSame(central.getDevices().get(0), first.eContainer());
        assertSame(spread.getDevices().get(0), second.eContainer());
    }

    @Test
    void nearerNameHidesTheVehiclesAndASlashReachesIt() {
        open(Fleet.with("<devices name=\"E1\"", "<devices name=\"F1\" part=\"lamp\"/>\n  <devices name=\"E1\"")
                .replace("b=\"E1.L+\"", "b=\"/F1.L+\""));
        Core core = central.getCables().get(0).getCores().get(0);
        assertSame(central.getDevices().get(0), core.getA().eContainer());
        assertSame(vehicle.getDevices().get(1), core.getB().eContainer());
        core.setB(Terminals.of(vehicle.getDevices().get(1), "L-"));
        assertTrue(saved().contains("b=\"/F1.L-\""));
    }

    @Test
    void elementOfAnotherArrangementIsWrittenAsPath() {
        spread.getCables().get(0).getCores().get(0).setB(Terminals.of(central.getDevices().get(0), "2"));
        assertTrue(saved().contains("b=\"central/F1.2\""));
    }

    @Test
    void duplicateNamesAreWrittenByPositionSoThatNothingIsLost() throws IOException {
        Device twin = VehicleFactory.eINSTANCE.createDevice();
        twin.setName("F1");
        central.getDevices().add(twin);
        Core core = central.getCables().get(0).getCores().get(0);
        core.setB(Terminals.of(twin, "9"));
        VehicleFiles.save(resource);
        assertTrue(saved().contains("a=\"central/@devices.0.1\" b=\"central/@devices.1.9\""), saved());
        ReadFile<Vehicle> again = new VehicleFiles().openVehicle(folder.resolve("heron.vehicle"));
        assertTrue(again.isSound(), () -> again.faults().toString());
        Core read = again.root().getArrangements().get(0).getCables().get(0).getCores().get(0);
        assertSame(again.root().getArrangements().get(0).getDevices().get(0), read.getA().eContainer());
        assertSame(again.root().getArrangements().get(0).getDevices().get(1), read.getB().eContainer());
    }

    @Test
    void referencesFollowARename() {
        vehicle.getPlaces().get(1).setName("stern");
        central.getDevices().get(0).setName("X9");
        String text = saved();
        assertTrue(text.contains("place=\"stern\""));
        assertFalse(text.contains("\"rear\""));
        assertTrue(text.contains("a=\"X9.1\""));
        assertTrue(text.contains("a=\"F1.2\""), "the other arrangement's device keeps its name");
    }

    @Test
    void waysAndTerminalsOfOneNumberAreToldApartByType() {
        DevicePart box = central.getDevices().get(0).getPart();
        assertEquals("30", box.getWays().get(1).getFrom().getName());
        assertSame(box.getTerminals().get(2), box.getWays().get(1).getOut());
    }

    @Test
    void fragmentsArePathsOfNames() {
        assertEquals("/", resource.getURIFragment(vehicle));
        assertEquals("G1", resource.getURIFragment(vehicle.getDevices().get(0)));
        assertEquals("central/W1", resource.getURIFragment(central.getCables().get(0)));
        assertEquals("central/W1/RD", resource.getURIFragment(central.getCables().get(0).getCores().get(0)));
        assertEquals("central/F1.1", resource.getURIFragment(central.getCables().get(0).getCores().get(0).getA()));
        assertEquals("parked/@demands.1", resource.getURIFragment(vehicle.getCases().get(0).getDemands().get(1)));
        assertEquals("central/@placements.0", resource.getURIFragment(central.getPlacements().get(0)));
    }

    @Test
    void everyFragmentLeadsBackToItsElement() {
        for (EObject root : new EObject[] {vehicle, vehicle.getLibraries().get(0)}) {
            VehicleResource file = (VehicleResource) root.eResource();
            root.eAllContents().forEachRemaining(object ->
                    assertSame(object, file.getEObject(file.getURIFragment(object)), file.getURIFragment(object)));
        }
        assertSame(vehicle, resource.getEObject("/"));
        assertSame(vehicle, resource.getEObject(""));
        assertNull(resource.getEObject("central/W99"));
        assertNull(resource.getEObject("central/W1/@cores.7"));
        assertNull(resource.getEObject("central/W1/@nothing.0"));
        assertNull(resource.getEObject("central/W1/@part"));
    }

    @Test
    void fragmentsOfTheResourceSetLeadIntoLibraries() {
        ResourceSet set = resource.getResourceSet();
        assertSame(vehicle.getLibraries().get(0).getStraps().get(0),
                set.getEObject(vehicle.getLibraries().get(0).eResource().getURI().appendFragment("braid"), true));
    }

    @Test
    void terminalsAreMadeOnDemandOnceAndSilently() {
        Device device = vehicle.getDevices().get(0);
        int[] notifications = {0};
        vehicle.eAdapters().add(new EContentAdapter() {
            @Override
            public void notifyChanged(org.eclipse.emf.common.notify.Notification notification) {
                super.notifyChanged(notification);
                notifications[0]++;
            }
        });
        assertTrue(Terminals.find(device, "99").isEmpty());
        Terminal terminal = Terminals.of(device, "99");
        assertSame(terminal, Terminals.of(device, "99"));
        assertSame(terminal, Terminals.find(device, "99").orElseThrow());
        assertSame(device, Terminals.deviceOf(terminal));
        assertEquals(0, notifications[0]);
        assertSame(terminal, resource.getEObject("G1.99"));
        assertNotSame(terminal, Terminals.of(device, "98"));
        assertTrue(saved().equals(Fleet.VEHICLE), "terminals are not part of the file");
    }

    @Test
    void manyTerminalsOfOneDeviceAreFound() {
        Device device = vehicle.getDevices().get(0);
        for (int i = 0; i < 50; i++) {
            assertSame(Terminals.of(device, "t" + i), resource.getEObject("G1.t" + i));
        }
        assertEquals(2 + 50, device.getTerminals().size());
    }

    @Test
    void nameOfAPartInTwoLibrariesIsWrittenWithItsLibrary() throws IOException {
        new Fleet(folder).write("parts/more.parts", Fleet.replaced(Fleet.PARTS, "name=\"base\"", "name=\"more\""));
        open(Fleet.VEHICLE);
        VehicleFiles files = new VehicleFiles();
        ReadFile<Vehicle> opened = files.openVehicle(folder.resolve("heron.vehicle"));
        opened.root().getLibraries().add(files.openParts(folder.resolve("parts/more.parts")).root());
        String text = new String(opened.resource().toBytes(), StandardCharsets.UTF_8);
        assertTrue(text.contains("libraries=\"parts/base.parts#/ parts/more.parts#/\""));
        assertTrue(text.contains("<devices name=\"G1\" part=\"base/battery\""));
        assertTrue(VehicleFiles.save(opened.resource()));
        assertTrue(new VehicleFiles().openVehicle(folder.resolve("heron.vehicle")).isSound());
    }

    @Test
    void partOutOfALibraryThatIsNotUsedIsWrittenWithItsFile() throws IOException {
        Fleet fleet = new Fleet(folder);
        fleet.write("parts/more.parts", Fleet.replaced(Fleet.PARTS, "name=\"base\"", "name=\"more\""));
        VehicleFiles files = new VehicleFiles();
        ReadFile<Vehicle> opened = files.openVehicle(fleet.vehicle());
        opened.root().getDevices().get(0).setPart(files.openParts(folder.resolve("parts/more.parts")).root().getDevices().get(1));
        assertTrue(new String(opened.resource().toBytes(), StandardCharsets.UTF_8)
                .contains("<devices name=\"G1\" part=\"parts/more.parts#battery\""));
        VehicleFiles.save(opened.resource());
        assertTrue(new VehicleFiles().openVehicle(fleet.vehicle()).isSound());
    }

    @Test
    void referenceToADeletedElementIsNotSaved() {
        vehicle.getPlaces().remove(0);
        RefusedFileException refused = org.junit.jupiter.api.Assertions.assertThrows(RefusedFileException.class,
                () -> resource.toBytes());
        assertTrue(refused.getMessage().contains("which is in no file"), refused::getMessage);
        assertTrue(refused.getMessage().contains("vehicle heron > run R1: from refers to the place hub"), refused::getMessage);
    }

    @Test
    void dotsAreAllowedInOtherNames() {
        open(Fleet.with("name=\"hub\"", "name=\"hub.2\"").replace("\"hub\"", "\"hub.2\""));
        assertEquals("hub.2", vehicle.getPlaces().get(0).getName());
        assertSame(vehicle.getPlaces().get(0), resource.getEObject("hub.2"));
        assertEquals(1, NameResolver.meanings(vehicle.getDevices().get(0), VehiclePackage.Literals.DEVICE__PLACE, "hub.2")
                .size());
    }
}
