// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneCheck;
import org.loomwright.diagram.scene.Veil;
import org.loomwright.diagram.services.CaseView;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.LostStrap;
import org.loomwright.diagram.services.Studied;
import org.loomwright.engine.assembly.Plan;

class LostStrapTest {
    private static final Type TYPE = Type.load();

    private static DrawingRequest heron(String state, String lost) {
        DrawingRequest request = Studied.fleet("heron").get(0);
        return request.with(request.study(), state).lost(lost);
    }

    private static List<Mark.Text> texts(Scene scene, String element) {
        List<Mark.Text> texts = new ArrayList<>();
        for (Group group : scene.groups()) {
            if (element == null || element.equals(group.element())) {
                group.marks().stream().filter(Mark.Text.class::isInstance).forEach(mark -> texts.add((Mark.Text) mark));
            }
        }
        return texts;
    }

    private static boolean says(Scene scene, String element, String words) {
        return texts(scene, element).stream().anyMatch(text -> text.text().contains(words));
    }

    @Test
    void everyLostStrapOfTheFleetIsLegibleInEveryCase() {
        int drawn = 0;
        for (String name : List.of("heron", "otter", "beaver")) {
            DrawingRequest request = Studied.fleet(name).get(0);
            for (Plan.Bond bond : request.study().plan().bonds()) {
                for (String state : request.study().caseNames()) {
                    Scene scene = EarthScene.of(request.with(request.study(), state).lost(bond.id()), TYPE);
                    assertEquals(List.of(), SceneCheck.of(scene, TYPE), name + " " + state + " without " + bond.id());
                    assertTrue(says(scene, null, "What if -" + bond.id() + " is lost"));
                    drawn++;
                }
            }
        }
        assertTrue(drawn > 60, "drawn: " + drawn);
    }

    @Test
    void aLostStrapCarriesNothingAndWhatItCarriedIsShownInGrey() {
        Scene scene = EarthScene.of(heron("engine:cranking", "WE1"), TYPE);
        String carried = EarthText.amps(Studied.fleet("heron").get(0).study().caseView("engine:cranking").bonds().get("WE1").amps());
        assertTrue(says(scene, "WE1", "lost"));
        Mark.Text was = texts(scene, "WE1").stream().filter(text -> text.text().equals(carried)).findFirst().orElseThrow();
        assertEquals(Role.INK3, was.tone());
        assertEquals(0, heron("engine:cranking", "WE1").loss().figures().bonds().get("WE1").amps());
    }

    @Test
    void theEngineOfATruckThatCranksWithoutItsStrapStandsAtTheBatterysPlus() {
        LostStrap loss = heron("engine:cranking", "WE1").loss();
        CaseView before = heron("engine:cranking", null).figures();
        assertTrue(before.bodies().get("engine") < 0.5);
        assertTrue(loss.figures().bodies().get("engine") > 10, loss.figures().bodies().toString());
        assertTrue(loss.harmful());
        assertTrue(loss.told().get(0).contains("does not turn"), loss.told().toString());
        Scene scene = EarthScene.of(heron("engine:cranking", "WE1"), TYPE);
        assertTrue(says(scene, "engine", EarthText.volts(loss.figures().bodies().get("engine"))));
        assertTrue(texts(scene, "engine").stream().anyMatch(text -> text.tone() == Role.INK3
                && text.text().equals(EarthText.volts(before.bodies().get("engine")))));
    }

    @Test
    void whatFlowsIntoABodyFlowsOutOfItWhicheverStrapIsLost() {
        for (String name : List.of("heron", "otter", "beaver")) {
            DrawingRequest request = Studied.fleet(name).get(0);
            Plan plan = request.study().plan();
            for (Plan.Bond lost : plan.bonds()) {
                for (String state : request.study().caseNames()) {
                    CaseView figures = request.study().lost(state, lost.id()).figures();
                    if (!figures.settled()) {
                        continue;
                    }
                    double[] into = new double[plan.bodies().size()];
                    double largest = 1;
                    for (Plan.Bond bond : plan.bonds()) {
                        double amps = figures.bonds().get(bond.id()).amps();
                        largest = StrictMath.max(largest, StrictMath.abs(amps));
                        assertTrue(!bond.id().equals(lost.id()) || amps == 0, "a lost strap carries " + amps);
                    }
                    for (Plan.Terminal terminal : plan.terminals()) {
                        Double amps = figures.contacts().get(terminal.id());
                        int body = terminal.device() < 0 ? terminal.body() : plan.devices().get(terminal.device()).body();
                        if (amps != null) {
                            into[body] += amps;
                            largest = StrictMath.max(largest, StrictMath.abs(amps));
                        }
                    }
                    for (Plan.BodyLink seam : plan.bodyLinks()) {
                        double amps = figures.seams().get(seam.id()).amps();
                        into[seam.bodyA()] -= amps;
                        into[seam.bodyB()] += amps;
                    }
                    for (double sum : into) {
                        assertEquals(0, sum, 1e-6 * largest, name + " " + state + " without " + lost.id());
                    }
                }
            }
        }
    }

    @Test
    void aStrapThatCarriesNothingChangesNothing() {
        DrawingRequest request = Studied.fleet("otter").get(0);
        LostStrap loss = request.study().lost("full-board", "WE1");
        assertFalse(loss.harmful());
        assertEquals(List.of("Nothing changes: it carries nothing in this case."), loss.told());
    }

    @Test
    void whatCarriesMoreThanBeforeHasAHalo() {
        boolean seen = false;
        for (String name : List.of("heron", "otter", "beaver")) {
            DrawingRequest request = Studied.fleet(name).get(0);
            for (Plan.Bond bond : request.study().plan().bonds()) {
                for (String state : request.study().caseNames()) {
                    DrawingRequest lost = request.with(request.study(), state).lost(bond.id());
                    for (Group group : EarthScene.of(lost, TYPE).groups()) {
                        boolean halo = group.marks().stream().anyMatch(mark -> mark instanceof Mark.Line line
                                && line.stroke().tone().equals(Veil.whatIf()) && line.stroke().widthPx() == LostMark.HALO_PX);
                        if (halo && group.element() != null) {
                            assertTrue(lost.loss().more().contains(group.element()), group.element());
                            double now = StrictMath.abs(lost.loss().figures().bonds().get(group.element()).amps());
                            double was = StrictMath.abs(lost.figures().bonds().get(group.element()).amps());
                            assertTrue(now > was, group.element() + " " + was + " " + now);
                            seen = true;
                        }
                    }
                }
            }
        }
        assertTrue(seen);
    }

    @Test
    void aStrapOrCaseThatIsNotThereIsNoLoss() {
        assertNull(heron("engine:cranking", "WE77").loss());
        assertNull(heron("nowhere", "WE1").loss());
        assertNull(heron(null, "WE1").loss());
        assertEquals(List.of(), SceneCheck.of(EarthScene.of(heron(null, "WE1"), TYPE), TYPE));
    }
}
