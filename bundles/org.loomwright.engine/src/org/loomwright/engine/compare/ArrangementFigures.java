// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.compare;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.engine.result.Severity;

/**
 * One arrangement in figures. Existing wiring and existing devices are left out: they are the same in all arrangements. Devices
 * are those of the arrangement; loads and other devices that all arrangements share are left out.
 *
 * @param vehicle      vehicle
 * @param arrangement  arrangement; empty when the vehicle has none
 * @param copper       conductors by section, then duty
 * @param cables       number of cables
 * @param joints       ends of conductors to be made
 * @param devices      devices of the arrangement
 * @param protectors   fuses and breakers in ways
 * @param boxes        devices with ways: boxes and holders
 * @param spareWays    ways of these without protector
 * @param areaCm2      area that the boxes take
 * @param price        price of everything counted, by kind
 * @param massKg       mass of cables and devices
 * @param voltages     lowest voltage of each load, in the plan's order
 * @param hottest      hottest new conductor; null when none carries a current
 * @param findings     findings that stand, by severity
 * @param accepted     findings that a person accepted
 */
public record ArrangementFigures(String vehicle, String arrangement, List<CopperRow> copper, int cables, int joints, int devices,
        int protectors, int boxes, int spareWays, Tally areaCm2, Map<Priced, Tally> price, Tally massKg,
        List<LoadVoltage> voltages, HotConductor hottest, Map<Severity, Integer> findings, int accepted) {
    /** What has a price, in the order of reports. */
    public enum Priced {
        /** Cable by the metre. */
        CABLE("cable"),
        /** Boxes and holders. */
        BOXES("boxes and holders"),
        /** Fuses and breakers in their ways. */
        PROTECTORS("fuses and breakers"),
        /** Other devices of the arrangement. */
        DEVICES("other devices"),
        /** Lugs, receptacles and so on. */
        ENDS("cable ends");

        private final String words;

        Priced(String words) {
            this.words = words;
        }

        /** Words for people. */
        public String words() {
            return words;
        }
    }

    /**
     * The lowest voltage of a load.
     *
     * @param load      id of the load
     * @param label     what it is; may be empty
     * @param caseName  case in which it is lowest
     * @param volts     voltage at its terminals, everything included, V
     * @param leastV    what it works from, V; NaN when not stated
     * @param nominalV  nominal voltage, V; NaN when not known
     */
    public record LoadVoltage(String load, String label, String caseName, double volts, double leastV, double nominalV) {
    }

    /** The hottest conductor: its id, case, temperature and that of its class, degrees Celsius. */
    public record HotConductor(String conductor, String caseName, double hotC, double maxC) {
    }

    public ArrangementFigures {
        copper = List.copyOf(copper);
        price = Collections.unmodifiableMap(new EnumMap<>(price));
        voltages = List.copyOf(voltages);
        findings = Collections.unmodifiableMap(new EnumMap<>(findings));
    }

    /** Length of all conductors, m. */
    public double conductorM() {
        return copper.stream().mapToDouble(CopperRow::conductorM).sum();
    }

    /** Mass of the copper, kg. */
    public double copperKg() {
        return copper.stream().mapToDouble(CopperRow::copperKg).sum();
    }

    /** Volume of the copper, dm3. */
    public double copperDm3() {
        return copper.stream().mapToDouble(CopperRow::copperDm3).sum();
    }

    /** Largest section, mm2; 0 without cables. */
    public double largestMm2() {
        return copper.stream().mapToDouble(CopperRow::sectionMm2).max().orElse(0);
    }

    /** Length of conductors by section, m, sections rising. */
    public Map<Double, Double> metresBySection() {
        Map<Double, Double> metres = new TreeMap<>();
        copper.forEach(row -> metres.merge(row.sectionMm2(), row.conductorM(), Double::sum));
        return metres;
    }

    /** Mass of copper by duty, kg; all duties are in it. */
    public Map<CopperDuty, Double> copperKgByDuty() {
        Map<CopperDuty, Double> kg = new LinkedHashMap<>();
        for (CopperDuty duty : CopperDuty.values()) {
            kg.put(duty, copper.stream().filter(row -> row.duty() == duty).mapToDouble(CopperRow::copperKg).sum());
        }
        return kg;
    }

    /** Length of conductors by duty, m; all duties are in it. */
    public Map<CopperDuty, Double> metresByDuty() {
        Map<CopperDuty, Double> metres = new LinkedHashMap<>();
        for (CopperDuty duty : CopperDuty.values()) {
            metres.put(duty, copper.stream().filter(row -> row.duty() == duty).mapToDouble(CopperRow::conductorM).sum());
        }
        return metres;
    }

    /** Price of everything counted. */
    public Tally totalPrice() {
        Tally sum = Tally.ZERO;
        for (Tally each : price.values()) {
            sum = sum.with(each);
        }
        return sum;
    }

    /** The load with the lowest voltage as a share of its nominal voltage; null when no load is fed. */
    public LoadVoltage weakest() {
        return voltages.stream().filter(load -> load.nominalV() > 0)
                .min(Comparator.comparingDouble(load -> load.volts() / load.nominalV())).orElse(null);
    }
}
