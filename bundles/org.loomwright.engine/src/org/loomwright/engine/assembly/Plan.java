// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.List;

/**
 * One vehicle wired in one arrangement, as the studies see it: immutable, without any object of the model, safe to
 * share between threads. Elements refer to each other by their index in the lists of this record; {@code -1} stands for
 * none. Every element carries the id by which people, markers and files name it (the model's fragment).
 *
 * @param vehicle     name of the vehicle
 * @param arrangement name of the arrangement; empty when the vehicle has none
 * @param practice    limits and choices in force
 * @param domains     voltage levels
 * @param zones       environments
 * @param places      named points
 * @param runs        stretches between places
 * @param bodies      structure bodies
 * @param bodyLinks   seams between bodies
 * @param bonds       straps between earth points
 * @param devices     devices of the vehicle and of the arrangement, in file order
 * @param terminals   terminals of all devices, then the earth points
 * @param elements    what lies between terminals inside devices, fitted protectors included
 * @param cables      cables, in file order
 * @param conductors  cores with both ends connected
 * @param cases       the user's cases, then the engine's own
 * @param waivers     accepted findings
 */
public record Plan(String vehicle, String arrangement, Practice practice, List<Domain> domains, List<Zone> zones,
        List<Place> places, List<Run> runs, List<Body> bodies, List<BodyLink> bodyLinks, List<Bond> bonds,
        List<Device> devices, List<Terminal> terminals, List<Element> elements, List<Cable> cables,
        List<Conductor> conductors, List<Case> cases, List<Waiver> waivers) {
    public Plan {
        domains = List.copyOf(domains);
        zones = List.copyOf(zones);
        places = List.copyOf(places);
        runs = List.copyOf(runs);
        bodies = List.copyOf(bodies);
        bodyLinks = List.copyOf(bodyLinks);
        bonds = List.copyOf(bonds);
        devices = List.copyOf(devices);
        terminals = List.copyOf(terminals);
        elements = List.copyOf(elements);
        cables = List.copyOf(cables);
        conductors = List.copyOf(conductors);
        cases = List.copyOf(cases);
        waivers = List.copyOf(waivers);
    }

    /** May loads return through the structure? */
    public enum ReturnPolicy { ALLOWED, LISTED_LOADS, FORBIDDEN }

    /**
     * A voltage level.
     *
     * @param sourceTerminal plus terminal of its battery, index in terminals
     */
    public record Domain(String id, double nominalV, int sourceTerminal) {
    }

    /** A part of the vehicle with one environment; wetness is the protection code wanted, null for none. */
    public record Zone(String id, double ambientMinC, double ambientMaxC, String wetness, boolean hot, boolean moving,
            boolean fuel, boolean gasLocker, boolean batteryVent, boolean airbagLine, boolean dataBus, boolean antenna) {
    }

    /** A named point, mm; zone is an index or -1. */
    public record Place(String id, double xMm, double yMm, double zMm, int zone) {
    }

    /** A stretch between two places; zone and body are indexes or -1. */
    public record Run(String id, int from, int to, double lengthMm, int zone, int body) {
    }

    /** Metal that carries return current; policy null when the vehicle's holds; resistance between its points, ohm. */
    public record Body(String id, ReturnPolicy policy, double ohm) {
    }

    /** A seam between two bodies, ohm. */
    public record BodyLink(String id, int bodyA, int bodyB, double ohm) {
    }

    /**
     * A strap or bolted joint between two earth points (terminal indexes).
     *
     * @param ohm         resistance at 20 degrees Celsius with both joints, ohm
     * @param sectionMm2  section, NaN for a bolted joint
     * @param lengthMm    length, NaN when not stated
     * @param currentMaxA continuous rating, NaN when not stated
     */
    public record Bond(String id, int a, int b, double ohm, double sectionMm2, double lengthMm, double currentMaxA,
            String condition, boolean existing, String part) {
    }

    /**
     * A device.
     *
     * @param designation name, without the minus sign
     * @param kind        kind in the words of the metamodel, for example {@code box}
     * @param place       place, or -1; that of the device it is mounted in when it states none
     * @param run         run it sits on instead, or -1; likewise
     * @param zone        zone it sits in, or -1
     * @param body        body its case is bolted to, or -1
     * @param mountedIn   device it is mounted in, or -1
     * @param priority    1 is what is needed most; 0 when not stated
     * @param returnPolicy how the open choice of its return is settled: {@code own}, {@code structure}, or null
     */
    public record Device(String id, String designation, String label, String kind, String part, String partSource,
            int place, int run, double atMm, int zone, int body, int mountedIn, boolean existing, int priority,
            boolean mustStayLive, String ingress, double ambientMinC, double ambientMaxC, double dissipationMaxW,
            double barMaxA, String returnPolicy) {
    }

    /**
     * A terminal of a device, or an earth point.
     *
     * @param device        device, or -1 for an earth point
     * @param body          body of an earth point, or -1
     * @param role          role in the words of the metamodel; {@code earth} for an earth point
     * @param form          form in the words of the metamodel, or null
     * @param bar           bar it belongs to, or null
     * @param place         place of an earth point, or -1
     * @param contactOhm    contact resistance of an earth point, ohm; 0 for a terminal
     */
    public record Terminal(String id, String name, int device, int body, String role, String form, double studMm,
            double sectionMinMm2, double sectionMaxMm2, double currentMaxA, int lugsMax, String bar, int place,
            double contactOhm) {
    }

    /** What lies between two terminals of a device; a is the plus side where there is one. */
    public sealed interface Element permits Joint, Contact, Coil, Protector, Diode, Shunt, Cell, Regulated, Converter, Demand,
            Threshold {
        /** Id, for example {@code central/K1#contact}. */
        String id();

        /** Index of the device. */
        int device();
    }

    /** A fixed connection. */
    public record Joint(String id, int device, int a, int b, double ohm, double currentMaxA) implements Element {
    }

    /**
     * A switching contact.
     *
     * @param driver {@code hand}, {@code coil}, {@code threshold}, {@code accessory}, {@code ignition}, {@code start},
     * {@code engine}
     * @param drivenBy index in elements of the coil or threshold that drives it, or -1
     */
    public record Contact(String id, int device, String name, int a, int b, double ohm, double continuousA, double makeA,
            double breakA, double ratedV, boolean restClosed, String driver, int drivenBy) implements Element {
    }

    /** A relay coil; resistance and voltages at 20 degrees Celsius. */
    public record Coil(String id, int device, int a, int b, double ohm, double pickUpV, double dropOutV) implements Element {
    }

    /**
     * An overcurrent device, built in or fitted into a way.
     *
     * @param way         id of the way, or null when built in
     * @param seatOhm     resistance of the seat, ohm
     * @param ohm         cold resistance of the protector, ohm
     * @param wayMaxA     largest continuous current of the way, NaN when not stated
     * @param chosenBySizing a study chose the rating
     * @param options     parts of the same form in the libraries, ratings rising; empty when built in
     */
    public record Protector(String id, int device, int a, int b, String way, String part, String kind, String form,
            double ratingA, double ratedV, double breakingA, double ohm, double seatOhm, double wayMaxA, FuseCurve curve,
            boolean chosenBySizing, List<ProtectorOption> options) implements Element {
        public Protector {
            options = List.copyOf(options);
        }

        /** A protector without other parts on offer. */
        public Protector(String id, int device, int a, int b, String way, String part, String kind, String form,
                double ratingA, double ratedV, double breakingA, double ohm, double seatOhm, double wayMaxA,
                FuseCurve curve, boolean chosenBySizing) {
            this(id, device, a, b, way, part, kind, form, ratingA, ratedV, breakingA, ohm, seatOhm, wayMaxA, curve,
                    chosenBySizing, List.of());
        }
    }

    /**
     * A protector on offer, A, V and ohm; NaN where the part does not say.
     *
     * @param ohm   cold resistance
     * @param curve time-current curves, or null
     * @param price price of one, in the library's currency
     */
    public record ProtectorOption(String part, double ratingA, double ratedV, double breakingA, double ohm, FuseCurve curve,
            double price) {
    }

    /** Conducts from a to b. */
    public record Diode(String id, int device, int a, int b, double forwardV, double ohm, double currentMaxA)
            implements Element {
    }

    /** A measuring shunt. */
    public record Shunt(String id, int device, int a, int b, double ohm, double currentMaxA) implements Element {
    }

    /**
     * An electrochemical source, a is plus.
     *
     * @param chargePoints states of charge, rising, 0 to 1
     * @param ocvV         open-circuit voltages at the points, V
     */
    public record Cell(String id, int device, int a, int b, String chemistry, double nominalV, double capacityAh,
            double ratedHours, double peukert, double rMinOhm, double rMaxOhm, double chargeMaxA, double dischargeMaxA,
            double chargeMinC, double tripA, double tripS, double cutV, List<Double> chargePoints, List<Double> ocvV)
            implements Element {
    }

    /**
     * A regulated source, a is plus.
     *
     * @param runsOn {@code always}, {@code engine}, {@code sun} or {@code shore}
     * @param senseA index of the sense terminals, or -1 to sense at a and b
     */
    public record Regulated(String id, int device, int a, int b, double setV, double temperatureVPerK, double referenceC,
            double droopOhm, double limitA, List<LimitPoint> limits, String runsOn, int senseA, int senseB)
            implements Element {
    }

    /** Current limit at a speed and an ambient (NaN for any). */
    public record LimitPoint(double rpm, double ambientC, double amps) {
    }

    /** Takes power at its input, holds a voltage at its output. */
    public record Converter(String id, int device, int inA, int inB, int outA, int outB, double setV, double limitA,
            double droopOhm, double efficiency, double standbyW, boolean isolated, double offV, double restartV,
            String runsOn) implements Element {
    }

    /**
     * A load. The figure that the law keeps constant is always there, worked out where the part states another one;
     * efficiency and form factor are 1, no-load power and standby current 0 where the part states none, the other
     * figures NaN.
     *
     * @param law {@code power}, {@code current} or {@code resistance}
     * @param watts power at refV, W (law power, or resistance stated by power), else NaN; amps and ohms likewise
     * @param critical the drop limit for critical loads applies
     */
    public record Demand(String id, int device, String name, int a, int b, String law, double watts, double amps,
            double ohms, double refV, double efficiency, double noLoadW, double standbyA, double minV, double maxV,
            double offV, double restartV, double inrushA, double inrushS, double inrushFarad, double formFactor,
            boolean canOverload, boolean critical) implements Element {
    }

    /** Compares a voltage between terminals, or the current of a shunt (index in elements, else -1). */
    public record Threshold(String id, int device, String name, int plus, int minus, int shunt, double onAt, double offAt,
            double onDelayS, double offDelayS) implements Element {
    }

    /**
     * A cable.
     *
     * @param path     runs in order
     * @param ducts    duct the cable lies in, one entry for each run of the path; empty text where it lies open
     * @param lengthMm length with tails and slack, mm
     * @param zone     hottest zone along it, or -1
     * @param maxC     highest continuous conductor temperature, degrees Celsius
     * @param chosenBySizing a study chose the section
     * @param ampacity rating table as published, null when the part names none
     */
    public record Cable(String id, String designation, String part, String partSource, String insulation, double sectionMm2,
            boolean chosenBySizing, List<Integer> path, List<String> ducts, double lengthMm, LengthParts lengthParts, int zone,
            double maxC, double shortTimeMaxC, boolean sheathed, int cores, double outerDiameterMm, boolean existing,
            Ampacity ampacity, Grouping grouping, List<SectionOption> options) {
    }

    /**
     * What a length consists of, mm; measured is NaN unless a person gave the length, path and slack are NaN when the
     * length was measured and no way between the ends is known.
     */
    public record LengthParts(double pathMm, double tailAMm, double tailBMm, double slackMm, double measuredMm) {
    }

    /** A section on offer for a cable, with its resistances at 20 degrees Celsius. */
    public record SectionOption(double sectionMm2, double r20MaxOhmPerM, double r20NominalOhmPerM, double outerDiameterMm,
            double massGPerM, double pricePerM) {
    }

    /**
     * A core with both ends connected.
     *
     * @param a              terminal
     * @param b              terminal
     * @param r20MaxOhmPerM  largest resistance at 20 degrees Celsius, ohm/m
     * @param r20NominalOhmPerM nominal resistance at 20 degrees Celsius, ohm/m
     * @param jointsOhm      resistance of both end joints, ohm
     * @param parallelGroup  group sharing a current by intent, or null
     * @param lugA           hole of the end part at a, mm, NaN when none is named; lugB likewise
     */
    public record Conductor(String id, int cable, String colour, int a, int b, double sectionMm2, double r20MaxOhmPerM,
            double r20NominalOhmPerM, double jointsOhm, String parallelGroup, String endPartA, String endPartB, double lugA,
            double lugB) {
    }

    /** A rating table as published; sections rising, mm2, and amps. */
    public record Ampacity(String table, String source, boolean countsConductors, int loadedCores, double referenceC,
            double maxC, List<Double> sectionsMm2, List<Double> amps) {
    }

    /** Grouping factors: up to so many, factor. */
    public record Grouping(String table, String source, boolean countsConductors, List<Integer> upTo,
            List<Double> factors) {
    }

    /** Time-current curves over multiples of rated current, seconds. */
    public record FuseCurve(String name, String source, List<Double> fastestTimes, List<Double> fastestSeconds,
            List<Double> slowestTimes, List<Double> slowestSeconds, List<Double> factorAmbientsC, List<Double> factors) {
    }

    /**
     * An operating state.
     *
     * @param kind     {@code parked}, {@code driving}, {@code cranking}, {@code charging} or {@code working}
     * @param byEngine one of the engine's own cases
     * @param ignition {@code off}, {@code accessory}, {@code on} or {@code start}
     * @param ambientC ambient by zone index, degrees Celsius; {@code outsideC} elsewhere
     */
    public record Case(String id, String name, String kind, boolean byEngine, String ignition, boolean engineRunning,
            double engineRpm, boolean shore, double sun, double outsideC, List<Double> ambientC, List<CellState> cells,
            List<ContactState> contacts, List<DemandState> demands, boolean resistancesColdMin) {
    }

    /** State of a cell (index in elements): charge and age 0 to 1, degrees Celsius. */
    public record CellState(int cell, double charge, double temperatureC, double age) {
    }

    /** Position of a hand contact (index in elements). */
    public record ContactState(int contact, boolean closed) {
    }

    /**
     * A load that is on (index of the demand in elements).
     *
     * @param factor  share of the rated demand
     * @param onS     seconds on in each period; NaN when always on
     * @param periodS period, s; NaN when always on
     */
    public record DemandState(int demand, double factor, double onS, double periodS) {
    }

    /** An accepted finding. */
    public record Waiver(String rule, String element, String reason, String who, String when) {
    }
}
