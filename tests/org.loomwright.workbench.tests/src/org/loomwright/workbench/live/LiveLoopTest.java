// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Vehicle;

class LiveLoopTest {
    @TempDir
    private Path folder;
    private final QueueThread owner = new QueueThread();
    private final List<Analysis> told = new ArrayList<>();

    private LiveLoop loop() throws IOException {
        Vehicle vehicle = new VehicleFiles().openVehicle(FleetCopy.vehicle(folder, "otter")).root();
        return new LiveLoop(owner, () -> new Snapshot(Assembly.assemble(vehicle, vehicle.getArrangements().get(0), null),
                List.of()), told::add);
    }

    @Test
    void analysesAfterAChange() throws Exception {
        LiveLoop loop = loop();
        loop.changed();
        assertTrue(told.isEmpty());
        owner.elapse();
        assertTrue(owner.until(() -> !told.isEmpty()));
        assertTrue(told.get(0).worked());
        assertEquals(loop.revision(), told.get(0).revision());
        assertFalse(told.get(0).view().caseNames().isEmpty());
    }

    @Test
    void severalChangesAreAnalysedOnce() throws Exception {
        LiveLoop loop = loop();
        loop.changed();
        loop.changed();
        loop.changed();
        owner.elapse();
        assertTrue(owner.until(() -> !told.isEmpty()));
        owner.settle(300);
        assertEquals(1, told.size());
        assertEquals(3, told.get(0).revision());
    }

    @Test
    void aChangeInBetweenDropsTheOlderResult() throws Exception {
        LiveLoop loop = loop();
        loop.changed();
        owner.elapse();
        loop.changed();
        owner.elapse();
        assertTrue(owner.until(() -> !told.isEmpty()));
        owner.settle(300);
        assertEquals(List.of(2L), told.stream().map(Analysis::revision).toList());
    }

    @Test
    void aStoppedLoopTellsNothing() throws Exception {
        LiveLoop loop = loop();
        loop.changed();
        owner.elapse();
        loop.stop();
        owner.settle(500);
        assertTrue(told.isEmpty());
    }

    @Test
    void aFaultInsideBecomesOneFinding() {
        LiveLoop loop = new LiveLoop(owner, () -> {
            throw new IllegalStateException("no practice");
        }, told::add);
        loop.changed();
        owner.elapse();
        assertEquals(1, told.size());
        assertFalse(told.get(0).worked());
        assertEquals(1, told.get(0).findings().size());
        assertTrue(told.get(0).findings().get(0).title().contains("no practice"));
    }
}
