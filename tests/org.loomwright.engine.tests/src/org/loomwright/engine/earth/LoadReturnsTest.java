// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.earth.ReturnRow.OtherWay;
import org.loomwright.engine.earth.ReturnRow.Way;
import org.loomwright.engine.fixture.PlanFixture;

/** Own return against structure return, load by load. */
class LoadReturnsTest {

    /** Two bodies with E1 of 50 A on the engine, and a lamp E2 of 4 A that returns into the engine too, 3 m from the battery. */
    private static PlanFixture twoLoads() {
        return EarthFixture.twoBodies().earthPoint("XE7", "engine").load("E2", "current", 4, 12)
                .cable("W5", 2.5, 3, "G1.30", "E2.L+").cable("W6", 2.5, 0.5, "E2.L-", "XE7");
    }

    private static ReturnRow row(EarthTable table, String load) {
        return table.returns().stream().filter(each -> table.plan().elements().get(each.demand()).id().equals(load + "#load"))
                .findFirst().orElseThrow();
    }

    @Test
    void whatIsSharedMovesTheMinusOfTheOther() {
        EarthTable table = EarthFixture.study(twoLoads());
        ReturnRow lamp = row(table, "E2");
        assertEquals(Way.STRUCTURE, lamp.way());
        // shared: the minus cable with its ends, three earth points, the strap; not the earth points of the loads
        double sharedOhm = table.cases().get(0).bodyV().get(1) / 54;
        assertEquals(sharedOhm, lamp.sharedOhm(), 1e-9);
        assertEquals("E1#load", table.plan().elements().get(lamp.sharedWith()).id());
        assertEquals(50 * sharedOhm, lamp.sharedV(), 1e-6);
        assertEquals(50 * sharedOhm, lamp.othersV(), 1e-6);
        assertEquals(lamp.returnV(), lamp.ownV() + lamp.othersV(), 1e-9);
        assertEquals(4 * lamp.selfOhm(), lamp.ownV(), 1e-9);
        assertEquals(List.of("W6", "XE7", "XE3", "WE1", "XE2", "XE1", "W1"), lamp.path());
    }

    @Test
    void ownReturnBesideTheSupply() {
        OtherWay other = row(EarthFixture.study(twoLoads()), "E2").other();
        assertEquals(Way.OWN, other.way());
        assertEquals(3000, other.lengthMm());
        assertEquals(2.5, other.sectionMm2());
        // 2.5 mm2 x 3 m x 8.89 g/cm3, and 0.5 m of stub that it saves
        assertEquals(2.5 * 3000 * 8.89e-6, other.copperKg(), 1e-12);
        assertEquals(2.5 * 2500 * 8.89e-6, other.moreCopperKg(), 1e-12);
        // 3 m of 2.5 mm2 have 21.6 milliohm cold, and two ends of 0.2
        assertEquals(4 * 0.022, other.returnV(), 0.004);
        assertTrue(other.returnV() > 4 * 0.022, "warm copper has more than cold");
    }

    @Test
    void structureReturnToTheNearestEarthPoint() {
        PlanFixture own = EarthFixture.twoBodies().zone("in", 0, 40).place("lamp", 0, 0, 0, "in").place("near", 400, 300, 0, "in")
                .place("far", 5000, 0, 0, "in").at("XE2", "near").at("XE1", "far").at("E2", "lamp").load("E2", "current", 4, 12)
                .cable("W5", 2.5, 3, "G1.30", "E2.L+").cable("W6", 2.5, 3, "E2.L-", "G1.31");
        ReturnRow row = row(EarthFixture.study(own), "E2");
        assertEquals(Way.OWN, row.way());
        assertEquals(0, row.othersV(), 1e-9);
        assertEquals(Way.STRUCTURE, row.other().way());
        assertEquals("XE2", row.other().at());
        // 500 mm, 5 % of slack, two tails of 150 mm
        assertEquals(500 * 1.05 + 300, row.other().lengthMm(), 1e-9);
        assertTrue(row.other().moreCopperKg() < 0, "a short stub saves copper");
    }

    @Test
    void practiceAsksForAnOwnReturnAboveItsThreshold() {
        assertTrue(row(EarthFixture.study(twoLoads()), "E1").asked());
        assertFalse(row(EarthFixture.study(twoLoads()), "E2").asked());
        assertFalse(row(EarthFixture.study(twoLoads().limit("own-return.threshold", 50)), "E1").asked());
        assertTrue(row(EarthFixture.study(twoLoads().limit("own-return.threshold", 49.99)), "E1").asked());
        assertFalse(row(EarthFixture.study(twoLoads().set("E1", "existing", true)), "E1").asked());
    }

    @Test
    void forbiddenStructureIsNoOtherWay() {
        PlanFixture own = EarthFixture.twoBodies().choice("return-policy", "forbidden").load("E2", "current", 4, 12)
                .cable("W5", 2.5, 3, "G1.30", "E2.L+").cable("W6", 2.5, 3, "E2.L-", "G1.31");
        ReturnRow row = row(EarthFixture.study(own), "E2");
        assertFalse(row.permitted());
        assertNull(row.other());
    }

    @Test
    void starterReturnsByItsCase() {
        EarthTable table = EarthFixture.study(EarthFixture.starting());
        ReturnRow row = table.returns().stream()
                .filter(each -> table.plan().elements().get(each.demand()).id().equals("M1#motor")).findFirst().orElseThrow();
        assertEquals(Way.CASE, row.way());
        assertEquals("start", row.caseName());
    }
}
