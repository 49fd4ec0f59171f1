// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.fixture.PlanIndex;
import org.loomwright.engine.flow.Network;

class NetworkBuilderTest {

    private static CaseNetwork build(Plan plan) {
        return NetworkBuilder.build(plan, plan.cases().get(0), NetworkOptions.running(null));
    }

    private static Network.Item item(Plan plan, CaseNetwork at, String element) {
        int item = at.elementItem()[PlanIndex.element(plan, element)];
        return item < 0 ? null : at.network().items().get(item);
    }

    private static Network.Item item(PlanFixture fixture, String element) {
        Plan plan = fixture.build();
        return item(plan, build(plan), element);
    }

    private static PlanFixture battery() {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.016, 100);
    }

    @Test
    void terminalsOfOneBarAreOneNode() {
        Plan plan = battery().negativeBar("X1", 3).build();
        CaseNetwork at = build(plan);
        int stud = at.terminalNode()[PlanIndex.terminal(plan, "X1.31")];
        assertEquals(stud, at.terminalNode()[PlanIndex.terminal(plan, "X1.N3")]);
        assertNotEquals(stud, at.terminalNode()[PlanIndex.terminal(plan, "G1.31")]);
        assertEquals(at.terminalNode()[PlanIndex.terminal(plan, "G1.31")], at.network().reference());
    }

    @Test
    void barsOfTheSameNameInTwoDevicesStayApart() {
        Plan plan = battery().negativeBar("X1", 1).negativeBar("X2", 1).build();
        CaseNetwork at = build(plan);
        assertNotEquals(at.terminalNode()[PlanIndex.terminal(plan, "X1.31")],
                at.terminalNode()[PlanIndex.terminal(plan, "X2.31")]);
    }

    @Test
    void onlyAConverterThatIsNotIsolatedJoinsItsMinuses() {
        for (boolean isolated : new boolean[] {true, false}) {
            Plan plan = battery().converter("T1", 24, 10).set("T1#converter", "isolated", isolated).build();
            CaseNetwork at = build(plan);
            assertEquals(!isolated, at.terminalNode()[PlanIndex.terminal(plan, "T1.IN-")] == at.terminalNode()[PlanIndex
                    .terminal(plan, "T1.OUT-")]);
        }
    }

    @Test
    void conductorsHaveTheirLargestResistanceAndTheirJoints() {
        Plan plan = battery().load("E1", "current", 1, 12).cable("W1", 2.5, 4, "G1.30", "E1.L+").build();
        CaseNetwork at = build(plan);
        Network.Wire wire = (Network.Wire) at.network().items().get(at.conductorItem()[0]);
        assertEquals(4 * 0.018 / 2.5, wire.r20Ohm(), 1e-15);
        assertEquals(0.0004, wire.jointsOhm(), 1e-15);
        assertEquals(25, wire.heat().ambientC());
    }

    @Test
    void aColdCaseHasNominalWiresSmallestJointsAndColdCoils() {
        Plan plan = battery().relay("K1").body("chassis").earthPoint("XE1", "chassis").cable("W1", 2.5, 4, "G1.30", "K1.86")
                .cable("W2", 2.5, 4, "K1.85", "XE1").state("cold", c -> c.coldMin().battery("G1", 0.5, -20, 1)).build();
        CaseNetwork at = build(plan);
        Network.Wire wire = (Network.Wire) at.network().items().get(at.conductorItem()[0]);
        assertEquals(4 * 0.0175 / 2.5, wire.r20Ohm(), 1e-15);
        assertEquals(2 * 0.02e-3, wire.jointsOhm(), 1e-15);
        assertNull(wire.heat());
        assertEquals(85, ((Network.Resistor) item(plan, at, "K1#coil")).ohm(), 1e-12);
        assertEquals(8, ((Network.ByCoil) ((Network.Switch) item(plan, at, "K1#contact")).drive()).pickUpV(), 1e-12);
        assertEquals(0.004, ((Network.Emf) item(plan, at, "G1#cell")).ohm(), 1e-15);
        int earth = at.earthItem()[PlanIndex.terminal(plan, "XE1")];
        assertEquals(0.02e-3, ((Network.Resistor) at.network().items().get(earth)).ohm(), 1e-15);
    }

    @Test
    void aWarmCoilNeedsAsMuchMoreVoltageAsItsResistanceGrew() {
        Plan plan = battery().relay("K1").cable("W1", 1, 1, "G1.30", "K1.86").state("hot", c -> c.ambient(60)).build();
        CaseNetwork at = build(plan);
        double factor = 1 + 0.00393 * (60 + 40 - 20);
        assertEquals(85 * factor, ((Network.Resistor) item(plan, at, "K1#coil")).ohm(), 1e-9);
        Network.ByCoil drive = (Network.ByCoil) ((Network.Switch) item(plan, at, "K1#contact")).drive();
        assertEquals(8 * factor, drive.pickUpV(), 1e-9);
        assertEquals(2 * factor, drive.dropOutV(), 1e-9);
        assertEquals(at.elementItem()[PlanIndex.element(plan, "K1#coil")], drive.coil());
    }

    @Test
    void bodiesJoinThroughEarthPointsSeamsBondsAndCases() {
        Plan plan = battery().body("chassis").body("engine").set("chassis", "ohm", 0.0002)
                .bodyLink("L1", "chassis", "engine", 0.3)
                .earthPoint("XE1", "chassis").earthPoint("XE2", "engine").bond("WE1", "XE1", "XE2", 0.5)
                .alternator("G2", 14.4, 100, "engine").build();
        CaseNetwork at = build(plan);
        assertEquals(0.0003 + 0.0001, ((Network.Resistor) at.network().items().get(at.linkItem()[0])).ohm(), 1e-15);
        assertEquals(0.0005, ((Network.Resistor) at.network().items().get(at.bondItem()[0])).ohm(), 1e-15);
        Network.Resistor earth = (Network.Resistor) at.network().items().get(at.earthItem()[PlanIndex.terminal(plan, "XE1")]);
        assertEquals(0.0002 + 0.0001, earth.ohm(), 1e-15);
        assertEquals(at.bodyNode()[0], earth.b());
        Network.Resistor metal = (Network.Resistor) at.network().items().get(at.caseItem()[PlanIndex.terminal(plan, "G2.case")]);
        assertEquals(0.0005, metal.ohm(), 1e-15);
        assertEquals(at.bodyNode()[1], metal.b());
    }

    @Test
    void contactsFollowTheirDriver() {
        assertDriven("ignition", "off", false, false);
        assertDriven("ignition", "accessory", false, false);
        assertDriven("ignition", "on", false, true);
        assertDriven("ignition", "start", false, true);
        assertDriven("accessory", "accessory", false, true);
        assertDriven("accessory", "on", false, true);
        assertDriven("accessory", "start", false, false);
        assertDriven("start", "on", false, false);
        assertDriven("start", "start", false, true);
        assertDriven("engine", "on", false, false);
        assertDriven("engine", "on", true, true);
    }

    private static void assertDriven(String driver, String ignition, boolean engine, boolean closed) {
        PlanFixture fixture = battery().drivenSwitch("S1", driver).state("s", c -> {
            if (engine) {
                c.engine(1000);
            }
            c.ignition(ignition);
        });
        assertEquals(new Network.Fixed(closed), ((Network.Switch) item(fixture, "S1#contact")).drive(), driver + " " + ignition);
    }

    @Test
    void handContactsRestUnlessTheCaseMovesThem() {
        assertEquals(new Network.Fixed(true), ((Network.Switch) item(battery().handSwitch("S1", true), "S1#contact")).drive());
        PlanFixture moved = battery().handSwitch("S1", true).state("s", c -> c.position("S1", false));
        assertEquals(new Network.Fixed(false), ((Network.Switch) item(moved, "S1#contact")).drive());
    }

    @Test
    void aThresholdDrivesItsContact() {
        Plan plan = battery().cutOut("Q1", 12.5, 11.5).build();
        CaseNetwork at = build(plan);
        Network.Comparator comparator = (Network.Comparator) item(plan, at, "Q1#threshold");
        assertEquals(at.terminalNode()[PlanIndex.terminal(plan, "Q1.30")], comparator.plus());
        assertEquals(new Network.ByComparator(at.elementItem()[PlanIndex.element(plan, "Q1#threshold")], false),
                ((Network.Switch) item(plan, at, "Q1#contact")).drive());
    }

    @Test
    void openCircuitVoltageFollowsTheCharge() {
        assertEquals(12.8, cell(1, 25, 0).volt(), 1e-12);
        assertEquals(12.05, cell(0.25, 25, 0).volt(), 1e-12);
        assertEquals(11.8, cell(0, 25, 0).volt(), 1e-12);
    }

    @Test
    void innerResistanceGoesFromItsSmallestToItsLargestAndRisesWithEachCause() {
        assertEquals(0.004, cell(1, 25, 0).ohm(), 1e-12);
        assertEquals(0.016, cell(0.5, -20, 1).ohm(), 1e-12);
        assertTrue(cell(0.8, 25, 0).ohm() > cell(1, 25, 0).ohm());
        assertTrue(cell(1, 0, 0).ohm() > cell(1, 25, 0).ohm());
        assertTrue(cell(1, 25, 0.5).ohm() > cell(1, 25, 0).ohm());
        assertEquals(0.016, cell(0.1, -40, 1).ohm(), 1e-12);
        assertEquals(0.004, cell(1, 50, 0).ohm(), 1e-12);
    }

    private static Network.Emf cell(double charge, double temperatureC, double age) {
        return (Network.Emf) item(battery().state("s", c -> c.battery("G1", charge, temperatureC, age)), "G1#cell");
    }

    private static double chargeOhm(PlanFixture fixture) {
        return ((Network.Emf) item(fixture.state("half", c -> c.battery("G1", 0.5, 25, 0)), "G1#cell")).chargeOhm();
    }

    @Test
    void aLeadBatteryTakesItsShareOfTheCapacityAtItsAbsorptionVoltage() {
        // 6 x 2.4 V, 12.3 V half charged, 0.25 x 100 A
        assertEquals((14.4 - 12.3) / 25, chargeOhm(battery()), 1e-12);
        assertEquals((14.4 - 12.8) / 25, cell(1, 25, 0).chargeOhm(), 1e-12);
        assertEquals((14.4 - 12.3) / 20, chargeOhm(battery().limit("battery.lead-acceptance", 0.2)), 1e-12);
        assertEquals((15 - 12.3) / 25, chargeOhm(battery().limit("battery.lead-absorption", 2.5)), 1e-12);
        for (String lead : List.of("flooded", "agm", "gel")) {
            assertEquals((14.4 - 12.3) / 25, chargeOhm(battery().set("G1#cell", "chemistry", lead)), 1e-12);
        }
    }

    @Test
    void itTakesWhatItsPartPermitsWhereThatIsStated() {
        assertEquals((14.4 - 12.3) / 45, chargeOhm(battery().set("G1#cell", "chargeMaxA", 45.0)), 1e-12);
    }

    @Test
    void theAbsorptionVoltageGoesByTheNumberOfCells() {
        PlanFixture six = new PlanFixture().battery("G1", 6, 0.002, 0.008, 200);
        assertEquals((7.2 - 6.15) / 50, chargeOhm(six), 1e-12);
        PlanFixture twentyFour = new PlanFixture().battery("G1", 24, 0.004, 0.016, 100);
        assertEquals((28.8 - 24.6) / 25, chargeOhm(twentyFour), 1e-12);
    }

    @Test
    void chargingMeetsNoLessResistanceThanDischarging() {
        double ohm = ((Network.Emf) item(battery().state("half", c -> c.battery("G1", 0.5, 25, 0)), "G1#cell")).ohm();
        assertEquals(ohm, chargeOhm(battery().set("G1#cell", "capacityAh", 1e5)), 1e-15);
        assertEquals(ohm, chargeOhm(battery().set("G1#cell", "ocvV", List.of(14.5, 14.6, 14.7))), 1e-15);
        assertEquals(ohm, chargeOhm(battery().set("G1#cell", "capacityAh", Double.NaN)), 1e-15);
    }

    @Test
    void otherChemistriesHaveOneResistanceForBothDirections() {
        for (String other : new String[] {"liFePO4", null}) {
            PlanFixture fixture = battery().set("G1#cell", "chemistry", other).set("G1#cell", "chargeMaxA", 1.0)
                    .state("half", c -> c.battery("G1", 0.5, 25, 0));
            Network.Emf emf = (Network.Emf) item(fixture, "G1#cell");
            assertEquals(emf.ohm(), emf.chargeOhm());
        }
    }

    @Test
    void aBatteryWithoutResistanceIsNamed() {
        PlanFixture fixture = battery().set("G1#cell", "rMinOhm", Double.NaN).set("G1#cell", "rMaxOhm", Double.NaN);
        String message = assertThrows(IllegalArgumentException.class, () -> item(fixture, "G1#cell")).getMessage();
        assertTrue(message.contains("G1#cell"), message);
    }

    @Test
    void anAlternatorDeliversWhileTheEngineRunsAndByItsSpeed() {
        List<Plan.LimitPoint> limits = List.of(new Plan.LimitPoint(800, 20, 40), new Plan.LimitPoint(2000, 20, 100),
                new Plan.LimitPoint(800, 80, 30), new Plan.LimitPoint(2000, 80, 70));
        assertEquals(0, regulator(battery().alternator("G2", 14.4, 100).state("s", c -> c.ambient(20))).limitA());
        assertEquals(100, regulator(battery().alternator("G2", 14.4, 100).state("s", c -> c.engine(800))).limitA());
        assertEquals(70, limitAt(limits, 1400, 20), 1e-9);
        assertEquals(40, limitAt(limits, 500, 0), 1e-9);
        assertEquals(70, limitAt(limits, 3000, 120), 1e-9);
        assertEquals((70 + 50) / 2.0, limitAt(limits, 1400, 50), 1e-9);
        assertEquals(100, limitAt(List.of(new Plan.LimitPoint(800, Double.NaN, 50), new Plan.LimitPoint(1600, Double.NaN, 100)),
                1600, 55), 1e-9);
    }

    private static double limitAt(List<Plan.LimitPoint> limits, double rpm, double ambientC) {
        return regulator(battery().alternator("G2", 14.4, 100).set("G2#source", "limits", limits)
                .state("s", c -> c.engine(rpm).ambient(ambientC))).limitA();
    }

    @Test
    void setVoltageFollowsTheAmbient() {
        PlanFixture fixture = battery().alternator("G2", 14.4, 100).set("G2#source", "temperatureVPerK", -0.01)
                .state("s", c -> c.engine(2000).ambient(65));
        assertEquals(14.4 - 0.4, regulator(fixture).setV(), 1e-12);
    }

    @Test
    void aSenseTerminalWithoutAWireSensesAtHome() {
        PlanFixture fixture = battery().device("G2", "alternator", "B+:plus", "B-:minus", "S:sense")
                .source("G2", "B+", "B-", 14.4, 100, "always");
        int sense = PlanIndex.terminal(fixture.build(), "G2.S");
        fixture.set("G2#source", "senseA", sense);
        Network.Regulator own = regulator(fixture);
        assertEquals(own.a(), own.senseA());
        fixture.cable("W1", 1, 1, "G2.S", "G1.30");
        Network.Regulator wired = regulator(fixture);
        assertNotEquals(wired.a(), wired.senseA());
    }

    private static Network.Regulator regulator(PlanFixture fixture) {
        return (Network.Regulator) item(fixture, "G2#source");
    }

    @Test
    void loadsFollowTheirLawAndTheirShare() {
        assertEquals(60, load("power", 60, 1).value(), 1e-12);
        assertEquals(30, load("power", 60, 0.5).value(), 1e-12);
        assertEquals(5, load("current", 5, 1).value(), 1e-12);
        assertEquals(Network.LoadLaw.RESISTANCE, load("resistance", 2, 0.5).law());
        assertEquals(4, load("resistance", 2, 0.5).value(), 1e-12);
    }

    private static Network.Load load(String law, double value, double share) {
        return (Network.Load) item(battery().load("E1", law, value, 13.5).state("s", c -> c.share("E1", share)), "E1#load");
    }

    @Test
    void anInverterTakesItsOutputOverItsEfficiencyAndWhatItTakesIdle() {
        PlanFixture fixture = battery().load("E1", "power", 900, 12).set("E1#load", "efficiency", 0.9)
                .set("E1#load", "noLoadW", 12.0);
        assertEquals(1012, ((Network.Load) item(fixture, "E1#load")).value(), 1e-9);
    }

    @Test
    void aResistanceMayBeStatedByItsPower() {
        PlanFixture fixture = battery().load("E1", "resistance", Double.NaN, 13.5).set("E1#load", "watts", 55.0);
        assertEquals(13.5 * 13.5 / 55, ((Network.Load) item(fixture, "E1#load")).value(), 1e-12);
    }

    @Test
    void whatIsOffDrawsItsStandbyCurrent() {
        Plan plan = battery().load("E1", "power", 60, 12).set("E1#load", "standbyA", 0.02)
                .state("off", c -> c.ambient(20)).build();
        CaseNetwork at = build(plan);
        assertNull(item(plan, at, "E1#load"));
        Network.Load standby = (Network.Load) at.network().items().get(at.standbyItem()[PlanIndex.element(plan, "E1#load")]);
        assertEquals(Network.LoadLaw.CURRENT, standby.law());
        assertEquals(0.02, standby.value());
    }

    @Test
    void theBaseHasDutyLoadsAtStandby() {
        Plan plan = battery().load("E1", "power", 60, 12).set("E1#load", "standbyA", 0.02)
                .state("d", c -> c.duty("E1", 5, 60)).build();
        CaseNetwork base = NetworkBuilder.build(plan, plan.cases().get(0),
                NetworkOptions.running(null).variant(NetworkOptions.Variant.BASE));
        assertNull(item(plan, base, "E1#load"));
        assertTrue(base.standbyItem()[PlanIndex.element(plan, "E1#load")] >= 0);
        assertTrue(build(plan).elementItem()[PlanIndex.element(plan, "E1#load")] >= 0);
    }

    @Test
    void whatIsLeftOutIsNotThere() {
        Plan plan = battery().body("chassis").earthPoint("XE1", "chassis").earthPoint("XE2", "chassis")
                .bond("WE1", "XE1", "XE2", 1)
                .cable("W1", 6, 1, "G1.31", "XE1").build();
        CaseNetwork at = NetworkBuilder.build(plan, plan.cases().get(0),
                NetworkOptions.running(null).without("WE1").without("W1").without("G1#cell"));
        assertEquals(-1, at.bondItem()[0]);
        assertEquals(-1, at.conductorItem()[0]);
        assertNull(item(plan, at, "G1#cell"));
    }

    @Test
    void whatConnectsANodeWithItselfGivesNoItem() {
        Plan plan = battery().negativeBar("X1", 2).cable("W1", 6, 1, "X1.N1", "X1.N2").build();
        assertEquals(-1, build(plan).conductorItem()[0]);
    }

    @Test
    void aConductorWithoutSectionIsItsJoints() {
        Plan plan = battery().load("E1", "current", 1, 12).cable("W1", 2.5, 4, "G1.30", "E1.L+")
                .set("W1@1", "r20MaxOhmPerM", Double.NaN).build();
        CaseNetwork at = build(plan);
        assertEquals(0.0004, ((Network.Resistor) at.network().items().get(at.conductorItem()[0])).ohm(), 1e-15);
    }

    @Test
    void everyItemIsFoundFromThePlanAtMostOnce() {
        Plan plan = battery().body("chassis").earthPoint("XE1", "chassis").relay("K1").cutOut("Q1", 12.5, 11.5)
                .converter("T1", 24, 5)
                .load("E1", "power", 60, 12).box("F1", 2).fuse("F1", "1", 10).cable("W1", 6, 1, "G1.30", "F1.30").build();
        CaseNetwork at = build(plan);
        boolean[] found = new boolean[at.network().items().size()];
        for (int[] items : new int[][] {at.conductorItem(), at.elementItem(), at.standbyItem(), at.bondItem(), at.linkItem(),
                at.earthItem(), at.caseItem()}) {
            for (int item : items) {
                if (item >= 0) {
                    assertTrue(!found[item], () -> at.network().items().get(item).id());
                    found[item] = true;
                }
            }
        }
        for (boolean each : found) {
            assertTrue(each);
        }
    }
}
