// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.paint.SceneCollisions;
import org.loomwright.diagram.paint.SvgPainter;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.compare.ArrangementFigures;
import org.loomwright.engine.compare.DeviceSheet;
import org.loomwright.engine.compare.FigureStudy;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/** The sheet of a comparison: legible for every vehicle of the fleet and for up to six arrangements. */
class ComparisonSceneTest {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");
    private static final Type TYPE = Type.load();

    private static ArrangementComparison of(String file) {
        Vehicle vehicle = new VehicleFiles().openVehicle(FLEET.resolve(file)).root();
        List<ArrangementFigures> all = new ArrayList<>();
        for (Arrangement arrangement : vehicle.getArrangements()) {
            Plan plan = Assembly.assemble(vehicle, arrangement, null, Catalogue.EMPTY).plan();
            CheckContext context = new CheckContext(plan, CaseSolver.solveAll(plan, new BasicMonitor()), NetFinder.find(plan));
            all.add(FigureStudy.of(context, DeviceSheet.of(vehicle, arrangement), List.of()));
        }
        return new ArrangementComparison(all);
    }

    private static Scene drawn(ArrangementComparison comparison) {
        return ComparisonScene.of(comparison, Collections.nCopies(comparison.arrangements().size(), "A label of some length"),
                "sections and ratings as planned", TYPE);
    }

    @Test
    void nothingOverlapsOrLeavesTheSheetForTheFleet() {
        for (String file : List.of("heron.vehicle", "beaver.vehicle", "otter.vehicle")) {
            assertEquals(List.of(), SceneCollisions.of(drawn(of(file)), TYPE), file);
        }
    }

    @Test
    void upToSixArrangementsAreToldApart() {
        ArrangementComparison two = of("heron.vehicle");
        for (int number : new int[] {1, 3, 4, 6}) {
            List<ArrangementFigures> some = new ArrayList<>();
            for (int i = 0; i < number; i++) {
                some.add(two.arrangements().get(i % 2));
            }
            assertEquals(List.of(), SceneCollisions.of(drawn(new ArrangementComparison(some)), TYPE), number + " arrangements");
        }
        List<ArrangementFigures> seven = Collections.nCopies(7, two.arrangements().get(0));
        assertThrows(IllegalArgumentException.class, () -> drawn(new ArrangementComparison(seven)));
    }

    @Test
    void barsAreAsLongAsTheirFiguresInEveryMedium() {
        ArrangementComparison heron = of("heron.vehicle");
        Scene scene = drawn(heron);
        List<Mark.Area> bars = scene.groups().stream().filter(group -> "Copper by section".equals(group.name()))
                .flatMap(group -> group.marks().stream()).filter(Mark.Area.class::isInstance).map(Mark.Area.class::cast)
                .filter(area -> height(area) > 15).toList();
        double top = bars.get(0).outline().top();
        double first = bars.stream().filter(area -> area.outline().top() == top).mapToDouble(ComparisonSceneTest::width).sum();
        double second = bars.stream().filter(area -> area.outline().top() > top).mapToDouble(ComparisonSceneTest::width).sum();
        assertEquals(heron.arrangements().get(1).copperKg() / heron.arrangements().get(0).copperKg(), second / first, 1e-6);
        String svg = SvgPainter.paint(scene, Theme.light(), TYPE);
        assertEquals(svg, SvgPainter.paint(drawn(of("heron.vehicle")), Theme.light(), TYPE));
        assertTrue(svg.contains("their returns"));
    }

    private static double width(Mark.Area area) {
        return area.points().get(1).x() - area.points().get(0).x();
    }

    private static double height(Mark.Area area) {
        return area.points().get(2).y() - area.points().get(1).y();
    }
}
