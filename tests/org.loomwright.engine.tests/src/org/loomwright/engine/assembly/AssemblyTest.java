// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.Ignition;

class AssemblyTest {

    /** A vehicle with a bit of everything, and several ways of the same length. */
    private static TestVehicle van() {
        TestVehicle van = TestVehicle.simple();
        van.place("left", "2000 900 800", "cabin");
        van.place("right", "2000 -900 800", "cabin");
        van.run("R3", "front", "left", "2500");
        van.run("R4", "front", "right", "2500");
        van.run("R5", "left", "rear", "1400");
        van.run("R6", "right", "rear", "1400");
        van.body("chassis");
        van.body("engine");
        van.earthPoint("XE1", "chassis", "front");
        van.earthPoint("XE2", "engine", "front");
        van.bond("WE1", "XE1", "XE2");
        van.device("G2", "alternator", "front").setBody(van.vehicle.getBodies().get(1));
        van.device("S1", "ignition", "front");
        van.device("M1", "starter", "front").setBody(van.vehicle.getBodies().get(1));
        van.device("K1", "relay", null).setMountedIn(van.device("F1"));
        van.cable("W10", "16", "G1.31", "XE1");
        van.cable("W11", "2.5", "G1.30", "S1.30");
        van.cable("W12", "1.5", "S1.15", "K1.86");
        van.cable("W13", "1.5", "K1.85", "G1.31");
        van.cable("W14", "2.5", "S1.50", "M1.50");
        van.cable("W15", "16", "G1.30", "M1.30");
        van.cable("W16", "16", "G2.B+", "G1.30");
        van.arrangement("central").device("F2", "box", "rear");
        van.way("F2", "1", "f10");
        van.way("F2", "3", "f5");
        van.device("E7", "lamp", "right");
        van.cable("W20", "16", "G1.30", "F2.30");
        van.cable("W21", "1.5", "F2.1", "E7.L+", "G1.31", "E7.L-");
        Case start = van.state("start");
        start.setIgnition(Ignition.START);
        van.on(start, "E1", "0.5");
        van.state("night").setAllOn(true);
        return van;
    }

    @Test
    void theSameModelGivesTheSamePlan() {
        TestVehicle van = van();
        assertEquals(van.plan(), van.plan());
        assertEquals(van.plan(), van().plan());
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void theOrderOfChildrenDoesNotChangeTheFigures(long seed) {
        TestVehicle van = van();
        String before = PlanText.of(van.plan());
        Random random = new Random(seed);
        shuffle(van.vehicle, random);
        shuffle(van.parts.library, random);
        assertEquals(before, PlanText.of(van.plan()));
    }

    /** Shuffles all children of all objects but the cores of cables, whose number is their name. */
    private static void shuffle(EObject object, Random random) {
        for (EReference reference : object.eClass().getEAllContainments()) {
            if (!reference.isMany()) {
                continue;
            }
            @SuppressWarnings("unchecked")
            EList<EObject> children = (EList<EObject>) object.eGet(reference);
            List<EObject> now = new ArrayList<>(children);
            now.forEach(child -> shuffle(child, random));
            if (!(object instanceof Cable)) {
                Collections.shuffle(now, random);
                ECollections.sort(children, (a, b) -> Integer.compare(now.indexOf(a), now.indexOf(b)));
            }
        }
    }

    @Test
    void assemblyChangesNothingInTheModel() {
        TestVehicle van = van();
        int terminals = van.vehicle.getDevices().stream().mapToInt(d -> d.getTerminals().size()).sum();
        List<Object> heard = new ArrayList<>();
        van.vehicle.eAdapters().add(new org.eclipse.emf.ecore.util.EContentAdapter() {
            @Override
            public void notifyChanged(org.eclipse.emf.common.notify.Notification notification) {
                super.notifyChanged(notification);
                heard.add(notification);
            }
        });
        van.plan();
        assertEquals(List.of(), heard);
        assertEquals(terminals, van.vehicle.getDevices().stream().mapToInt(d -> d.getTerminals().size()).sum());
    }

    @Test
    void everyRecordIsReachedByAnIdOfItsOwn() {
        Plan plan = van().plan();
        List<String> ids = new ArrayList<>();
        plan.devices().forEach(d -> ids.add(d.id()));
        plan.terminals().forEach(t -> ids.add(t.id()));
        plan.elements().forEach(e -> ids.add(e.id()));
        plan.conductors().forEach(c -> ids.add(c.id()));
        plan.bonds().forEach(b -> ids.add(b.id()));
        plan.runs().forEach(r -> ids.add(r.id()));
        plan.places().forEach(p -> ids.add(p.id()));
        assertEquals(ids.size(), ids.stream().distinct().count());
    }

    @Test
    void whatTheLimitsSayComesFromTheCommonPractice() {
        Practice practice = van().plan().practice();
        assertEquals("common", practice.name());
        assertTrue(practice.limit("drop-class.critical").source().startsWith("practice common: "));
    }

    @Test
    void anEmptyVehicleIsAPlan() {
        TestVehicle van = new TestVehicle();
        assertEquals(List.of(), van.plan().conductors());
        assertEquals(5, van.plan().cases().size());
    }

    @Test
    void twoThousandLoadsAreAssembledWhole() {
        int loads = 2000;
        Plan plan = ManyLoads.van(loads).plan();
        assertEquals(loads + 21, plan.devices().size());
        assertEquals(2 * loads + 20, plan.conductors().size());
        // load 1050 is the 50th on its rib, 100 mm apart, its box at the foot; slack 5 %, two tails of 150 mm
        Plan.Cable cable = PlanFind.byId(plan.cables(), Plan.Cable::id, "W1050");
        assertEquals(50, cable.path().size());
        assertEquals(5000 * 1.05 + 300, cable.lengthMm());
    }
}
