// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.vehicle.Vehicle;

/** Files damaged in any way are read without an exception: they have faults with a place, or are sound and can be saved. */
class DamagedFilesTest {
    private static final byte[] INSERTED = "<>&\"'/= \n\tx0-.#:@\u00E4]]>".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void randomDamage(long seed) throws IOException {
        Random random = new Random(seed);
        Fleet fleet = new Fleet(folder);
        byte[] whole = Fleet.VEHICLE.getBytes(StandardCharsets.UTF_8);
        int sound = 0;
        for (int i = 0; i < 100; i++) {
            byte[] damaged = damage(whole, random);
            fleet.write("heron.vehicle", damaged);
            ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.vehicle());
            String text = new String(damaged, StandardCharsets.UTF_8);
            long lines = text.chars().filter(c -> c == '\n').count() + 1;
            for (ReadFault fault : opened.faults()) {
                assertTrue(fault.line() >= 1 && fault.line() <= lines && fault.column() >= 1, fault::toString);
                assertFalse(fault.message().isBlank());
            }
            if (opened.faults().isEmpty()) {
                sound++;
                assertNotNull(opened.root());
                byte[] saved = opened.resource().toBytes();
                fleet.write("heron.vehicle", saved);
                ReadFile<Vehicle> again = new VehicleFiles().openVehicle(fleet.vehicle());
                assertEquals(List.of(), again.faults());
                assertTrue(Arrays.equals(saved, again.resource().toBytes()), text);
            }
        }
        assertTrue(sound < 100);
    }

    private static byte[] damage(byte[] whole, Random random) {
        int at = random.nextInt(whole.length);
        int length = Math.min(whole.length - at, 1 + random.nextInt(12));
        byte[] inserted = new byte[random.nextInt(3)];
        for (int i = 0; i < inserted.length; i++) {
            inserted[i] = INSERTED[random.nextInt(INSERTED.length)];
        }
        int removed = random.nextBoolean() ? 0 : length;
        byte[] damaged = Arrays.copyOf(whole, whole.length - removed + inserted.length);
        System.arraycopy(inserted, 0, damaged, at, inserted.length);
        System.arraycopy(whole, at + removed, damaged, at + inserted.length, whole.length - at - removed);
        return damaged;
    }

    @Test
    void veryDeepNestingIsOneFault() {
        Fleet fleet = new Fleet(folder);
        fleet.write("heron.vehicle", Fleet.with("  <zones ", "<x>".repeat(200_000) + "</x>".repeat(200_000) + "  <zones "));
        List<ReadFault> faults = new VehicleFiles().openVehicle(fleet.vehicle()).faults();
        assertEquals(1, faults.size());
        assertEquals("unknown element 'x' in a vehicle", faults.get(0).message());
    }

    @Test
    void veryLongAttributesAreRead() {
        Fleet fleet = new Fleet(folder);
        String label = "long &amp; ".repeat(300_000);
        fleet.write("heron.vehicle", Fleet.with("Heron &amp; crew", label));
        ReadFile<Vehicle> opened = new VehicleFiles().openVehicle(fleet.vehicle());
        assertEquals(List.of(), opened.faults());
        assertEquals(300_000 * 7, opened.root().getLabel().length());
    }
}
