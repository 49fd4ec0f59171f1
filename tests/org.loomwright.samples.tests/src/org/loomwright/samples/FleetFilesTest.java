// SPDX-License-Identifier: EPL-2.0
package org.loomwright.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.parts.Coil;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.Stock;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.rules.PartsRules;
import org.loomwright.model.rules.PracticeRules;
import org.loomwright.model.rules.VehicleRules;
import org.loomwright.model.rules.Violation;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Vehicle;

/** The files of the demo fleet are sound, and saved as they were written. */
class FleetFilesTest {

    static List<Path> files() {
        return Fleet.files("vehicle", "parts", "practice", "stock");
    }

    @Test
    void theFleetIsThere() {
        assertEquals(List.of("beaver.vehicle", "heron.vehicle", "otter.vehicle"),
                Fleet.files("vehicle").stream().map(file -> file.getFileName().toString()).toList());
        assertTrue(files().size() >= 7, files().toString());
    }

    @ParameterizedTest
    @MethodSource("files")
    void fileLoadsWithoutFaultsAndIsSavedByteByByte(Path file) throws IOException {
        ReadFile<EObject> read = new VehicleFiles().open(file);
        assertEquals(List.of(), read.faults());
        assertEquals(Files.readString(file), new String(read.resource().toBytes(), StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @MethodSource("files")
    void fileBreaksNoRuleOfTheModel(Path file) {
        VehicleFiles files = new VehicleFiles();
        EObject root = files.open(file).root();
        List<Violation> found = root instanceof Vehicle vehicle ? VehicleRules.check(vehicle)
                : root instanceof PartsLibrary library ? PartsRules.check(library)
                : root instanceof Stock stock ? PartsRules.check(stock)
                : new PracticeRules(files.commonPractice(), Set.copyOf(RuleCatalogue.standard().slugs())).check((Practice) root);
        assertEquals(List.of(), found.stream().filter(each -> !isDeliberate(each))
                .map(each -> each.rule() + ": " + ElementPath.of(each.element()) + ": " + each.message()).toList());
    }

    /** The plus and minus that otter's mistakes exchange are worth a look already in the model. */
    private static boolean isDeliberate(Violation violation) {
        return !violation.blocking() && "wrong-net".equals(violation.rule())
                && ElementPath.of(violation.element()).startsWith("vehicle otter > arrangement as-found > ");
    }

    static List<Path> vehicles() {
        return Fleet.files("vehicle");
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void vehicleIsARealisticPlan(Path file) {
        Vehicle vehicle = new VehicleFiles().openVehicle(file).root();
        assertTrue(vehicle.getArrangements().size() >= 2, "arrangements");
        assertTrue(vehicle.getAdopted() != null, "adopted arrangement");
        assertTrue(vehicle.getPractice() != null && vehicle.getLibraries().size() >= 2 && !vehicle.getStock().isEmpty());
        assertTrue(vehicle.getDomains().size() >= 2, "voltage levels");
        assertTrue(vehicle.getBonds().size() >= 2 && vehicle.getBodies().size() >= 3, "straps and bodies");
        assertTrue(vehicle.getBonds().stream().anyMatch(bond -> Boolean.TRUE.equals(bond.getExisting())), "straps of the base vehicle");
        long batteries = devices(vehicle).stream().filter(device -> !device.getPart().getCells().isEmpty()).count();
        assertTrue(batteries >= 2, "batteries");
        for (Arrangement arrangement : vehicle.getArrangements()) {
            long loads = devices(vehicle).stream().filter(FleetFilesTest::isLoad).count()
                    + arrangement.getDevices().stream().filter(FleetFilesTest::isLoad).count();
            // 20 to 40 loads of the outfit, and those of the base vehicle
            assertTrue(loads >= 20 && loads <= 50, arrangement.getName() + ": " + loads + " loads");
        }
    }

    private static List<Device> devices(Vehicle vehicle) {
        return vehicle.getDevices();
    }

    private static boolean isLoad(Device device) {
        List<Coil> coils = device.getPart().getCoils();
        return !device.getPart().getDemands().isEmpty() && coils.isEmpty();
    }
}
