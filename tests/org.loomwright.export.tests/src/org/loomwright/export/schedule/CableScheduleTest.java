// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.engine.assembly.OpenSections;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.export.Shed;
import org.loomwright.export.table.Table;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** The schedule says what the plan says. */
class CableScheduleTest {
    private static final String DEVICES = """
              <devices name="G1" part="battery" place="p"/>
              <devices name="E1" part="lamp" place="q"/>
              <devices name="E2" part="lamp" place="s"/>
            """;
    @TempDir
    Path folder;

    private List<List<Object>> rows(String content, boolean existing) {
        Vehicle vehicle = new Shed(folder).vehicle(content);
        Arrangement arrangement = vehicle.getArrangements().isEmpty() ? null : vehicle.getArrangements().get(0);
        return CableSchedule.of(Shed.plan(vehicle, arrangement), OpenSections.of(vehicle, arrangement), existing).rows();
    }

    @Test
    void oneLineAConductorWithDesignations() {
        List<List<Object>> rows = rows("  <ducts name=\"D1\" part=\"conduit\" runs=\"R2\"/>\n" + DEVICES + """
                  <cables name="W1" part="twin" sectionMm2="2.50" ducts="D1">
                    <cores colour="RD" a="G1.30" b="E2.L+"/>
                    <cores colour="BK" a="G1.31" b="E2.L-"/>
                    <cores spare="true"/>
                  </cables>
                """, false);
        assertEquals(List.of("-W1", "-G1:30", "-E2:L+", "twin", new BigDecimal("2.5"), "RD", new BigDecimal("1.88"), "R1 R2/D1",
                "-W1  -G1:30 / -E2:L+", "", ""), rows.get(0));
        assertEquals(List.of("-W1", "-G1:31", "-E2:L-", "twin", new BigDecimal("2.5"), "BK", new BigDecimal("1.88"), "R1 R2/D1",
                "-W1  -G1:31 / -E2:L-", "", ""), rows.get(1));
        assertEquals(2, rows.size());
    }

    @Test
    void ductsAndTerminalsOfTheArrangementAreNamedWithoutIt() {
        List<List<Object>> rows = rows(DEVICES + """
                  <arrangements name="near">
                    <devices name="X1" part="box" place="p"/>
                    <ducts name="D2" part="conduit" runs="R1"/>
                    <cables name="W7" part="single" sectionMm2="1.5" ducts="D2">
                      <cores a="X1.1" b="E1.L+"/>
                    </cables>
                  </arrangements>
                """, false);
        assertEquals(List.of("-W7", "-X1:1", "-E1:L+", "single", new BigDecimal("1.5"), "", new BigDecimal("1.35"), "R1/D2",
                "-W7  -X1:1 / -E1:L+", "", ""), rows.get(0));
    }

    @Test
    void existingCablesOnlyWhenAskedForAndMarked() {
        String content = DEVICES + """
                  <cables name="W1" part="single" sectionMm2="2.5" existing="true"><cores a="G1.30" b="E1.L+"/></cables>
                  <cables name="W2" part="single" sectionMm2="2.5"><cores a="G1.30" b="E2.L+"/></cables>
                """;
        assertEquals(List.of("-W2"), rows(content, false).stream().map(row -> row.get(0)).toList());
        assertEquals(List.of("existing", ""), rows(content, true).stream().map(row -> row.get(9)).toList());
    }

    @Test
    void earthPointIsAnEnd() {
        assertEquals("-XE1", rows("  <earthPoints name=\"XE1\" body=\"frame\" place=\"p\"/>\n" + DEVICES + """
                  <cables name="W1" part="single" sectionMm2="2.5"><cores colour="BN" a="E1.L-" b="XE1"/></cables>
                """, false).get(0).get(2));
    }

    @Test
    void cablePulledForLaterIsListedAsNotConnected() {
        List<List<Object>> rows = rows(DEVICES + """
                  <cables name="W1" part="twin" sectionMm2="2.5" lengthMm="2500">
                    <cores colour="RD" spare="true"/>
                    <cores colour="BK" spare="true"/>
                  </cables>
                """, false);
        assertEquals(List.of("-W1", "not connected", "not connected", "twin", new BigDecimal("2.5"), "",
                new BigDecimal("2.50"), "",
                "-W1  not connected / not connected", "", ""), rows.get(0));
        assertEquals(1, rows.size());
    }

    @Test
    void emptyPlanGivesAnEmptySchedule() {
        assertEquals(List.of(), rows("", true));
    }

    @ParameterizedTest
    @CsvSource({"1470,1.47", "1470.0000000000002,1.47", "1470.01,1.48", "1479.9,1.48", "0,0.00", "9.99,0.01", "123456,123.46",
        "1050.0000000000001,1.05"})
    void lengthsAreRoundedUpToCentimetres(double mm, BigDecimal metres) {
        assertEquals(metres, CutLength.metres(mm));
    }

    @Test
    void unknownLengthIsNone() {
        assertNull(CutLength.metres(Double.NaN));
        assertNull(CutLength.metres(Double.POSITIVE_INFINITY));
    }

    @ParameterizedTest
    @CsvSource({"heron", "otter", "beaver"})
    void fleetSchedulesFollowThePlan(String name) {
        Vehicle vehicle = new org.loomwright.model.files.VehicleFiles().openVehicle(Path.of("..", "..", "bundles",
                "org.loomwright.samples", "fleet", name + ".vehicle")).root();
        for (Arrangement arrangement : vehicle.getArrangements()) {
            Plan plan = Shed.plan(vehicle, arrangement);
            Table table = CableSchedule.of(plan, OpenSections.of(vehicle, arrangement), true);
            assertTrue(table.rows().size() >= plan.conductors().size() && !plan.conductors().isEmpty());
            List<List<Object>> connected = table.rows().stream().filter(row -> !"not connected".equals(row.get(1))).toList();
            assertEquals(plan.conductors().size(), connected.size());
            for (int i = 0; i < connected.size(); i++) {
                Plan.Conductor conductor = plan.conductors().get(i);
                List<Object> row = connected.get(i);
                Plan.Cable cable = plan.cables().get(conductor.cable());
                assertEquals("-" + cable.designation(), row.get(0));
                assertEquals(conductor.sectionMm2(), ((BigDecimal) row.get(4)).doubleValue());
                double excessMm = ((BigDecimal) row.get(6)).doubleValue() * 1000 - cable.lengthMm();
                assertTrue(excessMm > -0.001 && excessMm < 10, row + " for " + cable.lengthMm() + " mm");
                assertEquals(cable.path().size(), ((String) row.get(7)).isEmpty() ? 0 : ((String) row.get(7)).split(" ").length);
                String to = plan.terminals().get(conductor.b()).id();
                assertTrue(to.replace('.', ':').endsWith(((String) row.get(2)).substring(1)), to + " as " + row.get(2));
            }
        }
    }

    @Test
    void aSectionThatNobodyChoseIsSaidToBeOpen() {
        List<List<Object>> rows = rows(DEVICES + """
                  <cables name="W1" part="single"><cores a="G1.30" b="E1.L+"/></cables>
                  <cables name="W2" part="single" sectionMm2="1.5"><cores a="G1.31" b="E1.L-"/></cables>
                """, false);
        assertEquals("-W1", rows.get(0).get(0));
        assertNull(rows.get(0).get(4));
        assertEquals("section open", rows.get(0).get(10));
        assertEquals(new BigDecimal("1.5"), rows.get(1).get(4));
        assertEquals("", rows.get(1).get(10));
    }
}
