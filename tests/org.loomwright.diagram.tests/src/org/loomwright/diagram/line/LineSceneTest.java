// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.eclipse.emf.common.util.BasicMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.diagram.BigVehicle;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneCheck;
import org.loomwright.diagram.services.DrawingPreferences;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.StudyView;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.cases.CaseSolver;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.check.SharedStudies;
import org.loomwright.engine.nets.NetFinder;
import org.loomwright.model.edits.DrawingEdits;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.DiagramKind;
import org.loomwright.model.vehicle.Vehicle;

class LineSceneTest {
    private static final Type TYPE = Type.load();
    private static final Path FLEET = Path.of("../../bundles/org.loomwright.samples/fleet");

    private static Vehicle vehicle(String name) {
        return new VehicleFiles().openVehicle(FLEET.resolve(name + ".vehicle")).root();
    }

    private static Scene plain(Vehicle vehicle, Arrangement arrangement) {
        return LineScene.of(new DrawingRequest(vehicle, arrangement, null, null, null, DrawingPreferences.metric()), TYPE);
    }

    private static StudyView study(Vehicle vehicle, Arrangement arrangement) {
        AssemblyResult assembled = Assembly.assemble(vehicle, arrangement, null);
        BasicMonitor monitor = new BasicMonitor();
        List<SolvedCase> solved = new ArrayList<>(CaseSolver.solveAll(assembled.plan(), assembled.plan().cases(), monitor));
        CheckContext context = new CheckContext(assembled.plan(), solved, NetFinder.find(assembled.plan()), assembled.problems(),
                new SharedStudies(monitor));
        return StudyView.of(context, Check.over(context, new CheckOptions(Set.of()), monitor).findings());
    }

    private static Set<String> ids(Scene scene, Group.Kind kind) {
        return scene.groups().stream().filter(group -> group.kind() == kind && group.element() != null).map(Group::element)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "beaver", "otter"})
    void isLegibleInEveryArrangementWithoutAndWithFigures(String name) {
        Vehicle vehicle = vehicle(name);
        for (Arrangement arrangement : vehicle.getArrangements()) {
            assertEquals(List.of(), SceneCheck.of(plain(vehicle, arrangement), TYPE), arrangement.getName());
            StudyView study = study(vehicle, arrangement);
            for (String state : List.of(study.caseNames().get(0), "engine:all-on")) {
                Scene scene = LineScene.of(
                        new DrawingRequest(vehicle, arrangement, study, state, null, DrawingPreferences.metric()), TYPE);
                assertEquals(List.of(), SceneCheck.of(scene, TYPE), arrangement.getName() + " " + state);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "beaver", "otter"})
    void showsEveryDevice(String name) {
        Vehicle vehicle = vehicle(name);
        for (Arrangement arrangement : vehicle.getArrangements()) {
            Set<String> drawn = ids(plain(vehicle, arrangement), Group.Kind.NODE);
            List<Device> devices = new ArrayList<>(vehicle.getDevices());
            devices.addAll(arrangement.getDevices());
            assertEquals(List.of(), devices.stream().map(Fragments::of).filter(id -> !drawn.contains(id)).toList());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "beaver", "otter"})
    void showsEverySupplyCable(String name) {
        Vehicle vehicle = vehicle(name);
        for (Arrangement arrangement : vehicle.getArrangements()) {
            Set<String> drawn = ids(plain(vehicle, arrangement), Group.Kind.EDGE);
            LineContent content = LineContent.read(vehicle, arrangement);
            Polarity polarity = Polarity.of(content);
            assertEquals(List.of(), content.wires().stream().filter(wire -> !polarity.back(wire)).map(Wire::cableId)
                    .filter(id -> !drawn.contains(id)).toList(), arrangement.getName());
        }
    }

    @Test
    void drawsALargeVehicleLegibly() {
        Vehicle big = BigVehicle.make();
        Arrangement arrangement = big.getAdopted();
        assertEquals(BigVehicle.DEVICES, arrangement.getDevices().size());
        assertEquals(BigVehicle.CABLES, arrangement.getCables().size());
        Scene scene = plain(big, arrangement);
        assertEquals(List.of(), SceneCheck.of(scene, TYPE));
        assertEquals(BigVehicle.DEVICES, ids(scene, Group.Kind.NODE).size());
    }

    @Test
    void givesTheSameSheetForTheSameVehicle() {
        Vehicle vehicle = vehicle("heron");
        assertEquals(plain(vehicle, vehicle.getAdopted()), plain(vehicle("heron"), vehicle.getAdopted()));
    }

    @Test
    void keepsThePositionThatAPersonChose() {
        Vehicle vehicle = vehicle("heron");
        Arrangement arrangement = vehicle.getAdopted();
        Device device = vehicle.getDevices().stream().filter(each -> each.getName().equals("T10")).findFirst().orElseThrow();
        DrawingEdits.moveTo(vehicle, DiagramKind.LINE, arrangement, device, 700, 2000);
        Scene moved = plain(vehicle, arrangement);
        Group node = moved.groups().stream().filter(group -> group.kind() == Group.Kind.NODE && "T10".equals(group.element()))
                .findFirst().orElseThrow();
        assertNotNull(node.shape());
        assertEquals(700, node.shape().left(), 1e-9);
        assertEquals(2000, node.shape().top(), 1e-9);
        boolean reached = moved.groups().stream().filter(group -> group.kind() == Group.Kind.EDGE)
                .flatMap(group -> group.marks().stream()).filter(Mark.Line.class::isInstance).map(Mark.Line.class::cast)
                .anyMatch(line -> node.shape().grown(2).holds(line.points().get(line.points().size() - 1)));
        assertTrue(reached, "its wires come along");
    }

    @Test
    void readsBendsAsPoints() {
        assertEquals(List.of(new Point(10, 20), new Point(30.5, 20)), SheetChoices.points("10,20 30.5,20"));
        assertEquals(null, SheetChoices.points("10;20"));
        assertEquals(null, SheetChoices.points(" "));
    }
}
