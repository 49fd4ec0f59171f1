// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;
import org.loomwright.diagram.earth.EarthScene;
import org.loomwright.diagram.line.LineScene;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.plan.PlanScene;
import org.loomwright.diagram.plan.PlanView;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.Viewport;
import org.loomwright.diagram.services.DrawingPreferences;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.tool.EditRequest;
import org.loomwright.diagram.tool.Feedback;
import org.loomwright.diagram.tool.KeyEvent;
import org.loomwright.diagram.tool.PointerEvent;
import org.loomwright.diagram.tool.SelectTool;
import org.loomwright.diagram.tool.Tool;
import org.loomwright.diagram.tool.ToolContext;
import org.loomwright.diagram.tool.ToolResult;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.rules.VehicleRules;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A vehicle of the demo fleet, copied, on one of its drawings, with a window that tools work in. Whatever a tool asks for is
 * done as
 * a workbench would, and every step is checked: the model stays sound, is saved and read again, is undone to the byte and redone.
 */
final class Board {
    private static final Path FLEET = Path.of("..", "..", "bundles", "org.loomwright.samples", "fleet");
    private static final Type TYPE = Type.load();

    private final ReadFile<Vehicle> file;
    private final Path path;
    private final String arrangement;
    private final View view;
    private HitIndex hits;
    private DrawnVehicle drawn;
    private Viewport viewport = Viewport.of(1600, 1200);
    private Tool tool = new SelectTool();
    private Set<String> selection = Set.of();
    private Feedback feedback = Feedback.NONE;
    private EditRequest asked;
    private Outcome outcome;
    private int steps;

    Board(Path folder, String name, String arrangement, View view) {
        path = copied(folder).resolve(name + ".vehicle");
        file = new VehicleFiles().openVehicle(path);
        assertTrue(file.isSound(), () -> file.faults().toString());
        this.arrangement = arrangement;
        this.view = view;
    }

    private static Path copied(Path folder) {
        Path fleet = folder.resolve("fleet");
        try (Stream<Path> all = Files.walk(FLEET)) {
            for (Path each : all.toList()) {
                Path to = fleet.resolve(FLEET.relativize(each).toString());
                if (Files.isDirectory(each)) {
                    Files.createDirectories(to);
                } else if (!Files.exists(to)) {
                    Files.copy(each, to);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return fleet;
    }

    Vehicle vehicle() {
        return file.root();
    }

    Arrangement arrangement() {
        return vehicle().getArrangements().stream().filter(each -> each.getName().equals(arrangement)).findFirst().orElseThrow();
    }

    <T extends EObject> T get(Class<T> type, String id) {
        return type.cast(Fragments.find(vehicle(), id));
    }

    boolean has(String id) {
        return Fragments.find(vehicle(), id) != null;
    }

    HitIndex hits() {
        draw();
        return hits;
    }

    DrawnVehicle drawn() {
        draw();
        return drawn;
    }

    private void draw() {
        if (hits == null) {
            DrawingRequest request = new DrawingRequest(vehicle(), arrangement(), null, null, null, DrawingPreferences.metric());
            Scene scene = switch (view) {
                case PLAN -> PlanScene.of(request, PlanView.ABOVE, TYPE);
                case SIDE -> PlanScene.of(request, PlanView.SIDE, TYPE);
                case LINE -> LineScene.of(request, TYPE);
                case EARTH -> EarthScene.of(request, TYPE);
            };
            hits = HitIndex.of(scene, TYPE);
            drawn = DrawnVehicle.of(vehicle(), arrangement(), view, hits);
        }
    }

    /** The file as it would be saved. */
    String saved() {
        try {
            return new String(file.resource().toBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Set<String> blocking() {
        Set<String> found = new LinkedHashSet<>();
        VehicleRules.check(vehicle()).stream().filter(each -> each.blocking()).forEach(each -> found.add(each.toString()));
        return found;
    }

    /** Does what is asked for, with all checks. */
    Outcome run(EditRequest request) {
        return run(drawn().step(request));
    }

    Outcome run(Step step) {
        String before = saved();
        Set<String> faults = blocking();
        ChangeRecorder recorder = new ChangeRecorder(vehicle());
        Outcome made = step.run();
        ChangeDescription change = recorder.endRecording();
        recorder.dispose();
        String after = saved();
        assertNotEquals(before, after, step.verb() + " changed nothing");
        Set<String> more = blocking();
        more.removeAll(faults);
        assertEquals(Set.of(), more);
        assertReads(after);
        change.applyAndReverse();
        assertEquals(before, saved(), "undo");
        change.applyAndReverse();
        assertEquals(after, saved(), "redo");
        hits = null;
        outcome = made;
        steps++;
        if (made.selection() != null) {
            selection = made.selection();
            made.selection().forEach(id -> assertTrue(has(id), id));
        }
        return made;
    }

    private void assertReads(String text) {
        try {
            Path again = Files.writeString(path.resolveSibling("again.vehicle"), text);
            ReadFile<Vehicle> read = new VehicleFiles().openVehicle(again);
            assertTrue(read.isSound(), () -> read.faults().toString());
            assertEquals(text, new String(read.resource().toBytes(),
                    StandardCharsets.UTF_8), "saved again");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Checks that what is asked for is refused in words and changes nothing. */
    void refuses(String words, EditRequest request) {
        String before = saved();
        Step step = drawn().step(request);
        String message = assertThrows(IllegalArgumentException.class, step::run).getMessage();
        assertTrue(message.contains(words), message);
        assertEquals(before, saved());
    }

    // the window

    Board take(Tool next) {
        tool = next;
        feedback = Feedback.NONE;
        return this;
    }

    Board select(String... ids) {
        selection = new LinkedHashSet<>(List.of(ids));
        return this;
    }

    ToolContext context() {
        return new ToolContext(hits(), viewport, selection, drawn(), drawn().gridPx());
    }

    Board to(PointerEvent event) {
        return done(tool.pointer(event, context()));
    }

    Board key(KeyEvent.Key... keys) {
        for (KeyEvent.Key key : keys) {
            done(tool.key(KeyEvent.of(key), context()));
        }
        return this;
    }

    Board shift(KeyEvent.Key key) {
        return done(tool.key(KeyEvent.of(key).withShift(), context()));
    }

    private Board done(ToolResult result) {
        tool = result.next();
        feedback = result.feedback();
        selection = result.selection() == null ? selection : result.selection();
        asked = result.edit();
        boolean model = asked != null && !(asked instanceof EditRequest.Rename) && !(asked instanceof EditRequest.Copy)
                && !(asked instanceof EditRequest.Paste);
        if (model) {
            run(asked);
        }
        return this;
    }

    /** Where an element is, px of the window. */
    Point at(String id) {
        var shape = hits().shape(id);
        assertNotNull(shape != null ? shape : hits().bounds(id), () -> id + " is not drawn");
        if (shape != null) {
            return viewport.toScreen(shape.centre());
        }
        List<Point> line = longest(id);
        return viewport.toScreen(new Point((line.get(0).x() + line.get(1).x()) / 2, (line.get(0).y() + line.get(1).y()) / 2));
    }

    /** A point of the window, within a zone's or vehicle's middle part, where nothing is drawn that could be hit. */
    Point free() {
        var room = hits().bounds(hits().elements());
        for (double y = room.centre().y() - 200; y < room.centre().y() + 200; y += 7) {
            for (double x = room.centre().x() - 300; x < room.centre().x() + 300; x += 7) {
                Point at = new Point(x, y);
                if (hits().at(at, 14, viewport) == null
                        && hits().touched(org.loomwright.diagram.scene.Bounds.around(at, 12)).isEmpty()) {
                    return viewport.toScreen(at);
                }
            }
        }
        throw new AssertionError("no free ground");
    }

    private List<Point> longest(String id) {
        List<Point> best = new ArrayList<>();
        for (List<Point> line : hits().lines(id)) {
            for (int i = 1; i < line.size(); i++) {
                if (best.isEmpty() || line.get(i - 1).distance(line.get(i)) > best.get(0).distance(best.get(1))) {
                    best = List.of(line.get(i - 1), line.get(i));
                }
            }
        }
        return best;
    }

    Board drag(Point from, Point to) {
        return to(PointerEvent.press(from.x(), from.y())).to(PointerEvent.move((from.x() + to.x()) / 2, (from.y() + to.y()) / 2))
                .to(PointerEvent.move(to.x(), to.y())).to(PointerEvent.release(to.x(), to.y()));
    }

    Board click(Point at) {
        return to(PointerEvent.move(at.x(), at.y())).to(PointerEvent.press(at.x(), at.y()))
                .to(PointerEvent.release(at.x(), at.y()));
    }

    Board hover(Point at) {
        return to(PointerEvent.move(at.x(), at.y()));
    }

    Viewport viewport() {
        return viewport;
    }

    Feedback feedback() {
        return feedback;
    }

    Tool tool() {
        return tool;
    }

    Set<String> selection() {
        return selection;
    }

    EditRequest asked() {
        return asked;
    }

    Outcome outcome() {
        return outcome;
    }

    int steps() {
        return steps;
    }
}
