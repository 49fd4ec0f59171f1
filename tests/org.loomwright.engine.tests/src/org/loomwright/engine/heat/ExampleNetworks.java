// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import java.util.Map;
import org.loomwright.engine.flow.OperatingPoint;

/** Networks of worked examples. */
final class ExampleNetworks {
    private ExampleNetworks() {
    }

    static Map<String, double[]> mesh(WorkedExample e) {
        if (e.has("V_thevenin_V")) {
            OperatingPoint at = new ExampleCircuit().emf(1, 0, e.in("V_thevenin_V"), e.in("R_thevenin_ohm"))
                    .resistor(1, 0, e.in("R_load_ohm")).solve();
            return Map.of("load_A", one(at.currentA()[1]));
        } else if (e.inputs().get("topology").contains("shorted")) {
            ExampleCircuit sources = new ExampleCircuit().emf(1, 0, e.in("E1_V"), e.in("R1_ohm")).emf(1, 0, e.in("E2_V"),
                    e.in("R3_ohm"));
            return Map.of("norton_A", one(shortA(sources)), "norton_R_ohm", one(innerOhm(sources)));
        } else if (e.inputs().get("topology").contains("E2+R3")) {
            OperatingPoint at = new ExampleCircuit().emf(1, 0, e.in("E1_V"), e.in("R1_ohm")).resistor(1, 0, e.in("R2_ohm"))
                    .emf(1, 0, e.in("E2_V"), e.in("R3_ohm")).solve();
            return Map.of("node_V", one(at.voltage(1, 0)), "I_R1_A", one(-at.currentA()[0]), "I_R2_A", one(at.currentA()[1]),
                    "I_R3_from_E2_A", one(-at.currentA()[2]));
        }
        OperatingPoint at = new ExampleCircuit().emf(1, 0, e.in("E1_V"), e.in("R1_ohm")).emf(1, 0, e.in("E2_V"), e.in("R2_ohm"))
                .resistor(1, 0, e.in("R3_ohm")).solve();
        return Map.of("node_V", one(at.voltage(1, 0)), "I_R3_A", one(at.currentA()[2]));
    }

    static Map<String, double[]> ladder(WorkedExample e) {
        if (e.has("R6_ohm")) {
            OperatingPoint at = new ExampleCircuit().emf(1, 0, e.in("E_V"), 1e-6).resistor(1, 2, e.in("R1_ohm") - 1e-6)
                    .resistor(2, 0, e.in("R2_ohm")).resistor(2, 3, e.in("R3_ohm")).resistor(3, 0, e.in("R4_ohm"))
                    .resistor(3, 4, e.in("R5_ohm")).resistor(4, 0, e.in("R6_ohm")).solve();
            return Map.of("I_source_A", one(-at.currentA()[0]), "I6_A", one(at.currentA()[6]), "V6_V", one(at.voltage(4, 0)));
        }
        OperatingPoint at = new ExampleCircuit().emf(1, 0, e.in("E_V"), 1e-6).resistor(1, 2, e.in("R1_ohm") - 1e-6)
                .resistor(2, 0, e.in("R2_ohm")).resistor(2, 3, e.in("R3_ohm")).resistor(3, 0, e.in("R4_ohm")).solve();
        return Map.of("R_total_ohm", one(e.in("E_V") / -at.currentA()[0]), "I_source_A", one(-at.currentA()[0]), "V_R2_V",
                one(at.voltage(2, 0)), "V_R4_V", one(at.voltage(3, 0)));
    }

    static Map<String, double[]> starter(WorkedExample e) {
        OperatingPoint at = new ExampleCircuit().emf(1, 0, e.in("E_V"), e.in("r_battery_ohm"))
                .resistor(1, 0, e.in("R_motor_ohm")).solve();
        return Map.of("current_A", one(at.currentA()[1]), "motor_V", one(at.voltage(1, 0)), "motor_W",
                one(at.currentA()[1] * at.voltage(1, 0)));
    }

    /** Two batteries, plus to plus over the cable, and the same with one of them turned round. */
    static Map<String, double[]> jumpStart(WorkedExample e) {
        OperatingPoint right = new ExampleCircuit().emf(1, 0, e.in("E1_V"), e.in("r1_ohm"))
                .emf(2, 0, e.in("E2_V"), e.in("r2_ohm"))
                .wire(2, 1, e.in("R_cable_ohm")).solve();
        OperatingPoint turned = new ExampleCircuit().emf(0, 1, e.in("E1_V"), e.in("r1_ohm"))
                .emf(2, 0, e.in("E2_V"), e.in("r2_ohm")).wire(2, 1, e.in("R_cable_ohm")).solve();
        double watts = -right.currentA()[0] * e.in("E1_V") - right.currentA()[1] * e.in("E2_V");
        return Map.of("current_A", one(right.currentA()[2]), "current_reversed_A", one(turned.currentA()[2]), "power_W",
                one(watts));
    }

    static Map<String, double[]> internal(WorkedExample e) {
        if (e.has("current_A")) {
            double ohm = ExampleAnswers.bisect(r -> new ExampleCircuit().emf(1, 0, e.in("E_V"), r).load(1, 0, e.in("current_A"))
                    .solve().voltage(1, 0), e.in("loaded_V"), 1e-4, 0.25);
            return Map.of("r_ohm", one(ohm));
        }
        double ohm = ExampleAnswers.bisect(r -> new ExampleCircuit().emf(1, 0, e.in("E_V"), r)
                .resistor(1, 0, e.in("R_load_ohm")).solve().voltage(1, 0), e.in("loaded_V"), 1e-4, 10);
        OperatingPoint at = new ExampleCircuit().emf(1, 0, e.in("E_V"), ohm).resistor(1, 0, e.in("R_load_ohm")).solve();
        return Map.of("r_ohm", one(ohm), "current_A", one(at.currentA()[1]));
    }

    /** Short-circuit current between nodes 1 and 0 of a linear circuit: open voltage over inner resistance, A. */
    static double shortA(ExampleCircuit circuit) {
        return circuit.solve().voltage(1, 0) / innerOhm(circuit);
    }

    /** Inner resistance between nodes 1 and 0, from the drop under a load of 1 A, ohm. */
    static double innerOhm(ExampleCircuit circuit) {
        double openV = circuit.solve().voltage(1, 0);
        return openV - circuit.copy().load(1, 0, 1).solve().voltage(1, 0);
    }

    private static double[] one(double value) {
        return new double[] {value};
    }
}
