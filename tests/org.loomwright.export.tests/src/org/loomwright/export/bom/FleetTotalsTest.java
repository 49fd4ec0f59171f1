// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.export.Shed;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.parts.CableRow;
import org.loomwright.model.parts.Part;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.Passage;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Way;

/** The bill of every arrangement of the demo fleet, worked out again by loops of this test from model and plan. */
class FleetTotalsTest {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");

    /** One vehicle in one arrangement. */
    record Wired(Vehicle vehicle, Arrangement arrangement) {
        @Override
        public String toString() {
            return vehicle.getName() + " " + arrangement.getName();
        }
    }

    static Stream<Wired> wired() {
        VehicleFiles files = new VehicleFiles();
        return Stream.of("heron", "otter", "beaver").flatMap(name -> {
            ReadFile<Vehicle> read = files.openVehicle(FLEET.resolve(name + ".vehicle"));
            assertEquals(List.of(), read.faults());
            assertFalse(read.root().getArrangements().isEmpty(), name);
            return read.root().getArrangements().stream().map(arrangement -> new Wired(read.root(), arrangement));
        });
    }

    private final TreeMap<String, BigDecimal> needed = new TreeMap<>();
    private final Map<String, BigDecimal> prices = new HashMap<>();
    private BigDecimal grams = BigDecimal.ZERO;

    private void need(Part part, String key, BigDecimal quantity, BigDecimal price, BigDecimal massG) {
        String line = part.getName() + key;
        needed.merge(line, quantity, BigDecimal::add);
        if (price != null) {
            prices.put(line, price);
        }
        grams = massG == null ? grams : grams.add(massG.multiply(quantity));
    }

    private void piece(Part part) {
        if (part != null) {
            need(part, "", BigDecimal.ONE, part.getPrice(), part.getMassG());
        }
    }

    private void countAgain(Wired wired, Plan plan) {
        List<Device> devices = new ArrayList<>(wired.vehicle().getDevices());
        devices.addAll(wired.arrangement().getDevices());
        for (Device device : devices) {
            if (!Boolean.TRUE.equals(device.getExisting())) {
                piece(device.getPart());
                for (Way way : device.getWays()) {
                    piece(way.getProtector());
                }
            }
        }
        List<Cable> cables = new ArrayList<>(wired.vehicle().getCables());
        cables.addAll(wired.arrangement().getCables());
        for (Cable cable : cables) {
            if (!Boolean.TRUE.equals(cable.getExisting())) {
                cable(cable, plan);
            }
        }
        List<Duct> ducts = new ArrayList<>(wired.vehicle().getDucts());
        ducts.addAll(wired.arrangement().getDucts());
        for (Duct duct : ducts) {
            double mm = 0;
            for (Run run : duct.getRuns()) {
                mm += plan.runs().stream().filter(planned -> planned.id().equals(run.getName())).findFirst().orElseThrow()
                        .lengthMm();
            }
            need(duct.getPart(), "", centimetresUp(mm), duct.getPart().getPricePerM(), duct.getPart().getMassGPerM());
        }
        for (Passage passage : wired.vehicle().getPassages()) {
            piece(passage.getPart());
        }
        for (Bond bond : wired.vehicle().getBonds()) {
            if (!Boolean.TRUE.equals(bond.getExisting())) {
                piece(bond.getPart());
            }
        }
    }

    private void cable(Cable cable, Plan plan) {
        List<String> colours = new ArrayList<>();
        for (Core core : cable.getCores()) {
            piece(core.getAEnd());
            piece(core.getBEnd());
            if (core.getColour() != null) {
                colours.add(core.getColour());
            }
        }
        colours.sort(null);
        Plan.Cable planned = plan.cables().stream()
                .filter(one -> one.designation().equals(cable.getName())
                        && one.id().contains("/") == (cable.eContainer() instanceof Arrangement))
                .findFirst().orElseThrow();
        CableRow row = null;
        for (CableRow one : cable.getPart().getRows()) {
            row = one.getSectionMm2().doubleValue() == planned.sectionMm2() ? one : row;
        }
        need(cable.getPart(), " " + planned.sectionMm2() + " " + String.join(" ", colours), centimetresUp(planned.lengthMm()),
                row.getPricePerM(), row.getMassGPerM());
    }

    private static BigDecimal centimetresUp(double mm) {
        long thousandths = StrictMath.round(mm * 1000);
        return BigDecimal.valueOf((thousandths + 9_999) / 10_000, 2);
    }

    private static String key(BomLine line) {
        return line.part() + (line.group().equals("cable") ? " " + line.sectionMm2().doubleValue() + " " + line.colour() : "");
    }

    @ParameterizedTest
    @MethodSource("wired")
    void quantitiesPriceAndMassComeOutTheSame(Wired wired) {
        Plan plan = Shed.plan(wired.vehicle(), wired.arrangement());
        countAgain(wired, plan);
        BillOfMaterials bill = BomBuilder.build(wired.vehicle(), wired.arrangement(), plan);
        TreeMap<String, BigDecimal> listed = new TreeMap<>();
        BigDecimal price = BigDecimal.ZERO;
        for (BomLine line : bill.lines()) {
            if (!line.group().equals("consumable")) {
                assertEquals(null, listed.put(key(line), line.needed()), "listed twice: " + key(line));
                BigDecimal each = prices.get(key(line));
                price = each == null ? price
                        : price.add(each.multiply(line.needed().subtract(line.fromStock())).setScale(2, RoundingMode.HALF_UP));
            }
        }
        assertEquals(needed.keySet(), listed.keySet());
        needed.forEach((line, quantity) -> assertEquals(0, quantity.compareTo(listed.get(line)), line));
        BigDecimal consumables = consumables(bill).map(BomLine::price).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal consumableGrams = consumables(bill).map(BomLine::massG).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertEquals(0, price.add(consumables).compareTo(bill.price()), price + " and " + consumables + ", not " + bill.price());
        assertEquals(0, grams.add(consumableGrams).compareTo(bill.massG()));
        assertTrue(price.signum() > 0 && grams.signum() > 0);
    }

    private static Stream<BomLine> consumables(BillOfMaterials bill) {
        return bill.lines().stream().filter(line -> line.group().equals("consumable"));
    }

    private static BillOfMaterials bill(Wired wired) {
        return BomBuilder.build(wired.vehicle(), wired.arrangement(), Shed.plan(wired.vehicle(), wired.arrangement()));
    }

    /** All lines of one part together take no more than lies there, and none takes more than it needs. */
    @ParameterizedTest
    @MethodSource("wired")
    void noMoreIsTakenThanLiesInTheStore(Wired wired) {
        BillOfMaterials bill = bill(wired);
        Map<String, BigDecimal> there = new HashMap<>();
        wired.vehicle().getStock().forEach(stock -> {
            stock.getCables().forEach(coil -> there.merge(coil.getCable().getName() + " " + coil.getSectionMm2().doubleValue(),
                    coil.getMetres(), BigDecimal::add));
            stock.getPieces().forEach(piece -> piece.eCrossReferences()
                    .forEach(part -> there.merge(((Part) part).getName(), piece.getQuantity(), BigDecimal::add)));
        });
        Map<String, BigDecimal> taken = new HashMap<>();
        for (BomLine line : bill.lines()) {
            String key = line.part() + (line.group().equals("cable") ? " " + line.sectionMm2().doubleValue() : "");
            taken.merge(key, line.fromStock(), BigDecimal::add);
            assertTrue(line.fromStock().signum() >= 0 && line.toBuy().signum() >= 0, key);
        }
        taken.forEach((key, quantity) -> assertTrue(quantity.compareTo(there.getOrDefault(key, BigDecimal.ZERO)) <= 0, key));
        assertTrue(taken.values().stream().anyMatch(quantity -> quantity.signum() > 0));
    }

    @ParameterizedTest
    @MethodSource("wired")
    void cutsAddUpToWhatIsNeeded(Wired wired) {
        BillOfMaterials bill = bill(wired);
        for (BomLine line : bill.lines()) {
            if (line.group().equals("cable") || line.group().equals("duct")) {
                BigDecimal cut = line.cuts().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
                assertEquals(0, line.needed().compareTo(cut), line.part());
            }
        }
    }
}
