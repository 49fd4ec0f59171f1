// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.parts.Cell;
import org.loomwright.model.parts.Converter;
import org.loomwright.model.parts.Demand;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Diode;
import org.loomwright.model.parts.Driver;
import org.loomwright.model.parts.DropClass;
import org.loomwright.model.parts.LimitPoint;
import org.loomwright.model.parts.LoadLaw;
import org.loomwright.model.parts.PartsFactory;
import org.loomwright.model.parts.Regulated;
import org.loomwright.model.parts.RestState;
import org.loomwright.model.parts.Shunt;
import org.loomwright.model.parts.Threshold;
import org.loomwright.model.vehicle.ChosenBy;

class ElementAssemblerTest {
    private static final PartsFactory MAKE = PartsFactory.eINSTANCE;

    private final TestVehicle van = new TestVehicle();

    private <T extends Plan.Element> T element(String id, Class<T> type) {
        return type.cast(van.plan().elements().stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow());
    }

    private AssemblyProblem onlyProblem() {
        List<AssemblyProblem> problems = van.assembled().problems();
        assertEquals(1, problems.size(), problems::toString);
        return problems.get(0);
    }

    private boolean has(String id) {
        return van.assembled().plan().elements().stream().anyMatch(e -> e.id().equals(id));
    }

    private Demand demand() {
        return van.parts.devicePart("lamp").getDemands().get(0);
    }

    @Test
    void anElementIsNamedByDeviceAndElement() {
        van.arrangement("central").device("K1", "relay", null);
        Plan.Contact contact = element("central/K1#contact", Plan.Contact.class);
        assertEquals("contact", contact.name());
        assertEquals("central/K1#coil", van.plan().elements().get(contact.drivenBy()).id());
        assertEquals("central/K1.30", van.plan().terminals().get(contact.a()).id());
    }

    @Test
    void ofTwoDevicesOfOnePartEachHasItsOwnCoil() {
        van.device("K1", "relay", null);
        van.device("K2", "relay", null);
        assertEquals("K2#coil", van.plan().elements().get(element("K2#contact", Plan.Contact.class).drivenBy()).id());
    }

    @Test
    void aContactWithoutResistanceTakesThePractices() {
        van.device("S1", "switch", null);
        assertEquals(0.001, element("S1#contact", Plan.Contact.class).ohm());
        van.parts.devicePart("switch").getContacts().get(0).setMilliohm(TestParts.number("2.5"));
        assertEquals(0.0025, element("S1#contact", Plan.Contact.class).ohm());
    }

    @Test
    void aResistanceOfZeroIsToldAndReplaced() {
        van.device("S1", "switch", null);
        van.parts.devicePart("switch").getContacts().get(0).setMilliohm(TestParts.number("0"));
        assertEquals("S1#contact", onlyProblem().element());
        assertTrue(onlyProblem().message().contains("contact.closed of the practice stands in"), onlyProblem()::message);
        assertTrue(has("S1#contact"));
    }

    @Test
    void aSettingGoesBeforeThePart() {
        van.device("E1", "lamp", null);
        van.device("E2", "lamp", null);
        van.setting("E1", "load", "watts", "45");
        assertEquals(45, element("E1#load", Plan.Demand.class).watts());
        assertEquals(60, element("E2#load", Plan.Demand.class).watts());
    }

    @Test
    void aSettingOfTheSetVoltageReachesTheSource() {
        van.device("G2", "alternator", null);
        van.setting("G2", "source", "setV", "14.6");
        assertEquals(14.6, element("G2#source", Plan.Regulated.class).setV());
        assertEquals(0.002, element("G2#source", Plan.Regulated.class).droopOhm());
        assertEquals("engine", element("G2#source", Plan.Regulated.class).runsOn());
    }

    @Test
    void aSettingThatNamesNothingIsTold() {
        van.device("E1", "lamp", null);
        van.setting("E1", "load", "wats", "45");
        assertEquals("E1", onlyProblem().element());
        assertTrue(onlyProblem().message().contains("load.wats"), onlyProblem()::message);
    }

    @Test
    void thresholdsTakeTheirSettings() {
        DevicePart part = van.parts.device("cutout", DeviceKind.CUT_OUT, "30", "87", "31");
        Threshold threshold = MAKE.createThreshold();
        threshold.setName("low");
        threshold.setPlus(TestParts.terminal(part, "30"));
        threshold.setMinus(TestParts.terminal(part, "31"));
        threshold.setOnAt(TestParts.number("12.5"));
        threshold.setOffAt(TestParts.number("11.5"));
        part.getThresholds().add(threshold);
        TestParts.contact(part, "contact", "30", "87", Driver.THRESHOLD, RestState.OPEN).setThreshold(threshold);
        van.device("K1", "cutout", null);
        van.setting("K1", "low", "offAt", "11.8");
        Plan.Threshold low = element("K1#low", Plan.Threshold.class);
        assertEquals(11.8, low.offAt());
        assertEquals(12.5, low.onAt());
        assertEquals(-1, low.shunt());
        assertEquals("K1#low", van.plan().elements().get(element("K1#contact", Plan.Contact.class).drivenBy()).id());
    }

    @Test
    void aThresholdMaySenseAShunt() {
        DevicePart part = van.parts.device("guard", DeviceKind.MONITOR, "1", "2");
        Shunt shunt = TestParts.between(part, MAKE.createShunt(), "shunt", "1", "2");
        shunt.setMilliohm(TestParts.number("0.1"));
        part.getShunts().add(shunt);
        Threshold threshold = MAKE.createThreshold();
        threshold.setName("high");
        threshold.setShunt(shunt);
        threshold.setOnAt(TestParts.number("200"));
        threshold.setOffAt(TestParts.number("150"));
        part.getThresholds().add(threshold);
        van.device("B1", "guard", null);
        assertEquals("B1#shunt", van.plan().elements().get(element("B1#high", Plan.Threshold.class).shunt()).id());
        assertEquals(0.0001, element("B1#shunt", Plan.Shunt.class).ohm());
    }

    @Test
    void aContactWhoseCoilIsMissingIsToldAndLeftOut() {
        van.device("K1", "relay", null);
        van.parts.devicePart("relay").getContacts().get(0).setCoil(null);
        assertEquals("K1#contact", onlyProblem().element());
        assertFalse(has("K1#contact"));
        assertTrue(has("K1#coil"));
    }

    @Test
    void aBatteryBringsItsCurveRising() {
        van.device("G1", "battery", null);
        Plan.Cell cell = element("G1#cell", Plan.Cell.class);
        assertEquals(List.of(0.0, 0.5, 1.0), cell.chargePoints());
        assertEquals(List.of(11.8, 12.3, 12.8), cell.ocvV());
        assertEquals(0.004, cell.rMinOhm());
        assertEquals(0.012, cell.rMaxOhm());
    }

    @Test
    void ofSeveralTemperaturesTheCurveNearestTo25DegreesIsTaken() {
        van.device("G1", "battery", null);
        Cell cell = van.parts.devicePart("battery").getCells().get(0);
        cell.getOcv().get(0).setAtC(TestParts.number("0"));
        assertEquals(List.of(0.0, 0.5), element("G1#cell", Plan.Cell.class).chargePoints());
    }

    @Test
    void aBatteryWithoutCurveIsToldAndLeftOut() {
        van.device("G1", "battery", null);
        van.parts.devicePart("battery").getCells().get(0).getOcv().clear();
        assertEquals("G1#cell", onlyProblem().element());
        assertFalse(has("G1#cell"));
    }

    @Test
    void aBatteryWithOneResistanceHasItAlways() {
        van.device("G1", "battery", null);
        van.parts.devicePart("battery").getCells().get(0).setRMinMilliohm(null);
        assertEquals(0.012, element("G1#cell", Plan.Cell.class).rMinOhm());
        van.parts.devicePart("battery").getCells().get(0).setRMaxMilliohm(null);
        assertTrue(onlyProblem().message().contains("no resistance"), onlyProblem()::message);
    }

    @Test
    void resistancesTheWrongWayRoundAreToldAndTurned() {
        van.device("G1", "battery", null);
        van.parts.devicePart("battery").getCells().get(0).setRMinMilliohm(TestParts.number("20"));
        assertEquals("G1#cell", onlyProblem().element());
        Plan.Cell cell = (Plan.Cell) van.assembled().plan().elements().get(0);
        assertEquals(0.012, cell.rMinOhm());
        assertEquals(0.020, cell.rMaxOhm());
    }

    @Test
    void currentLimitsComeBySpeed() {
        van.device("G2", "alternator", null);
        Regulated source = van.parts.devicePart("alternator").getRegulators().get(0);
        for (String[] point : new String[][] {{"6000", "90"}, {"1500", "40"}}) {
            LimitPoint limit = MAKE.createLimitPoint();
            limit.setRpm(TestParts.number(point[0]));
            limit.setAmps(TestParts.number(point[1]));
            source.getLimits().add(limit);
        }
        assertEquals(List.of(1500.0, 6000.0),
                element("G2#source", Plan.Regulated.class).limits().stream().map(Plan.LimitPoint::rpm).toList());
        van.setting("G2", "source", "limitA", "55");
        assertEquals(List.of(), element("G2#source", Plan.Regulated.class).limits());
        assertEquals(55, element("G2#source", Plan.Regulated.class).limitA());
    }

    @Test
    void aSourceWithoutCurrentLimitIsTold() {
        van.device("G2", "alternator", null);
        van.parts.devicePart("alternator").getRegulators().get(0).setLimitA(null);
        assertEquals("G2#source", onlyProblem().element());
    }

    @Test
    void aConverterNeedsItsFigures() {
        DevicePart part = van.parts.device("converter", DeviceKind.CONVERTER, "IN+", "IN-", "OUT+", "OUT-");
        Converter converter = MAKE.createConverter();
        converter.setName("step");
        converter.setInPlus(TestParts.terminal(part, "IN+"));
        converter.setInMinus(TestParts.terminal(part, "IN-"));
        converter.setOutPlus(TestParts.terminal(part, "OUT+"));
        converter.setOutMinus(TestParts.terminal(part, "OUT-"));
        converter.setSetV(TestParts.number("13.6"));
        converter.setLimitA(TestParts.number("20"));
        part.getConverters().add(converter);
        van.device("T1", "converter", null);
        assertEquals(new AssemblyProblem("T1#step", "the part states no efficiency"), onlyProblem());
        converter.setEfficiency(TestParts.number("0.9"));
        converter.setOffV(TestParts.number("20"));
        Plan.Converter step = element("T1#step", Plan.Converter.class);
        assertEquals(0, step.standbyW());
        assertEquals(20, step.restartV());
        assertFalse(step.isolated());
        assertEquals("always", step.runsOn());
    }

    @Test
    void loadsWithoutFurtherFiguresHavePlainOnes() {
        van.device("E1", "lamp", null);
        Plan.Demand load = element("E1#load", Plan.Demand.class);
        assertEquals("power", load.law());
        assertEquals(1, load.efficiency());
        assertEquals(0, load.standbyA());
        assertEquals(1, load.formFactor());
        assertTrue(Double.isNaN(load.offV()) && Double.isNaN(load.restartV()) && Double.isNaN(load.minV()));
        assertFalse(load.canOverload() || load.critical());
    }

    @Test
    void resistanceStatedByPowerIsWorkedOut() {
        van.device("E1", "lamp", null);
        demand().setLaw(LoadLaw.RESISTANCE);
        assertEquals(12 * 12 / 60.0, element("E1#load", Plan.Demand.class).ohms());
        van.setting("E1", "load", "watts", "48");
        assertEquals(3, element("E1#load", Plan.Demand.class).ohms());
    }

    @Test
    void powerSetOnTheDeviceGoesBeforeThePartsResistance() {
        van.device("E1", "lamp", null);
        demand().setLaw(LoadLaw.RESISTANCE);
        demand().setOhms(TestParts.number("10"));
        assertEquals(10, element("E1#load", Plan.Demand.class).ohms());
        van.setting("E1", "load", "watts", "48");
        assertEquals(3, element("E1#load", Plan.Demand.class).ohms());
    }

    @Test
    void currentStatedByPowerIsWorkedOut() {
        van.device("E1", "lamp", null);
        demand().setLaw(LoadLaw.CURRENT);
        assertEquals(5, element("E1#load", Plan.Demand.class).amps());
    }

    @Test
    void theLawFollowsFromWhatIsStatedWhenNobodySays() {
        van.device("E1", "lamp", null);
        demand().unsetLaw();
        assertEquals("power", element("E1#load", Plan.Demand.class).law());
        demand().setWatts(null);
        demand().setAmps(TestParts.number("4"));
        assertEquals("current", element("E1#load", Plan.Demand.class).law());
    }

    @Test
    void aLoadWithoutFigureIsTold() {
        van.device("E1", "lamp", null);
        demand().setWatts(null);
        assertEquals(new AssemblyProblem("E1#load", "the part states no watts, nor amps with refV"), onlyProblem());
    }

    @Test
    void capacitanceComesInFarad() {
        van.device("E1", "lamp", null);
        demand().setInrushMicrofarad(TestParts.number("2200"));
        assertEquals(0.0022, element("E1#load", Plan.Demand.class).inrushFarad());
    }

    @Test
    void theDevicesDropClassGoesBeforeTheParts() {
        van.device("E1", "lamp", null).setDropClass(DropClass.CRITICAL);
        assertTrue(element("E1#load", Plan.Demand.class).critical());
        demand().setDropClass(DropClass.CRITICAL);
        van.device("E1").setDropClass(DropClass.OTHER);
        assertFalse(element("E1#load", Plan.Demand.class).critical());
        van.device("E1").unsetDropClass();
        assertTrue(element("E1#load", Plan.Demand.class).critical());
    }

    @Test
    void aDiodeNeedsItsForwardVoltage() {
        DevicePart part = van.parts.device("diode", DeviceKind.SPLIT_CHARGE, "IN", "A");
        Diode diode = TestParts.between(part, MAKE.createDiode(), "a", "IN", "A");
        part.getDiodes().add(diode);
        van.device("V1", "diode", null);
        assertEquals(new AssemblyProblem("V1#a", "the part states no forwardV"), onlyProblem());
    }

    @Test
    void aWayWithProtectorConductsFromFeedToOutlet() {
        van.device("F1", "box", null);
        van.way("F1", "2", "f10").setRatingBy(ChosenBy.SIZING);
        Plan plan = van.plan();
        Plan.Protector fuse = element("F1/2", Plan.Protector.class);
        assertEquals("F1/2", fuse.way());
        assertEquals("f10", fuse.part());
        assertEquals("fuse", fuse.kind());
        assertEquals("F1.30", plan.terminals().get(fuse.a()).id());
        assertEquals("F1.2", plan.terminals().get(fuse.b()).id());
        assertEquals(10, fuse.ratingA());
        assertEquals(0.001, fuse.ohm());
        assertEquals(0.0005, fuse.seatOhm());
        assertTrue(fuse.chosenBySizing());
        assertEquals(List.of(5.0, 10.0, 20.0), fuse.options().stream().map(Plan.ProtectorOption::ratingA).toList());
        assertEquals(1, plan.elements().size());
    }

    @Test
    void emptyAndSpareWaysConductNothing() {
        van.device("F1", "box", null);
        van.way("F1", "1", null);
        van.way("F1", "2", "f10").setSpare(true);
        assertEquals(List.of(), van.plan().elements());
    }

    @Test
    void aWayThatThePartLacksIsTold() {
        van.device("F1", "box", null);
        van.way("F1", "9", "f10");
        assertEquals(new AssemblyProblem("F1/9", "part box has no way 9; expected one of 1, 2, 3"), onlyProblem());
    }

    @Test
    void aDeviceWithoutPartIsToldOnceAndHasNothingInside() {
        van.device("E1", null, null);
        assertEquals(new AssemblyProblem("E1", "the device has no part; it is left out"), onlyProblem());
        Plan plan = van.assembled().plan();
        assertEquals("E1", plan.devices().get(0).id());
        assertNull(plan.devices().get(0).part());
        assertEquals(List.of(), plan.terminals());
    }
}
