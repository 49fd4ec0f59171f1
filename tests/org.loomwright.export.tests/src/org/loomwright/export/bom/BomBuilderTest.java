// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.export.Shed;
import org.loomwright.model.vehicle.Vehicle;

/** What the bill counts. Lengths by hand: tails of 150 mm at both ends and 5 percent slack, the common practice. */
class BomBuilderTest {
    private static final String DEVICES = """
              <devices name="G1" part="battery" place="p" existing="true"/>
              <devices name="E1" part="lamp" place="q"/>
              <devices name="E2" part="lamp" place="s"/>
            """;
    /** One cable of 1000 mm + 5 % + 300 mm = 1.35 m. */
    private static final String LAMP_CABLE = """
              <cables name="W1" part="single" sectionMm2="2.5">
                <cores colour="RD" a="G1.30" b="E1.L+" aEnd="lug"/>
              </cables>
            """;
    @TempDir
    Path folder;

    private BillOfMaterials bill(Shed shed, String content) {
        Vehicle vehicle = shed.vehicle(content);
        return BomBuilder.build(vehicle, vehicle.getAdopted(), Shed.plan(vehicle, vehicle.getAdopted()));
    }

    private BillOfMaterials bill(String content) {
        return bill(new Shed(folder), content);
    }

    /** {@code part section colour needed unit - from stock}. */
    private static List<String> lines(BillOfMaterials bill) {
        return bill.lines().stream().map(line -> Stream.of(line.part(), line.sectionMm2() == null ? ""
                : line.sectionMm2().toPlainString(), line.colour(), line.needed().toPlainString(), line.unit(), "-",
                line.fromStock().toPlainString()).filter(word -> !word.isEmpty()).collect(Collectors.joining(" "))).toList();
    }

    private static BomLine line(BillOfMaterials bill, String part) {
        return bill.lines().stream().filter(line -> line.part().equals(part)).findFirst().orElseThrow();
    }

    @Test
    void emptyVehicleHasAnEmptyBill() {
        BillOfMaterials bill = bill(new Shed(folder).parts("""
                <consumables name="grease" unit="piece" per="vehicle" quantity="1"/>
                """), "");
        assertEquals(List.of(), bill.lines());
        assertEquals(List.of(), bill.uncounted());
        assertEquals(BigDecimal.ZERO, bill.price());
        assertEquals(BigDecimal.ZERO, bill.massG());
    }

    @Test
    void piecesOfOnePartAreOneLine() {
        BillOfMaterials bill = bill(DEVICES + """
                  <devices name="X1" part="box" place="p">
                    <ways name="1" protector="blade-5"/>
                    <ways name="2" protector="blade-10" spare="true"/>
                  </devices>
                """);
        assertEquals(List.of("box 1 pcs - 0", "lamp 2 pcs - 0", "blade-10 1 pcs - 0", "blade-5 1 pcs - 0"), lines(bill));
    }

    @Test
    void existingThingsAreLeftOut() {
        BillOfMaterials bill = bill("""
                  <ducts name="D1" part="conduit" runs="R1" existing="true"/>
                  <earthPoints name="XE1" body="frame" place="p"/>
                  <earthPoints name="XE2" body="shell" place="q"/>
                  <bonds name="WE1" a="XE1" b="XE2" part="strap-16" lengthMm="300" existing="true"/>
                  <devices name="G1" part="battery" place="p" existing="true"/>
                  <devices name="E1" part="lamp" place="q" existing="true"/>
                  <devices name="X1" part="box" place="p" existing="true">
                    <ways name="1" protector="blade-5"/>
                  </devices>
                """ + LAMP_CABLE.replace("name=\"W1\"", "name=\"W1\" existing=\"true\""));
        assertEquals(List.of(), bill.lines());
        assertEquals(List.of(), bill.uncounted());
    }

    @Test
    void cablesAreSummedByTypeSectionAndColourWithTheirCuts() {
        BillOfMaterials bill = bill(DEVICES + LAMP_CABLE + """
                  <cables name="W2" part="single" sectionMm2="2.50">
                    <cores colour="RD" a="G1.30" b="E2.L+" aEnd="lug"/>
                  </cables>
                  <cables name="W3" part="single" sectionMm2="2.5" lengthMm="700">
                    <cores colour="BK" a="E1.L-" b="E2.L-"/>
                  </cables>
                  <cables name="W4" part="single" sectionMm2="1.5" lengthMm="700">
                    <cores colour="RD" a="E1.L+" b="E2.L+"/>
                  </cables>
                """);
        assertEquals(List.of("lamp 2 pcs - 0", "single 1.5 RD 0.70 m - 0", "single 2.5 BK 0.70 m - 0", "single 2.5 RD 3.23 m - 0",
                "lug 2 pcs - 0"), lines(bill));
        // R1 and R2: 1.5 m * 1.05 + 0.3 m = 1.875 m, cut to 1.88 m
        assertEquals(List.of(new BigDecimal("1.88"), new BigDecimal("1.35")), bill.lines().get(3).cuts());
        assertEquals(new BigDecimal("0.60"), bill.lines().get(3).unitPrice());
        // 3.23 m * 0.60 = 1.938
        assertEquals(new BigDecimal("1.94"), bill.lines().get(3).price());
    }

    @Test
    void twinWithItsCoresNamedInAnotherOrderIsTheSameTwin() {
        BillOfMaterials bill = bill(new Shed(folder).stock("""
                <cables cable="shed.parts#twin" sectionMm2="2.5" colour="RD BK" metres="1"/>
                """), DEVICES + """
                  <cables name="W1" part="twin" sectionMm2="2.5" lengthMm="800">
                    <cores colour="RD" a="G1.30" b="E1.L+"/>
                    <cores colour="BK" a="G1.31" b="E1.L-"/>
                  </cables>
                  <cables name="W2" part="twin" sectionMm2="2.5" lengthMm="900">
                    <cores colour="BK" a="E1.L-" b="E2.L-"/>
                    <cores colour="RD" a="E1.L+" b="E2.L+"/>
                  </cables>
                """);
        assertTrue(lines(bill).contains("twin 2.5 BK RD 1.70 m - 0.90"), lines(bill).toString());
    }

    @Test
    void sectionOfTheCoresHoldsWhereTheCableStatesNone() {
        assertTrue(lines(bill(DEVICES + """
                  <cables name="W1" part="twin" lengthMm="800">
                    <cores colour="RD" a="G1.30" b="E1.L+" sectionMm2="2.5"/>
                    <cores colour="BK" a="G1.31" b="E1.L-" sectionMm2="2.50"/>
                  </cables>
                """)).contains("twin 2.5 BK RD 0.80 m - 0"));
    }

    @Test
    void cableWithoutSectionOrWayIsSaidAndItsEndsAreCounted() {
        BillOfMaterials bill = bill(DEVICES + """
                  <devices name="E3" part="lamp"/>
                  <cables name="W1" part="single">
                    <cores colour="RD" a="G1.30" b="E1.L+" aEnd="lug"/>
                  </cables>
                  <cables name="W2" part="single" sectionMm2="2.5">
                    <cores colour="RD" a="G1.30" b="E3.L+" aEnd="lug"/>
                  </cables>
                """);
        assertEquals(List.of("lamp 3 pcs - 0", "lug 2 pcs - 0"), lines(bill));
        assertEquals(List.of("-W1: the cable's part, section or length is not known",
                "-W2: the cable's part, section or length is not known"), bill.uncounted());
    }

    @Test
    void endsOnStudsAndTabsWithoutEndPartAreSaid() {
        assertEquals(List.of("1 conductor end on a stud or tab names no end part"),
                bill(DEVICES + LAMP_CABLE.replace(" aEnd=\"lug\"", "")).uncounted());
        assertEquals(List.of(), bill(DEVICES + LAMP_CABLE).uncounted());
    }

    @Test
    void devicesPassagesAndDuctsWithoutPartAreSaid() {
        assertEquals(List.of("-E1: no part is named", "D1: the duct's part or length is not known", "P1: no part is named"),
                bill("""
                      <ducts name="D1" runs="R1"/>
                      <passages name="P1" run="R1"/>
                      <devices name="E1" place="p"/>
                    """).uncounted());
    }

    @Test
    void ductsOfVehicleAndArrangementAreCutAlongTheirRuns() {
        BillOfMaterials bill = bill("""
                  <ducts name="D1" part="conduit" runs="R1 R2"/>
                  <arrangements name="near">
                    <ducts name="D1" part="conduit" runs="R2"/>
                  </arrangements>
                  <arrangements name="far">
                    <ducts name="D1" part="channel" runs="R1"/>
                  </arrangements>
                """);
        assertEquals(List.of("conduit 1.50 m - 0"), lines(bill));
        Vehicle vehicle = new Shed(folder).vehicle("""
                  <ducts name="D1" part="conduit" runs="R1 R2"/>
                  <arrangements name="near">
                    <ducts name="D2" part="conduit" runs="R2"/>
                  </arrangements>
                """);
        BillOfMaterials near = BomBuilder.build(vehicle, vehicle.getArrangements().get(0),
                Shed.plan(vehicle, vehicle.getArrangements().get(0)));
        assertEquals(List.of("conduit 2.00 m - 0"), lines(near));
        assertEquals(List.of(new BigDecimal("1.50"), new BigDecimal("0.50")), near.lines().get(0).cuts());
        // 2 m * 1.10
        assertEquals(new BigDecimal("2.20"), near.price());
    }

    @Test
    void passagesAndStrapsAreCountedAndStrapsShowTheirLengths() {
        BillOfMaterials bill = bill("""
                  <passages name="P1" run="R1" part="gland"/>
                  <passages name="P2" run="R2" part="gland"/>
                  <earthPoints name="XE1" body="frame" place="p"/>
                  <earthPoints name="XE2" body="shell" place="q"/>
                  <bonds name="WE1" a="XE1" b="XE2" part="strap-16" lengthMm="300"/>
                  <bonds name="WE2" a="XE1" b="XE2" part="strap-16" lengthMm="455"/>
                  <bonds name="WE3" a="XE1" b="XE2"/>
                """);
        assertEquals(List.of("gland 2 pcs - 0", "strap-16 16 2 pcs - 0"), lines(bill));
        assertEquals(List.of(new BigDecimal("0.46"), new BigDecimal("0.30")), line(bill, "strap-16").cuts());
        assertEquals(new BigDecimal("14.80"), bill.price());
        assertEquals(List.of(), bill.uncounted());
    }

    @Test
    void priceAndMassNotGivenAreSaidAndAddNothing() {
        BillOfMaterials bill = bill(new Shed(folder).parts("""
                <devices name="horn"><terminals name="L+"/></devices>
                """), DEVICES + """
                  <devices name="P1" part="horn" place="p"/>
                  <cables name="W1" part="single" sectionMm2="16" lengthMm="1000">
                    <cores colour="RD" a="G1.30" b="E1.L+" aEnd="lug"/>
                  </cables>
                """);
        assertEquals(2, bill.linesWithoutPrice());
        assertEquals(1, bill.linesWithoutMass());
        assertNull(line(bill, "horn").price());
        assertNull(line(bill, "horn").massG());
        // two lamps of 12.49, one lug of 0.50
        assertEquals(new BigDecimal("25.48"), bill.price());
        // 2 * 210 + 160 + 5
        assertEquals(0, new BigDecimal("585").compareTo(bill.massG()));
    }

    @Test
    void lineWithoutPriceThatIsAllAtHandIsNoTrouble() {
        Shed shed = new Shed(folder).parts("<devices name=\"horn\"/>")
                .stock("<pieces device=\"shed.parts#horn\" quantity=\"1\"/>");
        assertEquals(0, bill(shed, "<devices name=\"P1\" part=\"horn\"/>").linesWithoutPrice());
    }

    @Test
    void partsOfOneNameInTwoLibrariesAreTwoLines() {
        BillOfMaterials bill = bill(new Shed(folder).used("base", "<devices name=\"lamp\" price=\"3\"/>"), """
                  <devices name="E1" part="shed/lamp"/>
                  <devices name="E2" part="base/lamp"/>
                """);
        assertEquals(List.of("shed/lamp 1 pcs - 0", "base/lamp 1 pcs - 0"), lines(bill));
    }

    @Test
    void totalIsTheSumOfTheRoundedLines() {
        BillOfMaterials bill = bill(new Shed(folder).parts("""
                <ends name="pin-a" price="0.333"/>
                <ends name="pin-b" price="0.333"/>
                """), DEVICES + """
                  <cables name="W1" part="single" sectionMm2="1.5" lengthMm="1000">
                    <cores colour="RD" a="E1.L+" b="E2.L+" aEnd="pin-a" bEnd="pin-b"/>
                  </cables>
                """);
        // 24.98 + 0.40 + 0.33 + 0.33
        assertEquals(new BigDecimal("26.04"), bill.price());
    }
}
