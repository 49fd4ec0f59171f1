// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.CaseKind;
import org.loomwright.model.vehicle.DemandState;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Setting;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.Way;

class VehicleRulesTest {
    private final Sketch sketch = new Sketch();

    private List<Violation> found() {
        return VehicleRules.check(sketch.vehicle);
    }

    private void expect(String rule, EObject element) {
        List<Violation> found = found();
        assertTrue(found.stream().anyMatch(v -> v.rule().equals(rule) && v.element() == element),
                () -> rule + " expected, found " + found.stream().map(v -> v.rule() + ": " + v.message()).toList());
        assertTrue(found.stream().allMatch(v -> v.expected() != null && !v.expected().isBlank()));
    }

    @Test
    void aSoundVehicleHasNoViolation() {
        sketch.cable("W1", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(sketch.button, "1"));
        assertEquals(List.of(), found());
    }

    @Test
    void aNameOutOfTheGrammarIsReported() {
        sketch.place.setName("engine bay");
        expect("name-grammar", sketch.place);
    }

    @Test
    void aDeviceNameWithADotIsReportedBecauseTheDotPartsTheTerminal() {
        sketch.button.setName("S1.2");
        expect("name-grammar", sketch.button);
    }

    @Test
    void twoChildrenOfOneContainerWithTheSameNameAreReportedWhateverTheirKind() {
        Cable cable = sketch.cable("K1", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(sketch.button, "1"));
        expect("name-unique", cable);
    }

    @Test
    void theSameNameInTwoArrangementsIsFine() {
        sketch.vehicle.getArrangements().add(org.eclipse.emf.ecore.util.EcoreUtil.copy(sketch.arrangement));
        sketch.vehicle.getArrangements().get(1).setName("other");
        assertEquals(List.of(), found());
    }

    @Test
    void absurdAndNegativeValuesAreReportedWithTheirRange() {
        Cable cable = sketch.cable("W1", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(sketch.button, "1"));
        cable.setLengthMm(new BigDecimal("-5"));
        expect("range", cable);
        cable.setLengthMm(new BigDecimal("99999999"));
        expect("range", cable);
        cable.setLengthMm(new BigDecimal("200000"));
        assertEquals(List.of(), found(), "the bound itself can be meant");
    }

    @Test
    void aMissingRequiredValueIsReported() {
        sketch.place.setXMm(null);
        expect("required", sketch.place);
    }

    @Test
    void aDeviceIsInExactlyOnePlace() {
        sketch.button.setPlace(null);
        expect("device-place", sketch.button);
        sketch.button.setPlace(sketch.place);
        sketch.button.setMountedIn(sketch.relay);
        expect("device-place", sketch.button);
    }

    @Test
    void devicesMountedInEachOtherAreReported() {
        sketch.button.setPlace(null);
        sketch.relay.setPlace(null);
        sketch.button.setMountedIn(sketch.relay);
        sketch.relay.setMountedIn(sketch.button);
        expect("device-mounting", sketch.relay);
    }

    @Test
    void aTerminalThePartDoesNotHaveIsReportedWithTheOnesItHas() {
        Cable cable = sketch.cable("W1", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(sketch.button, "7"));
        expect("terminal-unknown", cable.getCores().get(0));
        assertTrue(found().get(0).expected().contains("1, 2"));
    }

    @Test
    void aCoreThatJoinsPlusWithMinusIsNoticedAndDoesNotBlock() {
        Cable cable = sketch.cable("W1", Sketch.terminal(sketch.button, "1"), Sketch.terminal(sketch.battery, "31"));
        expect("wrong-net", cable.getCores().get(0));
        assertTrue(found().stream().noneMatch(Violation::blocking));
    }

    @Test
    void batteriesInSeriesAreNoWrongNet() {
        Device second = sketch.device("G2", sketch.batteryPart);
        sketch.cable("W1", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(second, "31"));
        assertEquals(List.of(), found());
    }

    @Test
    void anEndThatGoesNowhereIsReportedUnlessTheCoreIsSpare() {
        Cable cable = sketch.cable("W1", Sketch.terminal(sketch.battery, "30"), null);
        expect("core-ends", cable.getCores().get(0));
        cable.getCores().get(0).setSpare(true);
        assertEquals(List.of(), found());
    }

    @Test
    void aSectionThatIsNotOnOfferIsReported() {
        Cable cable = sketch.cable("W1", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(sketch.button, "1"));
        cable.setSectionMm2(new BigDecimal("2.50"));
        assertEquals(List.of(), found(), "2.50 is 2.5");
        cable.setSectionMm2(BigDecimal.valueOf(7));
        expect("section-offer", cable);
    }

    @Test
    void aPathWithAGapIsReported() {
        Place far = place("far");
        Place farther = place("farther");
        Run one = run("R1", sketch.place, far);
        Run other = run("R2", farther, place("end"));
        Cable cable = sketch.cable("W1", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(sketch.button, "1"));
        cable.getPath().add(one);
        cable.getPath().add(other);
        expect("path-gap", cable);
        run("R3", far, farther);
        cable.getPath().add(1, sketch.vehicle.getRuns().get(2));
        assertEquals(List.of(), found());
    }

    @Test
    void moreCoresThanThePartHasAreReported() {
        Cable cable = sketch.cable("W1", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(sketch.button, "1"));
        cable.getCores().add(org.eclipse.emf.ecore.util.EcoreUtil.copy(cable.getCores().get(0)));
        expect("cable-cores", cable);
    }

    @Test
    void aWayThatThePartDoesNotHaveIsReported() {
        Way way = VehicleFactory.eINSTANCE.createWay();
        way.setName("9");
        sketch.relay.getWays().add(way);
        expect("way-unknown", way);
    }

    @Test
    void aSettingOfAnElementOrQuantityThatIsNotThereIsReported() {
        Setting setting = VehicleFactory.eINSTANCE.createSetting();
        setting.setElement("nothing");
        setting.setQuantity("pickUpV");
        setting.setValue(BigDecimal.ONE);
        sketch.relay.getSettings().add(setting);
        expect("setting-element", setting);
        setting.setElement("coil");
        assertEquals(List.of(), found());
        setting.setQuantity("watts");
        expect("setting-quantity", setting);
    }

    @Test
    void aCaseTurnsOnOnlyLoadsAndGivesBothTimesOfADuty() {
        Case state = VehicleFactory.eINSTANCE.createCase();
        state.setName("night");
        state.setKind(CaseKind.PARKED);
        DemandState demand = VehicleFactory.eINSTANCE.createDemandState();
        demand.setDevice(sketch.button);
        demand.setOnS(BigDecimal.TEN);
        state.getDemands().add(demand);
        sketch.vehicle.getCases().add(state);
        expect("case-demand", demand);
        expect("case-duty", demand);
    }

    @Test
    void aRelayFedOnlyThroughItsOwnContactIsReported() {
        sketch.cable("W1", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(sketch.relay, "30"));
        sketch.cable("W2", Sketch.terminal(sketch.relay, "87"), Sketch.terminal(sketch.relay, "86"));
        sketch.cable("W3", Sketch.terminal(sketch.relay, "85"), Sketch.terminal(sketch.battery, "31"));
        expect("control-loop", sketch.relay);
    }

    @Test
    void aLatchingRelayWithAStartButtonIsFine() {
        sketch.cable("W1", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(sketch.relay, "30"));
        sketch.cable("W2", Sketch.terminal(sketch.relay, "87"), Sketch.terminal(sketch.relay, "86"));
        sketch.cable("W3", Sketch.terminal(sketch.relay, "85"), Sketch.terminal(sketch.battery, "31"));
        sketch.cable("W4", Sketch.terminal(sketch.battery, "30"), Sketch.terminal(sketch.button, "1"));
        sketch.cable("W5", Sketch.terminal(sketch.button, "2"), Sketch.terminal(sketch.relay, "86"));
        assertEquals(List.of(), found());
    }

    @Test
    void aVehicleWithoutAVoltageLevelIsReported() {
        sketch.vehicle.getDomains().clear();
        expect("vehicle-domain", sketch.vehicle);
    }

    private Place place(String name) {
        Place place = org.eclipse.emf.ecore.util.EcoreUtil.copy(sketch.place);
        place.setName(name);
        sketch.vehicle.getPlaces().add(place);
        return place;
    }

    private Run run(String name, Place from, Place to) {
        Run run = VehicleFactory.eINSTANCE.createRun();
        run.setName(name);
        run.setFrom(from);
        run.setTo(to);
        sketch.vehicle.getRuns().add(run);
        return run;
    }
}
