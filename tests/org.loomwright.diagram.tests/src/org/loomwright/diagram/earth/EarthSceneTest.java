// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneCheck;
import org.loomwright.diagram.services.CaseView;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.Studied;
import org.loomwright.model.edits.DrawingEdits;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.DiagramKind;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

class EarthSceneTest {
    private static final Type TYPE = Type.load();

    private static List<String> texts(Scene scene, String element) {
        List<String> texts = new ArrayList<>();
        for (Group group : scene.groups()) {
            if (element.equals(group.element())) {
                group.marks().stream().filter(mark -> mark instanceof Mark.Text)
                        .forEach(mark -> texts.add(((Mark.Text) mark).text()));
            }
        }
        return texts;
    }

    private static void clean(String what, Scene scene) {
        assertEquals(List.of(), SceneCheck.of(scene, TYPE), what);
    }

    @Test
    void theFleetIsLegibleInEveryArrangementAndState() {
        int drawn = 0;
        for (String name : List.of("heron", "otter", "beaver")) {
            for (DrawingRequest request : Studied.fleet(name)) {
                clean(name, EarthScene.of(request, TYPE));
                for (String state : request.study().caseNames()) {
                    Scene scene = EarthScene.of(request.with(request.study(), state), TYPE);
                    clean(name + " " + request.arrangement().getName() + " " + state, scene);
                    drawn++;
                }
            }
        }
        assertTrue(drawn > 30, "drawn: " + drawn);
    }

    @Test
    void figuresAreThoseOfTheCase() {
        DrawingRequest request = Studied.fleet("heron").get(0);
        String state = request.study().caseNames().stream().filter(name -> name.contains("cranking")).findFirst().orElseThrow();
        CaseView figures = request.study().caseView(state);
        Scene scene = EarthScene.of(request.with(request.study(), state), TYPE);
        List<String> strap = texts(scene, "WE1");
        assertTrue(strap.contains(EarthText.amps(figures.bonds().get("WE1").amps())), strap.toString());
        assertTrue(texts(scene, "engine").contains(EarthText.volts(figures.bodies().get("engine"))));
        assertTrue(StrictMath.abs(figures.bonds().get("WE1").amps()) > 100);
    }

    @Test
    void findingsAreMarkedAtTheirElementAndToldInWords() {
        DrawingRequest request = Studied.fleet("otter").get(0);
        Scene scene = EarthScene.of(request.with(request.study(), "bench"), TYPE);
        assertTrue(scene.groups().stream().anyMatch(group -> group.kind() == Group.Kind.BADGE && "WE4".equals(group.element())));
        assertTrue(texts(scene, "rack").stream().anyMatch(text -> text.contains("not bonded")), texts(scene, "rack").toString());
    }

    @Test
    void returnsAddUpToWhatTheirStubSays() {
        DrawingRequest request = Studied.fleet("heron").get(0);
        CaseView figures = request.study().caseView("engine:all-on");
        Scene scene = EarthScene.of(request.with(request.study(), "engine:all-on"), TYPE);
        double lamps = figures.contacts().get("XE4");
        assertTrue(texts(scene, "XE4").contains(EarthText.amps(lamps) + "  Lamps"), texts(scene, "XE4").toString());
        assertTrue(lamps > 10);
    }

    @Test
    void theHeaviestBodyLiesBetweenTheOthers() {
        Scene scene = EarthScene.of(Studied.fleet("heron").get(0), TYPE);
        HitIndex index = HitIndex.of(scene, TYPE);
        double middle = index.groups("chassis").get(0).shape().centre().x();
        assertTrue(List.of("engine", "cab", "cabin").stream()
                .anyMatch(body -> index.groups(body).get(0).shape().right() < middle));
        assertTrue(List.of("engine", "cab", "cabin").stream()
                .anyMatch(body -> index.groups(body).get(0).shape().left() > middle));
    }

    @Test
    void theSameModelGivesTheSameScene() {
        DrawingRequest request = Studied.fleet("otter").get(0);
        assertEquals(EarthScene.of(request, TYPE), EarthScene.of(request, TYPE));
    }

    @Test
    void aManyBodiedVehicleWithLoopsAndHundredsOfReturnsIsLegible() {
        for (int loops = 0; loops <= 6; loops += 2) {
            Vehicle vehicle = LargeStructure.vehicle(14, loops, 200);
            clean("loops " + loops, EarthScene.of(DrawingRequest.of(vehicle), TYPE));
        }
    }

    @Test
    void aBodyStaysWhereAPersonPutIt() {
        DrawingRequest request = Studied.fleet("heron").get(0);
        Bounds before = HitIndex.of(EarthScene.of(request, TYPE), TYPE).groups("cab").get(0).shape();
        Body cab = request.vehicle().getBodies().stream().filter(body -> body.getName().equals("cab")).findFirst().orElseThrow();
        double x = StrictMath.rint(before.left() + 30);
        double y = StrictMath.rint(before.top() + 20);
        DrawingEdits.moveTo(request.vehicle(), DiagramKind.EARTH, request.arrangement(), cab, x, y);
        Bounds after = HitIndex.of(EarthScene.of(request, TYPE), TYPE).groups("cab").get(0).shape();
        DrawingEdits.release(request.vehicle(), DiagramKind.EARTH, request.arrangement(), cab);
        request.vehicle().getSheets().removeIf(sheet -> sheet.getItems().isEmpty());
        assertEquals(x, after.left(), 1);
        assertEquals(y, after.top(), 1);
    }

    @Test
    void anEmptyVehicleIsDrawnAsAnEmptySheet() {
        Vehicle vehicle = VehicleFactory.eINSTANCE.createVehicle();
        vehicle.setName("kite");
        clean("empty", EarthScene.of(DrawingRequest.of(vehicle), TYPE));
    }
}
