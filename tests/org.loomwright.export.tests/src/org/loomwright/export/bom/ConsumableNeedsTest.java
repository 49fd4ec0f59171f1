// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.bom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.export.Shed;
import org.loomwright.model.vehicle.Vehicle;

/** Consumables are counted by what is made anew. */
class ConsumableNeedsTest {
    /** Two cables of 1.35 m and 0.70 m, three connected ends of one and a half connected cables, two ways, one passage. */
    private static final String VEHICLE = """
              <passages name="P1" run="R1" part="gland"/>
              <devices name="G1" part="battery" place="p" existing="true"/>
              <devices name="E1" part="lamp" place="q"/>
              <devices name="X1" part="box" place="p">
                <ways name="1" protector="blade-5"/>
                <ways name="2" protector="blade-10"/>
              </devices>
              <cables name="W1" part="single" sectionMm2="2.5">
                <cores colour="RD" a="X1.1" b="E1.L+" aEnd="tab"/>
              </cables>
              <cables name="W2" part="twin" sectionMm2="2.5" lengthMm="700">
                <cores colour="RD" a="X1.2" aEnd="tab"/>
                <cores colour="BK" spare="true"/>
              </cables>
              <cables name="W9" part="single" sectionMm2="2.5" lengthMm="9000" existing="true">
                <cores colour="RD" a="G1.30" b="X1.30"/>
              </cables>
            """;
    @TempDir
    Path folder;

    private List<String> consumables(String parts) {
        return consumables(new Shed(folder).parts(parts), VEHICLE);
    }

    private static List<String> consumables(Shed shed, String content) {
        return bill(shed, content).lines().stream().filter(line -> line.group().equals("consumable"))
                .map(line -> line.part() + " " + line.needed() + " " + line.unit() + " " + line.fromStock()).toList();
    }

    private static BillOfMaterials bill(Shed shed, String content) {
        Vehicle vehicle = shed.vehicle(content);
        return BomBuilder.build(vehicle, null, Shed.plan(vehicle, null));
    }

    @Test
    void eachIsCountedPerWhatItIsFor() {
        assertEquals(List.of("blank 2 pcs 0", "grease 1 pcs 0", "label 6 pcs 0", "shrink 0.12 m 0", "tie 7 pcs 0",
                "washer 1 pcs 0"),
                consumables("""
                        <consumables name="label" unit="piece" per="end" quantity="2"/>
                        <consumables name="shrink" unit="m" per="end" quantity="0.04"/>
                        <consumables name="tie" unit="piece" per="cable-metre" quantity="3"/>
                        <consumables name="blank" per="way"/>
                        <consumables name="washer" unit="piece" per="passage" quantity="1"/>
                        <consumables name="grease" unit="piece" per="vehicle" quantity="0.2"/>
                        """));
    }

    @Test
    void withoutStatedUseItIsAPersonsChoice() {
        assertEquals(List.of(), consumables("<consumables name=\"strip\" unit=\"m\" quantity=\"2\"/>"));
    }

    @Test
    void otherUnitsStayAsTheyAre() {
        assertEquals(List.of("tape 0.41 roll 0"), consumables("""
                <consumables name="tape" unit="roll" per="cable-metre" quantity="0.2"/>
                """));
    }

    @Test
    void unknownUseIsSaid() {
        BillOfMaterials bill = bill(new Shed(folder).parts("<consumables name=\"tie\" per=\"cable\"/>"), VEHICLE);
        assertEquals("consumable tie: it is counted per 'cable'; expected end, cable-metre, way, passage or vehicle",
                bill.uncounted().get(0));
    }

    @Test
    void stockIsDeducted() {
        assertEquals(List.of("tie 7 pcs 5"), consumables(new Shed(folder)
                .parts("<consumables name=\"tie\" unit=\"piece\" per=\"cable-metre\" quantity=\"3\"/>")
                .stock("<pieces consumable=\"shed.parts#tie\" quantity=\"5\"/>"), VEHICLE));
    }

    @Test
    void nearestLibraryTakesThePlaceOfTheOneItUses() {
        assertEquals(List.of("grease 1 pcs 0", "label 3 pcs 0"), consumables(new Shed(folder).used("base", """
                <consumables name="label" per="end" quantity="7"/>
                <consumables name="grease" per="vehicle"/>
                """).parts("<consumables name=\"label\" per=\"end\" quantity=\"1\"/>"), VEHICLE));
    }
}
