// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import org.loomwright.engine.fixture.PlanFixture;

/**
 * A sound vehicle: starter battery, starter and alternator on the engine; a house battery with shunt, isolator, charging
 * relay, fuse box, negative bar, a switched light over a relay, a fridge, and a gas alarm that stays live.
 */
final class SoundVan {
    private SoundVan() {
    }

    static PlanFixture fixture() {
        PlanFixture van = new PlanFixture().domain("start", 12, "G1.30").domain("house", 12, "G10.30")
                .zone("engine", -20, 80).zone("inside", -10, 45)
                .place("bay", 4000, 0, 700, "engine").place("seat", 2500, 0, 500, "inside").place("rear", 500, 0, 900, "inside")
                .body("chassis").body("block")
                .battery("G1", 12, 0.004, 0.009, 90).alternator("G2", 14.3, 90, "block").starter("M1", 0.04, "block")
                .set("M1#contact", "continuousA", 300.0).set("M1#contact", "makeA", 800.0).set("M1#contact", "breakA", 600.0)
                .earthPoint("XE1", "chassis").earthPoint("XE2", "chassis").earthPoint("XE3", "block").earthPoint("XE4", "chassis")
                .bond("WE1", "XE2", "XE3", 0.2)
                .cable("W1", 50, 1, "G1.30", "M1.30").cable("W2", 50, 0.5, "G1.31", "XE1").cable("W3", 25, 1, "G2.B+", "M1.30")
                .drivenSwitch("S1", "start").cable("W4", 4, 1, "G1.30", "S1.30").cable("W5", 4, 1, "S1.15", "M1.50");
        van.battery("G10", 12, 0.004, 0.010, 100).at("G10", "seat").set("G10#cell", "chargeMaxA", 60.0)
                .set("G10#cell", "dischargeMaxA", 200.0);
        shunt(van, "R1").cable("W10", 35, 0.3, "G10.31", "R1.B-").negativeBar("X10", 8).cable("W11", 35, 0.3, "R1.P-", "X10.31")
                .cable("W12", 35, 0.5, "X10.N8", "XE4");
        van.box("F1", 4).fuse("F1", "1", 60).fuse("F1", "2", 60).fuse("F1", "3", 5).set("F1#2", "wayMaxA", 60.0).cable("W13",
                35, 0.15, "G10.30", "F1.30");
        isolator(van, "Q1", "1", "2").cable("W14", 16, 0.5, "F1.1", "Q1.1").box("F2", 4).cable("W15", 16, 0.5, "Q1.2", "F2.30")
                .fuse("F2", "1", 15).fuse("F2", "2", 10).fuse("F2", "3", 5).at("F2", "rear");
        van.device("K1", "splitCharge", "A:plus", "B:plus", "31:minus")
                .element("K1#threshold", n -> new org.loomwright.engine.assembly.Plan.Threshold("K1#threshold", n.device("K1"),
                        "threshold", n.terminal("K1.A"), n.terminal("K1.31"), -1, 13.3, 12.8, 0, 0))
                .contact("K1", "A", "B", false, "threshold").set("K1#contact", "continuousA", 100.0)
                .set("K1#contact", "makeA", 300.0).set("K1#contact", "breakA", 100.0)
                .box("F3", 1).fuse("F3", "1", 60).set("F3#1", "wayMaxA", 60.0).cable("W20", 16, 0.15, "G1.30", "F3.30")
                .cable("W21", 16, 2, "F3.1", "K1.A")
                .cable("W22", 16, 1, "K1.B", "F1.2").cable("W23", 1, 1, "K1.31", "X10.N7");
        van.load("E1", "power", 60, 12).at("E1", "rear").relay("K2").handSwitch("S2", false).set("S2#contact", "continuousA",
                10.0)
                .cable("W30", 2.5, 0.5, "F2.1", "K2.30").cable("W31", 2.5, 3, "K2.87", "E1.L+").cable("W32", 2.5, 3, "E1.L-",
                "X10.N1")
                .cable("W33", 1, 1, "F2.3", "S2.1").cable("W34", 1, 1, "S2.2", "K2.86").cable("W35", 1, 1, "K2.85", "X10.N2");
        van.load("E2", "power", 45, 12).cable("W36", 2.5, 3, "F2.2", "E2.L+").cable("W37", 2.5, 3, "E2.L-", "X10.N3");
        van.load("B1", "power", 2, 12).set("B1", "mustStayLive", true).set("B1#load", "standbyA", 0.01)
                .cable("W38", 1, 1, "F1.3", "B1.L+").cable("W39", 1, 1, "B1.L-", "X10.N4");
        return van.state("night", c -> c.on("E2", "B1").ambient(15).battery("G10", 0.7, 15, 0.2))
                .state("evening", c -> c.on("E1", "E2", "B1").position("S2", true).ambient(15).battery("G10", 0.8, 15, 0.2))
                .state("road", c -> c.engine(2000).on("E2", "B1").ambient(20).battery("G10", 0.6, 20, 0.2))
                .state("start", c -> c.kind("cranking").ignition("start").on("M1#motor", "B1").ambient(0));
    }

    static PlanFixture isolator(PlanFixture fixture, String id, String a, String b) {
        return fixture.device(id, "isolator", a + ":plus", b + ":plus").contact(id, a, b, true, "hand")
                .set(id + "#contact", "continuousA", 200.0).set(id + "#contact", "makeA", 1000.0)
                .set(id + "#contact", "breakA", 200.0);
    }

    static PlanFixture shunt(PlanFixture fixture, String id) {
        return fixture.device(id, "shunt", "B-:minus", "P-:minus").element(id + "#shunt",
                n -> new org.loomwright.engine.assembly.Plan.Shunt(id + "#shunt", n.device(id), n.terminal(id + ".P-"),
                        n.terminal(id + ".B-"), 0.0002, 300));
    }
}
