// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Severity;

/** Devices and their zones. */
class ZoneFitRuleTest {

    private static PlanFixture placed() {
        return new PlanFixture().domain("12V", 12, "G1.30").zone("rear", -20, 50).place("tail", 0, 0, 800, "rear")
                .battery("G1", 12, 0.004, 0.012, 100).handSwitch("S1", false).at("S1", "tail").load("E1", "current", 5, 12)
                .at("E1", "tail").cable("W1", 2.5, 1, "G1.30", "S1.1").cable("W2", 2.5, 1, "S1.2", "E1.L+")
                .cable("W3", 2.5, 1, "E1.L-", "G1.31");
    }

    private static List<Finding> findings(PlanFixture fixture) {
        return CheckFixture.findings(new ZoneFitRule(), fixture);
    }

    private static PlanFixture wet(String zone, String part) {
        return placed().set("rear", "wetness", zone).set("E1", "ingress", part);
    }

    @Test
    void theCodeOfThePartMeetsTheZone() {
        assertEquals(List.of(), findings(wet("IP54", "IP54")));
        assertEquals(List.of(), findings(wet("IP54", "IP67")));
        Finding finding = findings(wet("IP54", "IP20")).get(0);
        assertEquals("E1", finding.element());
        assertEquals("rear", finding.causes().get(0).element());
        assertEquals(1, findings(wet("IP54", "IP63")).size());
        assertEquals(1, findings(wet("IP54", "IP45")).size());
    }

    @Test
    void withoutACodeNothingIsSaid() {
        assertEquals(List.of(), findings(wet("IP54", null)));
        assertEquals(List.of(), findings(wet(null, "IP20")));
    }

    @Test
    void aBoxAroundItCounts() {
        PlanFixture fixture = wet("IP54", "IP20").box("F1", 1).at("F1", "tail").set("F1", "ingress", "IP65");
        int box = fixture.build().devices().size() - 1;
        assertEquals(List.of(), findings(fixture.set("E1", "mountedIn", box)));
    }

    @Test
    void codesAreReadAsTheStandardsWriteThem() {
        assertEquals(new IngressCode(6, 9), IngressCode.of("IP6K9K").orElseThrow());
        assertEquals(new IngressCode(0, 5), IngressCode.of("IPX5").orElseThrow());
        assertEquals(new IngressCode(6, 9), IngressCode.of("IP66/IP69K").orElseThrow());
        assertTrue(IngressCode.of("splash proof").isEmpty());
        assertFalse(new IngressCode(6, 4).meets(new IngressCode(5, 5)));
    }

    @Test
    void theHeatOfTheZoneIsAnErrorItsColdAWarning() {
        assertEquals(List.of(), findings(placed().set("E1", "ambientMaxC", 50.0).set("E1", "ambientMinC", -20.0)));
        Finding hot = findings(placed().set("E1", "ambientMaxC", 49.0)).get(0);
        assertEquals(Severity.ERROR, hot.severity());
        assertEquals(50, hot.is().value(), 0);
        assertEquals(Severity.WARNING, findings(placed().set("E1", "ambientMinC", -10.0)).get(0).severity());
    }

    @Test
    void nothingThatSparksSitsWhereGasMayBe() {
        for (String hazard : List.of("fuel", "gasLocker", "batteryVent")) {
            assertEquals(List.of("S1"), findings(placed().set("rear", hazard, true)).stream().map(Finding::element).toList(),
                    hazard);
        }
        PlanFixture fused = placed().set("rear", "fuel", true).set("S1", "existing", true).box("F1", 1).fuse("F1", "1", 10)
                .at("F1", "tail");
        assertEquals(List.of("F1"), findings(fused).stream().map(Finding::element).toList());
    }

    @Test
    void theBaseVehicleSitsWhereItsMakerPutIt() {
        assertEquals(List.of(), findings(wet("IP54", "IP20").set("E1", "existing", true)));
    }

    @Test
    void aSoundVehiclePasses() {
        assertEquals(List.of(), findings(SoundVan.fixture()));
    }
}
