// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.paint.SceneCollisions;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.ProtectionRules;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.engine.result.Finding;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** Charts of the demo fleet: legible for every device and cable, and true to the study. */
class FleetChartsTest {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");
    private static final Type TYPE = Type.load();
    private static Studied heron;
    private static Studied otter;

    private record Studied(CheckContext context, List<Finding> findings) {
        TimeCurrentChart chart(String element) {
            List<ChartSubject> found = ChartSubject.of(context, element);
            assertEquals(1, found.size(), element);
            return ProtectionChart.of(context, found.get(0), findings);
        }
    }

    @BeforeAll
    static void study() {
        heron = studied("heron.vehicle", "spread");
        otter = studied("otter.vehicle", "as-found");
    }

    private static Studied studied(String file, String arrangement) {
        Vehicle vehicle = new VehicleFiles().openVehicle(FLEET.resolve(file)).root();
        Arrangement wanted = vehicle.getArrangements().stream().filter(each -> each.getName().equals(arrangement)).findFirst()
                .orElseThrow();
        Plan plan = Assembly.assemble(vehicle, wanted, null, Catalogue.EMPTY).plan();
        CheckContext context = new CheckContext(plan, CaseSolver.solveAll(plan, new BasicMonitor()), NetFinder.find(plan));
        return new Studied(context, ProtectionRules.judge(context, new BasicMonitor()).findings());
    }

    private static List<TimeCurrentChart> all(Studied studied) {
        List<TimeCurrentChart> charts = new ArrayList<>();
        studied.context().protection().devices().forEach(row -> charts.add(studied.chart(
                studied.context().plan().elements().get(row.protector()).id())));
        studied.context().plan().cables().forEach(cable -> ChartSubject.of(studied.context(), cable.id()).forEach(
                subject -> charts.add(ProtectionChart.of(studied.context(), subject, studied.findings()))));
        return charts;
    }

    @Test
    void nothingOverlapsOrLeavesTheSheetInAnyChartOfTheFleet() {
        List<String> wrong = new ArrayList<>();
        int drawn = 0;
        for (Studied studied : List.of(heron, otter)) {
            for (TimeCurrentChart chart : all(studied)) {
                Scene scene = TimeCurrentScene.of(chart, TYPE);
                SceneCollisions.of(scene, TYPE).forEach(found -> wrong.add(chart.title() + ": " + found));
                drawn++;
            }
        }
        assertTrue(drawn > 200, "charts drawn: " + drawn);
        assertEquals(List.of(), wrong);
    }

    @Test
    void aWayShowsTheDeviceUpstreamTheCableAndTheFaultCurrents() {
        TimeCurrentChart chart = heron.chart("spread/X30/1");
        assertEquals(List.of("spread/X30/1", "F10/1"), chart.bands().stream().map(TimeCurrentChart.Band::element).toList());
        assertEquals("spread/W205", chart.limits().get(0).element());
        assertEquals(3, chart.faults().size());
        assertTrue(chart.faults().get(0).amps() < chart.faults().get(2).amps());
        assertTrue(chart.verdicts().stream().anyMatch(verdict -> verdict.name().equals("Selectivity") && !verdict.holds()));
    }

    @Test
    void aLoadIsShownByItsFeedWithItsInrush() {
        assertEquals(120, heron.chart("M20").inrushes().get(0).amps());
    }

    @Test
    void theDamageCurveFallsAndEndsAboveTheCurrentThatTheCableBearsForLong() {
        TimeCurrentChart chart = heron.chart("spread/W205");
        List<TimeCurrentChart.At> points = chart.limits().get(0).points();
        for (int i = 1; i < points.size(); i++) {
            assertTrue(points.get(i).amps() > points.get(i - 1).amps());
            assertTrue(points.get(i).seconds() < points.get(i - 1).seconds());
        }
        double izA = chart.loads().stream().filter(load -> load.name().startsWith("Iz")).findFirst().orElseThrow().amps();
        assertTrue(points.get(0).amps() > izA);
    }

    @Test
    void aCableHotterThanItsLimitBeforeTheFaultHasNoDamageCurveAndSaysSo() {
        TimeCurrentChart chart = otter.chart("as-found/W120");
        assertEquals(List.of(), chart.limits());
        assertTrue(chart.verdicts().stream().anyMatch(verdict -> verdict.name().equals("Short circuit") && !verdict.holds()
                && verdict.figures().startsWith("begins at")), chart.verdicts().toString());
    }

    @Test
    void aBoxStandsForAllItsDevices() {
        assertEquals(5, ChartSubject.of(heron.context(), "X1").size());
        assertEquals(List.of(), ChartSubject.of(heron.context(), "XE1"));
    }
}
