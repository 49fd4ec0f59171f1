// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.heat;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.CommonPractice;
import org.loomwright.engine.fixture.ReferenceCsv;
import org.loomwright.engine.fixture.RecordChange;
import org.loomwright.engine.fixture.TestTables;

/**
 * What the engine answers to worked examples, by topic: each answer is a map from the name of an expected output to its values.
 */
final class ExampleAnswers {
    /** Sections that a choice is made from, mm2; those that the examples' own tables have in common. */
    private static final double[] SECTIONS = {1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120};

    static final Map<String, Function<WorkedExample, Map<String, double[]>>> BY_TOPIC = Map.ofEntries(
            entry("voltage_drop", ExampleAnswers::drop), entry("voltage_drop_max_length", ExampleAnswers::drop),
            entry("voltage_drop_connection", ExampleAnswers::drop), entry("voltage_drop_sum", ExampleAnswers::sum),
            entry("voltage_drop_limit", ExampleAnswers::limit), entry("cable_choice", ExampleAnswers::choice),
            entry("starter_cable", ExampleAnswers::starterCable), entry("charging_cable", ExampleAnswers::chargingCable),
            entry("resistance_table", ExampleAnswers::tableResistance), entry("resistance", ExampleAnswers::resistance),
            entry("resistance_temperature", ExampleAnswers::hotResistance), entry("ampacity_ambient", ExampleAnswers::ambient),
            entry("ampacity_engine_space", ExampleAnswers::engineSpace), entry("ampacity_bundle", ExampleAnswers::bundle),
            entry("adiabatic", ExampleAnswers::adiabatic), entry("fault_current", ExampleAnswers::fault),
            entry("short_circuit", ExampleAnswers::bank), entry("dc_network", ExampleNetworks::mesh),
            entry("ladder_network", ExampleNetworks::ladder), entry("starter_network", ExampleNetworks::starter),
            entry("jump_start", ExampleNetworks::jumpStart), entry("internal_resistance", ExampleNetworks::internal));

    private ExampleAnswers() {
    }

    private static Map<String, double[]> drop(WorkedExample e) {
        double ohm = conductorOhm(e);
        double amps = e.currentA();
        double dropV = ExampleCircuit.dropV(ohm, amps);
        Map<String, double[]> answer = new LinkedHashMap<>();
        answer.put("current_A", new double[] {amps});
        answer.put("resistance_ohm", new double[] {ohm});
        answer.put("drop_V", new double[] {dropV});
        answer.put("drop_one_way_V", new double[] {dropV});
        answer.put("drop_total_V", new double[] {ExampleCircuit.dropV(2 * ohm, amps)});
        if (e.has("system_V")) {
            double share = e.has("mV_per_A_per_m") ? 2 * dropV : dropV;
            answer.put("drop_percent", new double[] {100 * share / e.in("system_V")});
        }
        return answer;
    }

    private static double conductorOhm(WorkedExample e) {
        if (e.has("resistance_mohm")) {
            return e.in("resistance_mohm") / 1000;
        } else if (e.has("resistance_20C_ohm_per_m")) {
            return e.in("resistance_20C_ohm_per_m") * e.in("length_m");
        } else if (e.has("mV_per_A_per_m")) {
            return e.in("mV_per_A_per_m") / 1000 * e.in("length_m");
        } else if (e.has("resistance_ohm_per_ft")) {
            return e.in("resistance_ohm_per_ft") * e.in("length_total_ft");
        } else if (e.has("resistance_ohm_per_1000ft")) {
            return e.in("resistance_ohm_per_1000ft") / 1000 * 2 * e.in("length_one_way_ft");
        } else if (e.has("circular_mils")) {
            return e.in("K") * 2 * e.in("length_one_way_ft") / e.in("circular_mils");
        }
        return rho(e) * e.conductorM() / e.in("area_mm2");
    }

    private static double rho(WorkedExample e) {
        return e.has("conductivity_m_per_ohm_mm2") ? 1 / e.in("conductivity_m_per_ohm_mm2")
                : e.has("rho_ohm_m") ? e.in("rho_ohm_m") * 1e6 : e.in("rho_ohm_mm2_per_m");
    }

    private static Map<String, double[]> sum(WorkedExample e) {
        double totalV = new ExampleCircuit().emf(1, 0, 1000, 1e-6).wire(1, 2, e.in("drop_positive_V")).load(2, 3, 1)
                .wire(3, 0, e.in("drop_negative_V")).solve().voltage(1, 0)
                - new ExampleCircuit().emf(1, 0, 1000, 1e-6).wire(1, 2, e.in("drop_positive_V")).load(2, 3, 1)
                        .wire(3, 0, e.in("drop_negative_V")).solve().voltage(2, 3);
        return Map.of("drop_total_V", new double[] {totalV});
    }

    /** The practice's own share for critical loads. */
    private static Map<String, double[]> limit(WorkedExample e) {
        return Map.of("limit_V", new double[] {CommonPractice.read().value("drop-class.critical") * e.in("system_V")});
    }

    private static Map<String, double[]> choice(WorkedExample e) {
        if (e.has("length_ratio")) {
            double area = areaFor(ExampleCircuit.dropV(0.018, 10) * e.in("drop_ratio"), 10, 0.018, e.in("length_ratio"));
            return Map.of("area_ratio", new double[] {area}, "copper_volume_ratio", new double[] {area * e.in("length_ratio")});
        } else if (e.has("voltage_ratio")) {
            double dropV = ExampleCircuit.dropV(0.018, 10) * e.in("voltage_ratio") * e.in("drop_percent_ratio");
            double amps = 10 * e.in("power_ratio") / e.in("voltage_ratio");
            return Map.of("area_ratio", new double[] {areaFor(dropV, amps, 0.018, 1)});
        }
        double limitV = e.has("limit_V") ? e.in("limit_V") : e.in("limit_fraction") * e.in("system_V");
        if (e.has("table") || e.has("area_table")) {
            return Map.of("awg", new double[] {gauge(e, limitV)});
        }
        return sections(limitV, e.currentA(), rho(e), e.conductorM(), "area_calc_mm2");
    }

    private static Map<String, double[]> sections(double limitV, double amps, double rho, double lengthM, String name) {
        double chosen = Double.NaN;
        for (double section : SECTIONS) {
            if (Double.isNaN(chosen) && ExampleCircuit.dropV(rho * lengthM / section, amps) <= limitV) {
                chosen = section;
            }
        }
        return Map.of(name, new double[] {areaFor(limitV, amps, rho, lengthM)}, "area_chosen_mm2", new double[] {chosen});
    }

    private static double areaFor(double limitV, double amps, double rho, double lengthM) {
        return bisect(area -> ExampleCircuit.dropV(rho * lengthM / area, amps), limitV, 0.1, 1000);
    }

    /** The thinnest gauge of the example's table whose drop is within the limit. */
    private static double gauge(WorkedExample e, double limitV) {
        for (Map<String, String> row : ReferenceCsv.rows("awg_table.csv")) {
            String mils = row.get("circular_mils_sae_min_published");
            String aircraft = row.get("resistance_20C_max_tinned_aircraft_mohm_per_m");
            double ohm = Double.NaN;
            if (e.has("area_table") && !mils.isEmpty()) {
                ohm = e.in("K") * e.in("length_round_trip_ft") / Double.parseDouble(mils);
            } else if (e.has("table") && !aircraft.isEmpty()) {
                ohm = Double.parseDouble(aircraft) / 1000 * e.conductorM();
            }
            if (ohm > 0 && ExampleCircuit.dropV(ohm, e.currentA()) <= limitV) {
                return Double.parseDouble(row.get("awg"));
            }
        }
        throw new AssertionError(e.id() + ": no gauge is thick enough");
    }

    private static Map<String, double[]> starterCable(WorkedExample e) {
        if (e.has("strands")) {
            double area = e.in("strands") * Math.PI / 4 * e.in("strand_mm") * e.in("strand_mm");
            return Map.of("resistance_mohm", new double[] {1000 * ExampleCircuit.ohm(rho(e), e.conductorM(), area)});
        }
        return sections(e.in("line_resistance_mohm") / 1000, 1, rho(e), e.conductorM(), "area_min_mm2");
    }

    private static Map<String, double[]> chargingCable(WorkedExample e) {
        double[] lengths = e.list("length_total_m");
        double[] areas = e.list("area_mm2");
        double[] milliohm = new double[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            milliohm[i] = 1000 * ExampleCircuit.ohm(rho(e), lengths[i], areas[i]);
        }
        return Map.of("resistance_mohm", milliohm);
    }

    private static Map<String, double[]> tableResistance(WorkedExample e) {
        double ohm = e.in("resistance_20C_mohm_per_m") / 1000 * e.in("length_m");
        return Map.of("resistance_mohm", new double[] {1000 * ExampleCircuit.dropV(ohm, 1)});
    }

    private static Map<String, double[]> resistance(WorkedExample e) {
        double area = Math.PI / 4 * e.in("diameter_mm") * e.in("diameter_mm");
        return Map.of("resistance_ohm", new double[] {ExampleCircuit.ohm(rho(e), e.in("length_m"), area)});
    }

    private static Map<String, double[]> hotResistance(WorkedExample e) {
        double alpha = e.in("alpha_per_K");
        if (e.has("temperature_hot_C")) {
            double aboveReference = e.in("temperature_hot_C") - e.in("alpha_reference_C");
            return Map.of("resistance_hot_ohm", new double[] {e.in("resistance_ohm") * Copper.factor(alpha,
                    20 + aboveReference)});
        } else if (e.has("resistance_hot_ohm")) {
            double hotC = bisect(t -> e.in("resistance_ohm") * Copper.factor(alpha, t), e.in("resistance_hot_ohm"), 0, 500);
            return Map.of("temperature_hot_C", new double[] {hotC});
        }
        return Map.of("factor_to_20C", new double[] {1 / Copper.factor(alpha, e.in("temperature_C"))});
    }

    private static Map<String, double[]> ambient(WorkedExample e) {
        return Map.of("factor", new double[] {
                AmpacityTables.ambientFactor(e.in("insulation_C"), e.in("reference_C"), e.in("ambient_C"))});
    }

    private static Map<String, double[]> engineSpace(WorkedExample e) {
        ConductorRating rating = new ConductorRating(e.in("table_A"), 30, e.in("insulation_C"), 50, e.in("factor"), 1, 1,
                "33 CFR");
        return Map.of("current_A", new double[] {rating.correctedA()});
    }

    /** A cable with a table of one rating and the published factors for bundles. */
    private static Map<String, double[]> bundle(WorkedExample e) {
        List<Double> factors = new ArrayList<>(List.of(1.0));
        for (Map<String, String> row : ReferenceCsv.rows("ampacity_factors.csv")) {
            factors.add(Double.parseDouble(row.get("factor")));
        }
        Plan.Grouping grouping = new Plan.Grouping("bundle", "33 CFR 183.425 Table 5 note 2", true, List.of(2, 3, 6, 24, 1000),
                factors);
        Plan.Ampacity table = new Plan.Ampacity("table", "33 CFR 183.425 Table 5", true, 1, 30, e.in("insulation_C"),
                List.of(5.26), List.of(e.in("table_A")));
        Plan.Cable cable = RecordChange.with(RecordChange.with(RecordChange.with(TestTables.cable("W1"), "ampacity", table),
                "grouping", grouping), "maxC", e.in("insulation_C"));
        return Map.of("current_A", new double[] {Ratings.of(cable, 5.26, 30, (int) e.in("conductors")).correctedA()});
    }

    private static Map<String, double[]> adiabatic(WorkedExample e) {
        return Map.of("area_min_mm2",
                new double[] {Adiabatic.sectionMm2(e.in("fault_current_A"), e.in("time_s"), e.in("k"))});
    }

    private static Map<String, double[]> fault(WorkedExample e) {
        return Map.of("fault_current_A",
                new double[] {ExampleNetworks.shortA(new ExampleCircuit()
                        .emf(1, 0, e.in("voltage_V"), e.in("loop_impedance_ohm")))});
    }

    private static Map<String, double[]> bank(WorkedExample e) {
        double ohm = e.in("battery_V") / e.in("single_short_circuit_A");
        ExampleCircuit circuit = new ExampleCircuit();
        int node = 2;
        for (int string = 0; string < e.in("strings_parallel"); string++) {
            int below = 0;
            for (int cell = 1; cell <= e.in("series"); cell++) {
                int above = cell == e.in("series") ? 1 : node++;
                circuit.emf(above, below, e.in("battery_V"), ohm);
                below = above;
            }
        }
        return Map.of("bank_V", new double[] {circuit.solve().voltage(1, 0)}, "bank_short_circuit_A",
                new double[] {ExampleNetworks.shortA(circuit)});
    }

    /** Where a monotone function takes a value. */
    static double bisect(DoubleUnaryOperator function, double wanted, double low, double high) {
        boolean rising = function.applyAsDouble(high) > function.applyAsDouble(low);
        double a = low;
        double b = high;
        for (int i = 0; i < 100; i++) {
            double middle = (a + b) / 2;
            if (function.applyAsDouble(middle) < wanted == rising) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return (a + b) / 2;
    }
}
